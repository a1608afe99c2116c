import type { Point, Ring } from '../../geometry/point.ts'
import type { PublishedCourse, PublishedFloor, PublishedPiece } from '../../layout/published.ts'
import type { Nm, UnitStyle } from '../../units/length.ts'
import { widthText } from '../cut-size.ts'
import type { PieceFacts } from '../piece-facts.ts'
import type { RipLabel, WorkingLine } from '../scene.ts'
import { groundOf, letter, widthOf } from './letter.ts'
import type { Occupied } from './occupied.ts'
import type { RunFrame } from './run-frame.ts'
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
 * The widths of a course, from its narrowest place to its widest, as read where its pieces end: what is
 * cut out of a piece on its way does not count.
 */
export function courseWidth(floor: PublishedFloor, course: number): PieceFacts['width'] {
  const widths = piecesOf(floor, course)
    .flatMap(endWidths)
    .filter((width) => width > A_POINT)
  const most = widths.reduce((most, width) => Math.max(most, width), 0)
  return { least: widths.reduce((least, width) => Math.min(least, width), most), most }
}

/** What a taper to a point may come to, in nanometres, before it counts as a point. */
const A_POINT: Nm = 1000

/** How wide a piece is at its two ends. */
function endWidths({ ring }: PublishedPiece): Nm[] {
  const us = ring.map(([u]) => u)
  return [Math.min(...us), Math.max(...us)].map((end) => {
    const heights = ring.filter(([u]) => u === end).map(([, v]) => v)
    return Math.max(...heights) - Math.min(...heights)
  })
}

function piecesOf(floor: PublishedFloor, course: number): PublishedFloor['pieces'] {
  return floor.pieces.filter((piece) => piece.course === course)
}

function reach(floor: PublishedFloor, course: number): { from: Nm; to: Nm } {
  const us = piecesOf(floor, course).flatMap((piece) => piece.ring.map(([u]) => u))
  return { from: Math.min(...us), to: Math.max(...us) }
}

/** The line to snap: the field edge of the first course, an arrow's head the way a course is laid. */
export function workingLine(floor: PublishedFloor, frame: RunFrame, em: Nm): WorkingLine | null {
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
    span: null,
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
  /** How far the label stands off the floor's end: past the drawn wall. */
  readonly off: Nm
  /** Rooms and their walls: a label beside the floor keeps clear of them. */
  readonly house: Occupied
  /** Lettering that is there already. */
  readonly taken: Occupied
}

/** How wide the first and the last course are, set beside the end of the course. */
export function ripLabels(floor: PublishedFloor, options: RipLabelOptions): RipLabel[] {
  const [first, last] = [firstLaid(floor), lastLaid(floor)]
  if (first === null || last === null) return []
  const label = (which: 'first' | 'last', course: PublishedCourse): RipLabel => {
    const width = widthText(
      courseWidth(floor, course.course),
      floor.rules.plankWidth,
      options.units,
    )
    const made = ripLabel(floor, { which, course, text: `${which} course ${width}` }, options)
    options.taken.add(made.plate)
    return made
  }
  return first.course === last.course
    ? [label('first', first)]
    : [label('first', first), label('last', last)]
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

function ripLabel(floor: PublishedFloor, ripped: Ripped, options: RipLabelOptions): RipLabel {
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
    span: null,
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
  { em, off }: RipLabelOptions,
  width: Nm,
): Candidate[] {
  const { from, to } = reach(floor, course.course)
  const v = (course.low + course.high) / 2
  const away = off + em * 0.5
  const beside = [0, 1, -1, 2, -2].map((step) => v + step * em * 0.9)
  const outward = (which === 'last') === laidUpward(floor) ? 1 : -1
  const edge = outward > 0 ? course.high : course.low
  const u = (from + to) / 2
  return [
    ...beside.map((at) => ({ u: from - away - width / 2, v: at, from, to: from - away })),
    ...beside.map((at) => ({ u: to + away + width / 2, v: at, from: to, to: to + away })),
    ...[1, 2.2, 3.4].map((step) => ({ u, v: edge + outward * (off + step * em), from: u, to: u })),
    { u, v, from: u, to: u },
  ].map((place) => ({ ...place, onTheFloor: place.v === v && place.u === u }))
}
