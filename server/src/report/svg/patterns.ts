import type { Point } from '../../geometry/point.ts'
import type { Nm } from '../../units/length.ts'
import type { Scene } from '../scene.ts'
import { type Element, h } from './element.ts'
import { millionths, mm } from './number.ts'
import type { Palette } from './palette.ts'

/** Half a right angle, as millionths of its cosine and sine. */
const DIAGONAL = 707_107

/**
 * Hatches, so that walls, cut and ripped pieces stay apart in black and white: walls close and rising,
 * cut pieces open and rising from the run, rips broad and falling from it, both crossed.
 */
export function patterns({ em, run }: Pick<Scene, 'em' | 'run'>, palette: Palette): Element {
  const rising = turned(run, 1)
  const falling = turned(run, -1)
  const wall = turned({ x: 1_000_000, y: 0 }, 1)
  const stripe = stroke(em, 44, palette.ripStripe)
  return h(
    'defs',
    {},
    pattern('wall', { em, turn: wall, part: 0.3, ground: palette.wall }, [
      stroke(em, 7, palette.wallHatch),
    ]),
    pattern('cut', { em, turn: rising, part: 0.5, ground: palette.cutGround }, [
      stroke(em, 9, palette.cutHatch),
    ]),
    pattern('rip', { em, turn: falling, part: 0.62, ground: palette.ripGround }, [stripe]),
    pattern('cut-and-rip', { em, turn: falling, part: 0.62, ground: palette.ripGround }, [
      stripe,
      stroke(em, 14, palette.cutHatch, 'across'),
    ]),
  )
}

/** The run turned by half a right angle, to its left (1) or right (−1), as a matrix; y points down. */
function turned({ x, y }: Point, side: 1 | -1): string {
  const cos = Math.round(((x - side * y) * DIAGONAL) / 1_000_000)
  const sin = Math.round(((y + side * x) * DIAGONAL) / 1_000_000)
  return `matrix(${[cos, -sin, sin, cos].map(millionths).join(' ')} 0 0)`
}

/** A line through the tile, along the turned run or square to it. */
function stroke(em: Nm, weight: number, ink: string, way: 'along' | 'across' = 'along'): Element {
  const d = way === 'along' ? `M0 0H${mm(em)}` : `M0 0V${mm(em)}`
  return h('path', { d, stroke: ink, 'stroke-width': mm((em * weight) / 100) })
}

interface Tile {
  readonly em: Nm
  readonly turn: string
  /** Its side as a part of the lettering's height. */
  readonly part: number
  readonly ground: string
}

function pattern(id: string, { em, turn, part, ground }: Tile, lines: readonly Element[]): Element {
  const side = mm(Math.round(em * part))
  return h(
    'pattern',
    { id, width: side, height: side, patternUnits: 'userSpaceOnUse', patternTransform: turn },
    h('rect', { width: side, height: side, fill: ground }),
    ...lines,
  )
}
