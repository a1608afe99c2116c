import type { Nm } from '../../units/length.ts'
import { type Element, h } from './element.ts'
import { mm } from './number.ts'
import * as palette from './palette.ts'

/**
 * Hatches, so that walls, cut and ripped pieces stay apart in black and white: walls close and rising,
 * cut pieces open and rising, rips broad and falling, both crossed.
 */
export function patterns(em: Nm): Element {
  const line = (weight: number, stroke: string, tile: number): Element =>
    h('path', { d: `M0 0V${mm(tile)}`, stroke, 'stroke-width': mm((em * weight) / 100) })
  const tile = (
    id: string,
    turn: number,
    part: number,
    ground: string,
    lines: (side: Nm) => Element[],
  ) => {
    const side = Math.round(em * part)
    return h(
      'pattern',
      {
        id,
        width: mm(side),
        height: mm(side),
        patternUnits: 'userSpaceOnUse',
        patternTransform: `rotate(${turn})`,
      },
      h('rect', { width: mm(side), height: mm(side), fill: ground }),
      ...lines(side),
    )
  }
  return h(
    'defs',
    {},
    tile('wall', 45, 0.3, palette.WALL, (side) => [line(7, palette.WALL_HATCH, side)]),
    tile('cut', 45, 0.5, palette.CUT_GROUND, (side) => [line(9, palette.CUT_HATCH, side)]),
    tile('rip', -45, 0.62, palette.RIP_GROUND, (side) => [line(44, palette.RIP_STRIPE, side)]),
    tile('cut-and-rip', -45, 0.62, palette.RIP_GROUND, (side) => [
      line(44, palette.RIP_STRIPE, side),
      h('path', {
        d: `M0 0H${mm(side)}`,
        stroke: palette.CUT_HATCH,
        'stroke-width': mm((em * 14) / 100),
      }),
    ]),
  )
}
