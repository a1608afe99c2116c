import { type Course, holds } from './courses.ts'
import { point } from './point.ts'
import type { PublishedFloor, PublishedPiece, Ring } from './published.ts'
import { compare, half, minus, plus, type Ratio, ratio, same, size, ZERO } from './ratio.ts'
import {
  alongFrom,
  extentOf,
  hangingTogether,
  heightAt,
  larger,
  type Region,
  regionOf,
  type Slice,
  smaller,
  steepness,
} from './region.ts'

/** A blank as it is laid: the box between its joints, and the pieces that it holds. */
export interface Blank {
  readonly course: number
  /** As published; it says which plank it comes from. */
  readonly published: readonly PublishedPiece[]
  readonly pieces: readonly Region[]
  readonly from: Ratio
  readonly to: Ratio
  /** The stretch where the row of planks begins that the blank is laid in. */
  readonly row: Region
  /** How long its plank is. */
  readonly plankLength: bigint
}

/** Two pieces meeting end to end, along a greatest interval of v. */
export interface Joint {
  readonly course: number
  readonly at: Ratio
  readonly low: Ratio
  readonly high: Ratio
  readonly left: Region
  readonly right: Region
  /** The blank that ends there. */
  readonly blank: Blank
}

export interface Laying {
  readonly blanks: readonly Blank[]
  readonly joints: readonly Joint[]
}

/**
 * Every blank and joint of every stretch, from the length of its start piece alone: after that a joint
 * follows every plank's length. A joint through a hole (parted) begins such a row anew.
 */
export function laid(courses: readonly Course[], floor: PublishedFloor): Laying {
  const stretches = courses.flatMap((course) =>
    course.stretches.map((stretch) => ({ course, stretch })),
  )
  const blanks = stretches.flatMap(({ course, stretch }) => {
    const here = floor.pieces.filter(
      (piece) => piece.course === course.course && lies(piece, stretch),
    )
    return blanksOf(stretch, course.course, here, floor)
  })
  return { blanks, joints: jointsOf(blanks) }
}

/** The region inside a published ring. */
export function regionWithin(ring: Ring): Region {
  const corners = ring.map(([u, v]) => point(BigInt(u), BigInt(v)))
  return regionOf(
    corners.map((from, i) => ({ from, to: corners[(i + 1) % corners.length] ?? from })),
    [],
  )
}

/** Told by the middle of its longest slice. */
function lies(piece: PublishedPiece, stretch: Region): boolean {
  const slices = regionWithin(piece.ring)
  if (slices.length === 0) return false
  const slice = slices.reduce((a, b) =>
    compare(minus(b.to, b.from), minus(a.to, a.from)) > 0 ? b : a,
  )
  const u = half(plus(slice.from, slice.to))
  return holds(stretch, u, half(plus(heightAt(slice.low, u), heightAt(slice.high, u))))
}

function blanksOf(
  stretch: Region,
  course: number,
  pieces: readonly PublishedPiece[],
  floor: PublishedFloor,
): readonly Blank[] {
  const groups = [...Map.groupBy(pieces, ({ blank }) => blank).values()].sort(
    (a, b) => leftOf(a) - leftOf(b),
  )
  const [start, end] = extentOf(stretch).u
  const blanks: Blank[] = []
  let from = start
  let row = beginning(stretch, start)
  let isStart = true
  for (const [i, published] of groups.entries()) {
    const plankLength = plankLengthOf(published, floor)
    const cut = isStart ? startLength(published) : plankLength
    const parted = partedAfter(published, groups[i + 1], floor)
    const joint = parted ?? ontoCorner(plus(from, ratio(cut)), stretch, row)
    const to = i === groups.length - 1 ? end : joint
    const pieces = hangingTogether(alongFrom(stretch, from, to)).filter(isMoreThanHair)
    blanks.push({ course, published, pieces, from, to, row, plankLength })
    isStart = parted !== null
    if (isStart) row = []
    from = to
  }
  return blanks
}

const beginning = (stretch: Region, start: Ratio): Region =>
  stretch.filter(({ from }) => same(from, start))

/** In a row that begins at a slanted edge a joint may lie off a corner by what is rounded away. */
function ontoCorner(joint: Ratio, stretch: Region, row: Region): Ratio {
  if (!row.some(isSlanted)) return joint
  const isNear = (place: Ratio) => compare(size(minus(place, joint)), ratio(8n)) <= 0
  return stretch.flatMap(({ from, to }) => [from, to]).find(isNear) ?? joint
}

const isSlanted = ({ low, high }: Slice): boolean =>
  [low, high].some((line) => steepness(line).n > 0n)

/** A slanted place beside a joint may lie off it by what is rounded away. */
const isMoreThanHair = (piece: Region): boolean =>
  compare(longAlong(piece), piece.some(isSlanted) ? ratio(8n) : ZERO) > 0

const leftOf = (pieces: readonly PublishedPiece[]): number =>
  Math.min(...pieces.flatMap(({ ring }) => ring.map(([u]) => u)))

/** The published length of a start piece is the one length that is taken over. */
function startLength([piece]: readonly PublishedPiece[]): bigint {
  return piece === undefined ? 0n : BigInt(piece.along[1] - piece.along[0])
}

function plankLengthOf([piece]: readonly PublishedPiece[], { planks }: PublishedFloor): bigint {
  return BigInt(planks.find(({ plank }) => plank === piece?.plank)?.length ?? 0)
}

function partedAfter(
  pieces: readonly PublishedPiece[],
  next: readonly PublishedPiece[] | undefined,
  { joints }: PublishedFloor,
): Ratio | null {
  const isOf = (all: readonly PublishedPiece[] | undefined, number: number) =>
    all?.some(({ piece }) => piece === number) === true
  const joint = joints.find(
    ({ parted, leftPiece, rightPiece }) =>
      parted && isOf(pieces, leftPiece) && isOf(next, rightPiece),
  )
  return joint === undefined ? null : ratio(BigInt(joint.at))
}

function jointsOf(blanks: readonly Blank[]): readonly Joint[] {
  return blanks.flatMap((blank, i) => {
    const next = blanks[i + 1]
    if (next === undefined || next.course !== blank.course || compare(next.from, blank.to) !== 0)
      return []
    return blank.pieces.flatMap((left) =>
      next.pieces.flatMap((right) => meetings(blank, left, right)),
    )
  })
}

/** Where two pieces meet at the end of a blank: the intervals of v that both have there. */
function meetings(blank: Blank, left: Region, right: Region): readonly Joint[] {
  const { course, to: at } = blank
  const ends = (region: Region, isEnd: boolean) =>
    region
      .filter((slice) => compare(isEnd ? slice.to : slice.from, at) === 0)
      .map((slice) => ({ low: heightAt(slice.low, at), high: heightAt(slice.high, at) }))
  return ends(left, true).flatMap((one) =>
    ends(right, false).flatMap((other) => {
      const [low, high] = [larger(one.low, other.low), smaller(one.high, other.high)]
      return compare(low, high) < 0 ? [{ course, at, low, high, left, right, blank }] : []
    }),
  )
}

export const longAlong = (region: Region): Ratio => {
  const [from, to] = extentOf(region).u
  return minus(to, from)
}
