import type { Point, Ring } from '../../geometry/point.ts'
import type { PublishedCourse, PublishedFloor } from '../../layout/published.ts'
import type { Nm, UnitStyle } from '../../units/length.ts'
import { widthText } from '../cut-size.ts'
import type { PieceFacts } from '../piece-facts.ts'
import type { RipLabel, WorkingLine } from '../scene.ts'
import { groundOf, letter, widthOf } from './letter.ts'
import type { Occupied } from './occupied.ts'
import type { RunFrame } from './run-frame.ts'
import type { SubjectFloor } from './subject.ts'
import { type Direction, left, moved, opposite, readable } from './vector.ts'

export function firstLaid(floor: PublishedFloor): PublishedCourse | null {
  return byOrder(floor)[0] ?? null
}

export function lastLaid(floor: PublishedFloor): PublishedCourse | null {
  return byOrder(floor).at(-1) ?? null
}

function byOrder(floor: PublishedFloor): PublishedCourse[] {
  return [...floor.courses].sort((a, b) => a.order - b.order)
}

/** True where courses are laid towards rising v from the first one. */
export function laidUpward(floor: PublishedFloor): boolean {
  const [first, second] = byOrder(floor)
  return first === undefined || second === undefined || second.course > first.course
}

/**
 * How wide the first or last course is ripped: from the seam that faces the field to the wall that the
 * most of it lies along, at both ends of that wall. Doorways, notches and bays do not count. Null where
 * that wall runs out of the course, as in a floor laid slantwise: then there is no such width.
 */
export function ripWidth(
  floor: PublishedFloor,
  which: 'first' | 'last',
): PieceFacts['width'] | null {
  const course = which === 'first' ? firstLaid(floor) : lastLaid(floor)
  if (course === null) return null
  const wallIsHigh = wallSide(floor, which) > 0
  const wall = longestLine(wallEdges(floor, course, wallIsHigh))
  const seam = wallIsHigh ? course.low : course.high
  const widths = wall.flatMap((edge) => edge.map(([, v]) => Math.abs(v - seam)))
  if (widths.length === 0) return null
  const { least, most } = rangeOf(widths)
  return least < most / 8 ? null : { least, most }
}

/**
 * On which side of the first or last course its wall lies: 1 towards rising courses. What lies behind
 * the first course is laid afterwards, so the last one may end either side of the floor.
 */
function wallSide(floor: PublishedFloor, which: 'first' | 'last'): 1 | -1 {
  const [first, last] = [firstLaid(floor), lastLaid(floor)]
  if (which === 'first' || first === null || last === null) return laidUpward(floor) ? -1 : 1
  return last.course < first.course ? -1 : 1
}

type Vertex = readonly [number, number]
type Edge = readonly [Vertex, Vertex]

/** Edges of a course's pieces that face away from the field; rings run counter-clockwise. */
function wallEdges(
  floor: PublishedFloor,
  { course }: PublishedCourse,
  wallIsHigh: boolean,
): Edge[] {
  return piecesOf(floor, course).flatMap(({ ring }) =>
    ring.flatMap((from, i): Edge[] => {
      const to = ring[(i + 1) % ring.length] ?? from
      return wallIsHigh
        ? to[0] < from[0]
          ? [[to, from]]
          : []
        : to[0] > from[0]
          ? [[from, to]]
          : []
    }),
  )
}

/** Rounding may put vertices of one wall so far off its line, in nanometres. */
const ON_ONE_LINE: Nm = 2000

/** Lines that are told apart: the longest edges begin them, and a wall of more kinks is none. */
const MOST_LINES = 256

/** The edges that lie on one straight line, of the line that has the most of them by length. */
function longestLine(edges: readonly Edge[]): readonly Edge[] {
  const lines: Edge[][] = []
  for (const edge of edges.toSorted((a, b) => run(b) - run(a))) {
    const line = lines.find(
      ([first]) => first !== undefined && edge.every((end) => onLine(first, end)),
    )
    if (line !== undefined) line.push(edge)
    else if (lines.length < MOST_LINES) lines.push([edge])
  }
  const length = (line: readonly Edge[]): number => line.reduce((sum, edge) => sum + run(edge), 0)
  return lines.reduce<Edge[]>((best, line) => (length(line) > length(best) ? line : best), [])
}

function run([from, to]: Edge): number {
  return to[0] - from[0]
}

function onLine([a, b]: Edge, [u, v]: Vertex): boolean {
  return Math.abs(a[1] + ((b[1] - a[1]) * (u - a[0])) / (b[0] - a[0]) - v) < ON_ONE_LINE
}

function piecesOf(floor: PublishedFloor, course: number): PublishedFloor['pieces'] {
  return floor.pieces.filter((piece) => piece.course === course)
}

function reach(floor: PublishedFloor, course: number): { from: Nm; to: Nm } {
  const { least, most } = rangeOf(
    piecesOf(floor, course).flatMap((piece) => piece.ring.map(([u]) => u)),
  )
  return { from: least, to: most }
}

