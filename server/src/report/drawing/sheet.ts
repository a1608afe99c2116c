import type { Point, Ring } from '../../geometry/point.ts'
import type { Nm } from '../../units/length.ts'
import { roundToNm } from '../../units/round.ts'
import type { Note, Rule, Shape, Swatch, Tone } from '../scene.ts'
import { letter, wrapped } from './letter.ts'

/** A column of the sheet that is filled from its top downward. */
export interface Column {
  readonly left: Nm
  readonly width: Nm
  readonly em: Nm
  /** Where the next line begins. */
  readonly top: () => Nm
  readonly shapes: Shape[]
  /** Leaves blank space, in parts of the plain height. */
  skip(part: number): void
  /** Sets a text, broken into lines; `part` is its height in parts of the plain one. */
  write(text: string, part: number, tone: Tone): void
  /** A thin line across the column. */
  rule(): void
  /** A sample and what it stands for. */
  sample(of: Swatch['of'], text: string): void
  /** Takes height for a thing that the caller draws and gives its upper left corner. */
  take(height: Nm): Point
}

const PITCH = 1.45

export function column(left: Nm, start: Nm, width: Nm, em: Nm): Column {
  let top = start
  let count = 0
  const shapes: Shape[] = []
  const id = (): string => {
    count += 1
    return `sheet ${count}`
  }
  const line = (text: string, height: Nm, tone: Tone, indent: Nm): Note => {
    top -= roundToNm(height * PITCH)
    const at = { x: left + indent, y: top + roundToNm((height * PITCH) / 2) }
    const lettering = letter(text, at, height, { anchor: 'start', tone })
    return { kind: 'note', id: id(), span: null, lettering }
  }
  return {
    left,
    width,
    em,
    top: () => top,
    shapes,
    skip: (part) => {
      top -= roundToNm(em * part)
    },
    write: (text, part, tone) => {
      const height = Math.floor(em * part)
      for (const words of wrapped(text, height, tone, width))
        shapes.push(line(words, height, tone, 0))
    },
    rule: () => shapes.push(ruleAt(id(), { x: left, y: top }, width)),
    sample: (of, text) => {
      const height = Math.floor(em * 0.82)
      const indent = roundToNm(em * 3.4)
      const words = wrapped(text, height, 'plain', width - indent)
      top -= roundToNm(em * 0.4)
      const ring = swatchRing({ x: left, y: top - roundToNm((height * PITCH) / 2) }, em)
      shapes.push({ kind: 'swatch', id: id(), span: null, of, ring })
      for (const part of words) shapes.push(line(part, height, 'plain', indent))
    },
    take: (height) => {
      top -= height
      return { x: left, y: top + height }
    },
  }
}

function ruleAt(id: string, from: Point, width: Nm): Rule {
  return { kind: 'rule', id, span: null, from, to: { x: from.x + width, y: from.y } }
}

/** Centred on the first line beside it, counter-clockwise from its lower left corner. */
function swatchRing(at: Point, em: Nm): Ring {
  const [wide, half] = [roundToNm(em * 2.6), roundToNm(em * 0.55)]
  return [
    { x: at.x, y: at.y - half },
    { x: at.x + wide, y: at.y - half },
    { x: at.x + wide, y: at.y + half },
    { x: at.x, y: at.y + half },
  ]
}
