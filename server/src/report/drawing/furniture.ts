import type { Point, Ring } from '../../geometry/point.ts'
import type { PublishedRules } from '../../layout/published.ts'
import { printDecimal } from '../../units/decimal.ts'
import { NM_PER_FOOT, NM_PER_M, type Nm, type UnitStyle } from '../../units/length.ts'
import { ratio } from '../../units/ratio.ts'
import { roundToNm } from '../../units/round.ts'
import { arrowHead } from './courses.ts'
import { letter } from './letter.ts'
import type { Column } from './sheet.ts'
import { type Direction, moved, NORTH, opposite } from './vector.ts'

/** What a bar is counted in: the least field, how many of it make one, and the name of one. */
interface Measure {
  readonly least: Nm
  readonly inOne: number
  readonly name: string
  /** Lengths of a field that read well, in least fields. */
  readonly steps: readonly number[]
}

const FEET: Measure = {
  least: NM_PER_FOOT / 4,
  inOne: 4,
  name: 'ft',
  steps: [1, 2, 4, 8, 16, 20, 40, 80, 200, 400],
}
const METRES: Measure = {
  least: NM_PER_M / 20,
  inOne: 20,
  name: 'm',
  steps: [1, 2, 4, 10, 20, 40, 100, 200, 400, 1000],
}

const FIELDS = 4

/** A scale bar in the job's own units, as long as fits the column. */
export function scaleBar(column: Column, units: UnitStyle): void {
  const measure = units === 'feet-inches' || units === 'inches' ? FEET : METRES
  const widest = (column.width * 0.78) / FIELDS
  const step = measure.steps.findLast((count) => count * measure.least <= widest) ?? 1
  const [height, field] = [roundToNm(column.em * 0.42), step * measure.least]
  const { x, y } = column.take(roundToNm(column.em * 2.1))
  const box = (from: Nm, to: Nm): Ring => [
    { x: x + from, y: y - height },
    { x: x + to, y: y - height },
    { x: x + to, y },
    { x: x + from, y },
  ]
  column.shapes.push({
    kind: 'scale bar',
    id: 'scale bar',
    span: null,
    filled: [box(0, field), box(2 * field, 3 * field)],
    frame: box(0, FIELDS * field),
    marks: [0, 1, 2, FIELDS].map((i) => {
      const at = { x: x + i * field, y: y - height - roundToNm(column.em * 0.75) }
      const text = inWhole(i * step, measure.inOne)
      const anchor = i === 0 ? 'start' : 'middle'
      const named = i === FIELDS ? `${text} ${measure.name}` : text
      return letter(named, at, Math.floor(column.em * 0.75), { anchor })
    }),
  })
}

/** So many parts of one, without zeros at the end: 2.5. */
function inWhole(count: number, inOne: number): string {
  return printDecimal(ratio(count, inOne), 2).replace(/\.?0{1,2}$/, '')
}

export function north(column: Column): void {
  const { em } = column
  const corner = column.take(roundToNm(em * 4.2))
  const foot: Point = { x: corner.x + roundToNm(em * 0.8), y: corner.y - roundToNm(em * 3.9) }
  const tip = moved(foot, NORTH, em * 2.4)
  const notch = moved(foot, NORTH, em * 0.6)
  const half = (side: number): Ring => [tip, moved(foot, NORTH, 0, side * em * 0.7), notch]
  column.shapes.push({
    kind: 'north',
    id: 'north',
    span: null,
    needle: half(1),
    tail: half(-1).toReversed(),
    lettering: letter('N', moved(tip, NORTH, em * 0.65), Math.floor(em * 0.9)),
  })
}

export interface Laying {
  readonly id: string
  readonly along: Direction
  readonly onward: Direction
  readonly laid: PublishedRules['laid']
  readonly said: readonly string[]
}

/** Arrows for the run of the planks and for the order of the courses, with words beside them. */
export function compass(column: Column, { id, along, onward, laid, said }: Laying): void {
  const { em } = column
  const corner = column.take(roundToNm(em * 4))
  const middle: Point = { x: corner.x + roundToNm(em * 1.9), y: corner.y - roundToNm(em * 2) }
  const [ahead, behind] = [moved(middle, along, em * 1.7), moved(middle, along, -em * 1.7)]
  const side = moved(middle, onward, em * 1.5)
  const runHeads = [
    ...(laid === 'right to left' ? [] : [arrowHead(ahead, along, em * 0.75)]),
    ...(laid === 'left to right' ? [] : [arrowHead(behind, opposite(along), em * 0.75)]),
  ]
  column.shapes.push({
    kind: 'laying',
    id,
    span: null,
    lines: [
      [behind, ahead],
      [middle, side],
    ],
    heads: [...runHeads, arrowHead(side, onward, em * 0.75)],
    lettering: said.map((text, i) => {
      const at = { x: corner.x + roundToNm(em * 4.6), y: middle.y + roundToNm(em * 1.2 * (1 - i)) }
      return letter(text, at, Math.floor(em * 0.82), { anchor: 'start' })
    }),
  })
}

const WAYS: readonly (readonly [string, number, number])[] = [
  ['east', 1, 0],
  ['north-east', 0.7, 0.7],
  ['north', 0, 1],
  ['north-west', -0.7, 0.7],
  ['west', -1, 0],
  ['south-west', -0.7, -0.7],
  ['south', 0, -1],
  ['south-east', 0.7, -0.7],
]

/** The nearest of the eight ways. */
export function wayInWords(direction: Direction): string {
  const [word] = WAYS.reduce((best, way) =>
    direction.x * way[1] + direction.y * way[2] > direction.x * best[1] + direction.y * best[2]
      ? way
      : best,
  )
  return word
}

/** The two ways that planks run, named the way the language does. */
export function runInWords(along: Direction): string {
  const way = wayInWords(along)
  const other = wayInWords(opposite(along))
  if (way === 'east' || way === 'west') return 'east-west'
  if (way === 'north' || way === 'south') return 'north-south'
  return way.startsWith('north') ? `${way} to ${other}` : `${other} to ${way}`
}
