import { compare, minus, plus, type Ratio, ratio, same, size, times } from './ratio.ts'
import {
  distinct,
  goesOnAs,
  heightAt,
  type Line,
  larger,
  parted,
  type Region,
  type Slice,
  smaller,
  steepness,
} from './region.ts'

/** At most this wide a side counts as a point. */
const POINT = ratio(1000n)

interface Trapezium {
  readonly slice: Slice
  readonly left: Ratio
  readonly right: Ratio
}

/** How narrow a piece is where it is narrowest; null where nothing of it counts. */
export function narrowest(piece: Region, shortest: Ratio): Ratio | null {
  const [hairs, kept] = parted(trapeziums(piece), (one) => !isMoreThanHair(one))
  const all = kept.map((one) => pastHairs(one, hairs))
  const points = all.flatMap((one) => [pointFrom(one, all, 'left'), pointFrom(one, all, 'right')])
  const tapering = new Set(points.flat())
  const widths = [
    ...points.flatMap((point) => (point.length === 0 ? [] : widest(point, shortest))),
    ...all
      .filter((one) => !tapering.has(one) && !isThread(one))
      .map(({ left, right }) => smaller(left, right)),
  ]
  return widths.length === 0 ? null : widths.reduce(smaller)
}

/** The piece cut at every u of its vertices. */
function trapeziums(piece: Region): readonly Trapezium[] {
  const places = distinct(piece.flatMap(({ from, to }) => [from, to]))
  return piece.flatMap((slice) => {
    const inner = places.filter((x) => compare(slice.from, x) < 0 && compare(x, slice.to) < 0)
    const cuts = [slice.from, ...inner, slice.to]
    return cuts.slice(1).map((to, i) => {
      const part = { ...slice, from: cuts[i] ?? to, to }
      return { slice: part, left: widthAt(part, part.from), right: widthAt(part, to) }
    })
  })
}

/** What is rounded away of a corner. */
const HAIR = ratio(2n)
/** An upright that leans by no more than slanted places may be off: the piece ends there, it does not taper. */
const LEAN = ratio(8n)
const isMoreThanHair = ({ slice }: Trapezium): boolean =>
  compare(minus(slice.to, slice.from), LEAN) > 0

/** A trapezium whose steep edge goes on in a hair beside it ends where that does. */
function pastHairs(one: Trapezium, hairs: readonly Trapezium[]): Trapezium {
  const goesOnIn = ({ slice }: Trapezium, isBefore: boolean) =>
    same(isBefore ? slice.to : slice.from, isBefore ? one.slice.from : one.slice.to) &&
    (isSteep(slice.low)
      ? goesOnAs(slice.low, one.slice.low)
      : isSteep(slice.high) && goesOnAs(slice.high, one.slice.high))
  const before = hairs.find((hair) => goesOnIn(hair, true))
  const after = hairs.find((hair) => goesOnIn(hair, false))
  return { ...one, left: before?.left ?? one.left, right: after?.right ?? one.right }
}

/** An upright but for rounding. */
const isSteep = (line: Line): boolean => compare(steepness(line), ratio(1000n)) > 0

const widthAt = ({ low, high }: Slice, x: Ratio): Ratio =>
  minus(heightAt(high, x), heightAt(low, x))
const isThin = (width: Ratio): boolean => compare(width, POINT) <= 0
const isThread = ({ left, right }: Trapezium): boolean => isThin(left) && isThin(right)

/** From a point at one side all trapeziums that go on from each other and never get narrower. */
function pointFrom(
  first: Trapezium,
  all: readonly Trapezium[],
  side: 'left' | 'right',
): readonly Trapezium[] {
  const far = side === 'left' ? 'right' : 'left'
  if (!isThin(first[side]) || isThin(first[far])) return []
  const point = [first]
  for (let last: Trapezium | undefined = first; last !== undefined; ) {
    const end: Trapezium = last
    last = all.find(
      (next) => goesOn(end, next, side) && compare(plus(next[far], ratio(2n)), next[side]) >= 0,
    )
    if (last !== undefined) point.push(last)
  }
  return point
}

/** The whole side of the one is the whole side of the next, but for what is rounded away. */
function goesOn(one: Trapezium, next: Trapezium, side: 'left' | 'right'): boolean {
  const at = side === 'left' ? one.slice.to : one.slice.from
  const start = side === 'left' ? next.slice.from : next.slice.to
  const isOne = (a: Line, b: Line) =>
    compare(
      size(minus(heightAt(a, at), heightAt(b, start))),
      times(HAIR, plus(ratio(1n), larger(steepness(a), steepness(b)))),
    ) <= 0
  return (
    compare(size(minus(at, start)), HAIR) <= 0 &&
    isOne(one.slice.low, next.slice.low) &&
    isOne(one.slice.high, next.slice.high)
  )
}

/** Of a point the widest width; nothing where it is no longer than the limit. */
function widest(point: readonly Trapezium[], shortest: Ratio): readonly Ratio[] {
  const from = point.map(({ slice }) => slice.from).reduce(smaller)
  const to = point.map(({ slice }) => slice.to).reduce(larger)
  if (compare(minus(to, from), shortest) <= 0) return []
  return [point.flatMap(({ left, right }) => [left, right]).reduce(larger)]
}