/** One by one: a course may have more corners than a call may have arguments. */
function rangeOf(values: readonly number[]): { readonly least: number; readonly most: number } {
  return {
    least: values.reduce((least, value) => Math.min(least, value), Infinity),
    most: values.reduce((most, value) => Math.max(most, value), -Infinity),
  }
}

/** The line to snap: the field edge of the first course, an arrow's head the way a course is laid. */
export function workingLine(
  { published: floor, span }: SubjectFloor,
  frame: RunFrame,
  em: Nm,
): WorkingLine | null {
  const first = firstLaid(floor)
  if (first === null || piecesOf(floor, first.course).length === 0) return null
  const { from, to } = reach(floor, first.course)
  const v = laidUpward(floor) ? first.high : first.low
  const backward = floor.rules.laid === 'right to left'
  const [start, end] = backward ? [to, from] : [from, to]
  const along = backward ? opposite(frame.along) : frame.along
  return {
    kind: 'working line',
    id: `${floor.floor}: working line`,
    span,
    from: frame.place(start, v),
    to: frame.place(end, v),
    head: arrowHead(frame.place(end, v), along, em * 0.9),
  }
}

/** A slim triangle whose tip stands at `tip`, counter-clockwise. */
export function arrowHead(tip: Point, along: Direction, length: Nm): Ring {
  const back = moved(tip, along, -length)
  return [tip, moved(back, left(along), length * 0.3), moved(back, left(along), -length * 0.3)]
}

export interface RipLabelOptions {
  readonly frame: RunFrame
  readonly units: UnitStyle
  readonly em: Nm
  /** Of a drawn wall: a label beside the floor stands past it. */
  readonly thickness: Nm
  /** Rooms and their walls: a label beside the floor keeps clear of them. */
  readonly house: Occupied
  /** Lettering that is there already. */
  readonly taken: Occupied
}

/** How wide the first and the last course are ripped, set beside the end of the course. */
export function ripLabels(subject: SubjectFloor, options: RipLabelOptions): RipLabel[] {
  const { published: floor } = subject
  const ends = [
    { which: 'first', course: firstLaid(floor) },
    { which: 'last', course: lastLaid(floor) },
  ] as const
  return ends.flatMap(({ which, course }) => {
    const width = ripWidth(floor, which)
    if (course === null || width === null || (which === 'last' && course.order === 1)) return []
    const text = `${which} course ${widthText(width, floor.rules.plankWidth, options.units)}`
    const made = ripLabel(subject, { which, course, text }, options)
    options.taken.add(made.plate)
    return [made]
  })
}

interface Ripped {
  readonly which: 'first' | 'last'
  readonly course: PublishedCourse
  readonly text: string
}

/** A place for a label in the frame of the run, and the line that leads from it to its course. */
interface Candidate {
  readonly u: Nm
  readonly v: Nm
  readonly from: Nm
  readonly to: Nm
  readonly onTheFloor: boolean
}

function ripLabel(
  { published: floor, span }: SubjectFloor,
  ripped: Ripped,
  options: RipLabelOptions,
): RipLabel {
  const { frame, taken, house } = options
  const height = Math.floor(options.em * 0.78)
  const along = readable(frame.along)
  const made = candidates(floor, ripped, options, widthOf(ripped.text, height)).map((place) => {
    const lettering = letter(ripped.text, frame.place(place.u, place.v), height, { along })
    return { place, lettering, plate: groundOf(lettering) }
  })
  const free = made.find(
    ({ place, plate }) => !taken.hits(plate) && (place.onTheFloor || !house.hits(plate)),
  )
  const { place, lettering, plate } = free ?? made[made.length - 1]!
  const v = (ripped.course.low + ripped.course.high) / 2
  return {
    kind: 'rip label',
    id: `${floor.floor}: ${ripped.which} course`,
    span,
    which: ripped.which,
    leader: [frame.place(place.from, v), frame.place(place.to, place.v)],
    plate,
    lettering,
  }
}

/** Beside either end of the course, then beyond it, then on it. */
function candidates(
  floor: PublishedFloor,
  { which, course }: Ripped,
  { em, thickness }: RipLabelOptions,
  width: Nm,
): Candidate[] {
  const { from, to } = reach(floor, course.course)
  const v = (course.low + course.high) / 2
  const away = thickness + em * 0.5
  const beside = [0, 1, -1, 2, -2].map((step) => v + step * em * 0.9)
  const outward = wallSide(floor, which)
  const edge = outward > 0 ? course.high : course.low
  const u = (from + to) / 2
  return [
    ...[away, away + 3 * em].flatMap((off) => [
      ...beside.map((at) => ({ u: from - off - width / 2, v: at, from, to: from - off })),
      ...beside.map((at) => ({ u: to + off + width / 2, v: at, from: to, to: to + off })),
    ]),
    ...[1, 2.2, 3.4].map((step) => ({
      u,
      v: edge + outward * (thickness + step * em),
      from: u,
      to: u,
    })),
    { u, v, from: u, to: u },
  ].map((place) => ({ ...place, onTheFloor: place.v === v && place.u === u }))
}
