import type { Point } from '../../geometry/point.ts'
import type { PublishedFloor, PublishedPiece } from '../../layout/published.ts'
import type { Nm, UnitStyle } from '../../units/length.ts'
import { lengthText, widthText } from '../cut-size.ts'
import { type PieceFacts, pieceFacts } from '../piece-facts.ts'
import type { JointLine, Lettering, PieceShape, Seam } from '../scene.ts'
import { groundOf, letter, widthOf } from './letter.ts'
import { holds, type Occupied } from './occupied.ts'
import type { RunFrame } from './run-frame.ts'
import type { SubjectFloor } from './subject.ts'
import { readable } from './vector.ts'

export interface PieceOptions {
  readonly frame: RunFrame
  readonly units: UnitStyle
  readonly em: Nm
  /** Lettering that is there already; piece numbers keep clear of it where they can. */
  readonly taken: Occupied
}

/** Every piece with its number set where it can be read. */
export function pieceShapes(
  { published: floor, span }: SubjectFloor,
  options: PieceOptions,
): PieceShape[] {
  return floor.pieces.map((piece) => {
    const facts = pieceFacts(piece)
    return {
      kind: 'piece',
      id: pieceId(floor, piece.piece),
      span,
      piece: piece.piece,
      course: piece.course,
      plank: piece.plank,
      cut: facts.cut,
      ring: piece.ring.map(([u, v]) => options.frame.place(u, v)),
      number: numberOf(piece, facts, options),
      title: titleOf(piece, facts, floor.rules.plankWidth, options.units),
    }
  })
}

/** Of the piece's shape in every scene. */
export function pieceId({ floor }: PublishedFloor, piece: number): string {
  return `${floor}: piece ${piece}`
}

/** "Piece 12, course 3, from plank 9: 34 1/2" x 6 3/4", sawn at its left end". */
function titleOf(
  piece: PublishedPiece,
  facts: PieceFacts,
  plankWidth: Nm,
  units: UnitStyle,
): string {
  const size = `${lengthText(facts, units)} x ${widthText(facts.width, plankWidth, units)}`
  const work = [
    ...(facts.cut === 'whole' ? ['a whole plank'] : []),
    ...(facts.sawnAt === 'neither end' ? [] : [`sawn at ${endsInWords(facts.sawnAt)}`]),
    ...(facts.cut === 'rip' || facts.cut === 'cut and rip' ? ['ripped'] : []),
    ...(facts.shaped ? ['cut to shape'] : []),
  ]
  return `Piece ${piece.piece}, course ${piece.course}, from plank ${piece.plank}: ${size}, ${work.join(', ')}`
}

function endsInWords(ends: 'left' | 'right' | 'both ends'): string {
  return ends === 'both ends' ? ends : `its ${ends} end`
}

/** Parts of the usual height that a number may shrink to, and how far along the piece it may stand. */
const HEIGHTS = [1, 0.8, 0.62, 0.48, 0.36, 0.28]
const PLACES = [0.5, 0.42, 0.58, 0.34, 0.66, 0.26, 0.74, 0.18, 0.82, 0.12, 0.88, 0.07, 0.93]

/** The largest free place; over other lettering only where the piece has no other. */
function numberOf(piece: PublishedPiece, facts: PieceFacts, options: PieceOptions): Lettering {
  const usual = Math.min(options.em * 0.72, facts.width.most * 0.62)
  const spots = spotsOn(piece)
  let largest: Lettering | null = null
  for (const part of HEIGHTS)
    for (const place of PLACES) {
      const number = numberAt(piece, spots(place), usual * part, options)
      if (number === null) continue
      largest ??= number
      if (!options.taken.hits(groundOf(number))) return number
    }
  return largest ?? numberInBox(piece, spots(0.5), usual * 0.28, options)
}

/** Where a number may stand in a piece. */
interface Spot {
  readonly u: number
  readonly v: number
  /** Of the whole piece. */
  readonly long: number
  readonly isInside: (corner: Point) => boolean
}

