import type { Side } from './patch.ts'
import {
  add,
  cross,
  dot,
  length,
  less,
  meeting,
  type Point,
  sameSpot,
  scaled,
  toLeft,
  unit,
} from './point.ts'
import { compare, fine, type Ratio, ratio, size, times, ZERO } from './ratio.ts'
import { type Region, regionOf, type Stretch } from './region.ts'

/** What planks cover: the floor less a band along each stretch of its rim, mitred where it juts in. */
export function coveredWithin(rim: readonly Side[]): Region {
  const gapped = rim.filter(({ gap }) => gap > 0n)
  const bands = gapped.map((side) =>
    around([side.from, side.to, inset(side, side.to), inset(side, side.from)]),
  )
  const corners = rim.flatMap((side) =>
    rim
      .filter((next) => sameSpot(side.to, next.from) && needsCorner(side, next))
      .map((next) => around(mitreOf(side, next))),
  )
  return regionOf(rim, [...bands, ...corners])
}

/** What is nowhere so wide is left out. */
const SPIKE = ratio(1000n)

/**
 * Where the rim juts in the bands leave a corner open. Where it is square but for what a turn by any
 * angle rounds away, they leave a hair, and where it is all but square beside an edge without a gap, a
 * spike; where it is straight but for rounding, there is no corner.
 */
function needsCorner(side: Side, next: Side): boolean {
  const [across, on] = [size(cross(wayOf(side), wayOf(next))), size(dot(wayOf(side), wayOf(next)))]
  const isAlmost = (small: Ratio, large: Ratio) =>
    compare(times(small, ratio(10n ** 6n)), large) < 0
  if ((side.gap === 0n && next.gap === 0n) || isAlmost(across, on)) return false
  const isHair = on.n !== 0n && isAlmost(on, across)
  return turnsRight(side, next) || isHair || leavesSpike(side, next)
}

/** A corner wider than a square one, by so little that a band ends less than a spike off the next edge. */
function leavesSpike(side: Side, next: Side): boolean {
  const [across, on] = [cross(wayOf(side), wayOf(next)), dot(wayOf(side), wayOf(next))]
  const [gap, bare] = side.gap > 0n ? [side.gap, next] : [next.gap, side]
  if (bare.gap > 0n || on.n <= 0n || across.n <= 0n) return false
  const isNarrow = compare(times(ratio(gap), on), times(SPIKE, across)) < 0
  return isNarrow && compare(length(wayOf(bare)), ratio(gap)) > 0
}

const wayOf = ({ from, to }: Side): Point => less(to, from)

/** A place on the rim moved into the floor by the gap. */
function inset(side: Side, at: Point): Point {
  return finely(add(at, scaled(toLeft(unit(wayOf(side))), ratio(side.gap))))
}

const finely = ({ x, y }: Point): Point => ({ x: fine(x), y: fine(y) })

const turnsRight = (side: Side, next: Side): boolean =>
  compare(cross(wayOf(side), wayOf(next)), ZERO) < 0

/** The corner between two bands; cut square where its point would lie further off than four gaps. */
function mitreOf(side: Side, next: Side): readonly Point[] {
  const [end, start] = [inset(side, side.to), inset(next, next.from)]
  const point = meeting(end, wayOf(side), start, wayOf(next))
  if (point === null) return [side.to, end, start]
  const most = ratio(4n * (side.gap > next.gap ? side.gap : next.gap))
  const reach = less(point, side.to)
  if (compare(dot(reach, reach), times(most, most)) <= 0)
    return [side.to, end, finely(point), start]
  const square = scaled(reach, { n: most.n * length(reach).d, d: length(reach).n * most.d })
  return [side.to, end, finely(add(side.to, square)), start]
}

function around(ring: readonly Point[]): readonly Stretch[] {
  return ring.map((from, i) => ({ from, to: ring[(i + 1) % ring.length] ?? from }))
}