/** The spots of one piece by their place along it, each found once: most pieces take the first. */
function spotsOn(piece: PublishedPiece): (place: number) => Spot {
  const ring = piece.ring.map(([x, y]) => ({ x, y }))
  const us = piece.ring.map(([u]) => u)
  const from = Math.min(...us)
  const long = Math.max(...us) - from
  const isInside = (corner: Point): boolean => holds(ring, corner)
  const known = new Map<number, Spot>()
  return (place) => {
    const there = known.get(place)
    if (there !== undefined) return there
    const u = from + long * place
    const spot = { u, v: middleAt(piece, u), long, isInside }
    known.set(place, spot)
    return spot
  }
}

/** The number at a place along the piece, or null where it would leave the piece. */
function numberAt(
  piece: PublishedPiece,
  spot: Spot,
  height: number,
  options: PieceOptions,
): Lettering | null {
  const { u, v, long, isInside } = spot
  const [ahead, aside] = [widthOf(`${piece.piece}`, Math.floor(height)) / 2, height / 2]
  if (ahead * 2 > long) return null
  const fits =
    isInside({ x: u - ahead, y: v - aside }) &&
    isInside({ x: u - ahead, y: v + aside }) &&
    isInside({ x: u + ahead, y: v - aside }) &&
    isInside({ x: u + ahead, y: v + aside })
  return fits ? numberInBox(piece, spot, height, options) : null
}

function numberInBox(
  piece: PublishedPiece,
  { u, v }: Spot,
  height: number,
  { frame }: PieceOptions,
): Lettering {
  return letter(`${piece.piece}`, frame.place(u, v), Math.floor(height), {
    along: readable(frame.along),
  })
}

/** The middle of the widest stretch that a line across the piece meets. */
function middleAt({ ring }: PublishedPiece, u: number): number {
  const heights = ring
    .flatMap((a, i) => {
      const b = ring[(i + 1) % ring.length] ?? a
      return a[0] > u === b[0] > u ? [] : [a[1] + ((b[1] - a[1]) * (u - a[0])) / (b[0] - a[0])]
    })
    .sort((a, b) => a - b)
  let [low, high] = [heights[0] ?? 0, heights[1] ?? 0]
  for (let i = 2; i + 1 < heights.length; i += 2) {
    const [bottom, top] = [heights[i] ?? 0, heights[i + 1] ?? 0]
    if (top - bottom > high - low) [low, high] = [bottom, top]
  }
  return (low + high) / 2
}

/** Seams as unbroken lines: where the pieces of two neighbouring courses meet. */
export function seams(floor: PublishedFloor, frame: RunFrame): Seam[] {
  const byCourse = Map.groupBy(floor.pieces, (piece) => piece.course)
  return floor.courses.flatMap((course) => {
    const pieces = byCourse.get(course.course) ?? []
    const tops = pieces.flatMap((piece) => levelEdges(piece, course.high))
    return merged(tops).map(([from, to], i) => ({
      kind: 'seam' as const,
      id: `${floor.floor}: seam ${course.course}.${i + 1}`,
      span: null,
      from: frame.place(from, course.high),
      to: frame.place(to, course.high),
    }))
  })
}

function levelEdges({ ring }: PublishedPiece, height: Nm): (readonly [Nm, Nm])[] {
  return ring.flatMap((a, i) => {
    const b = ring[(i + 1) % ring.length] ?? a
    const level = a[1] === height && b[1] === height
    return level ? [[Math.min(a[0], b[0]), Math.max(a[0], b[0])] as const] : []
  })
}

/** Intervals that touch or overlap, made one. */
function merged(intervals: readonly (readonly [Nm, Nm])[]): (readonly [Nm, Nm])[] {
  const result: [Nm, Nm][] = []
  for (const [from, to] of [...intervals].sort((a, b) => a[0] - b[0])) {
    const last = result.at(-1)
    if (last !== undefined && from <= last[1]) last[1] = Math.max(last[1], to)
    else result.push([from, to])
  }
  return result
}

export function joints(floor: PublishedFloor, frame: RunFrame): JointLine[] {
  return floor.joints.map((joint) => ({
    kind: 'joint',
    id: `${floor.floor}: joint ${joint.leftPiece}|${joint.rightPiece}, ${joint.low}`,
    span: null,
    from: frame.place(joint.at, joint.low),
    to: frame.place(joint.at, joint.high),
  }))
}
