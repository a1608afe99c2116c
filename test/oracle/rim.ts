import { throughCorners } from './corners.ts'
import type { Patch, Side } from './patch.ts'
import { add, cross, dot, less, type Point, sameSpot, scaled, toLeft } from './point.ts'
import { compare, half, over, plus, type Ratio, ratio, same, size, sum, ZERO } from './ratio.ts'

/**
 * Where the union of all patches ends, as straight stretches with the floor on their left. Each side of
 * each patch is parted where another touches it; a part belongs to the rim when floor lies on one side
 * of it only, or when the run is parted there.
 */
export function rimOf(patches: readonly Patch[]): readonly Side[] {
  const boxes = throughCorners(patches).map((patch) => ({ ...patch, box: boxOf(patch.sides) }))
  const hasFloor = (at: Point) => {
    const around = boxes.filter(({ box }) => isIn(at, box)).filter(({ sides }) => holds(sides, at))
    return around.some(({ isFloor }) => isFloor) && around.every(({ isFloor }) => isFloor)
  }
  const all = boxes.flatMap((patch) => patch.sides.map((side) => ({ side, box: boxOf([side]) })))
  const found = boxes.flatMap(({ isFloor, sides }) =>
    sides.flatMap((side) => {
      const box = boxOf([side])
      const others = all.filter((other) => other.side !== side && touches(box, other.box))
      const parts = partsOf(
        side,
        others.map((other) => other.side),
      )
      if (side.isBreak) return [isFloor && isOnRight(sides) ? turned(side) : side]
      return parts.flatMap((part) => onRim(part, hasFloor))
    }),
  )
  return found.filter((one, i) => !found.slice(0, i).some((other) => isSame(one, other)))
}

/** A clockwise ring has its floor on the right of its sides. */
function isOnRight(sides: readonly Side[]): boolean {
  return compare(sum(sides.map(({ from, to }) => cross(from, to))), ZERO) < 0
}

const turned = (side: Side): Side => ({ ...side, from: side.to, to: side.from })
const isSame = (a: Side, b: Side) => sameSpot(a.from, b.from) && sameSpot(a.to, b.to)

/** The part with the floor on its left; nothing where floor lies on both sides or on none. */
function onRim(part: Side, hasFloor: (at: Point) => boolean): readonly Side[] {
  const way = less(part.to, part.from)
  const hair = over(ratio(1n, 4n), plus(size(way.x), size(way.y)))
  const at = scaled(add(part.from, part.to), ratio(1n, 2n))
  const off = scaled(toLeft(way), hair)
  const [isLeft, isRight] = [hasFloor(add(at, off)), hasFloor(less(at, off))]
  if (isLeft === isRight) return []
  return [isLeft ? part : turned(part)]
}

/** A side parted at every corner of another that lies on it, and wherever another crosses it. */
function partsOf(side: Side, others: readonly Side[]): readonly Side[] {
  const way = less(side.to, side.from)
  const square = dot(way, way)
  const along = (at: Point) => over(dot(less(at, side.from), way), square)
  const places = others.flatMap(({ from, to }) => {
    const [a, b] = [cross(way, less(from, side.from)), cross(way, less(to, side.from))]
    if (a.n === 0n || b.n === 0n)
      return [...(a.n === 0n ? [along(from)] : []), ...(b.n === 0n ? [along(to)] : [])]
    if (a.n > 0n === b.n > 0n) return []
    return [along(add(from, scaled(less(to, from), over(a, plus(a, { n: -b.n, d: b.d })))))]
  })
  const inner = places.filter((place) => place.n > 0n && place.n < place.d).sort(compare)
  const cuts = [
    ZERO,
    ...inner.filter((place, i) => i === 0 || !same(place, inner[i - 1] ?? ZERO)),
    ratio(1n),
  ]
  const at = (place: Ratio) =>
    place.n === 0n ? side.from : place.n === place.d ? side.to : add(side.from, scaled(way, place))
  return cuts.slice(1).map((cut, i) => ({ ...side, from: at(cuts[i] ?? ZERO), to: at(cut) }))
}

interface Box {
  readonly west: Ratio
  readonly east: Ratio
  readonly south: Ratio
  readonly north: Ratio
}

function boxOf(sides: readonly Side[]): Box {
  const ends = sides.flatMap(({ from, to }) => [from, to])
  const extreme = (all: readonly Ratio[], way: number) =>
    all.reduce((a, b) => (compare(a, b) * way > 0 ? a : b))
  const [xs, ys] = [ends.map(({ x }) => x), ends.map(({ y }) => y)]
  return {
    west: extreme(xs, -1),
    east: extreme(xs, 1),
    south: extreme(ys, -1),
    north: extreme(ys, 1),
  }
}

const isIn = ({ x, y }: Point, { west, east, south, north }: Box): boolean =>
  compare(x, west) > 0 && compare(x, east) < 0 && compare(y, south) > 0 && compare(y, north) < 0

const touches = (a: Box, b: Box): boolean =>
  compare(a.west, b.east) <= 0 &&
  compare(b.west, a.east) <= 0 &&
  compare(a.south, b.north) <= 0 &&
  compare(b.south, a.north) <= 0

/** Whether a place that lies on no side is inside a ring: an odd number of sides lies east of it. */
function holds(sides: readonly Side[], { x, y }: Point): boolean {
  return sides.reduce((isInside, { from, to }) => {
    const [isFromAbove, isToAbove] = [compare(from.y, y) > 0, compare(to.y, y) > 0]
    if (isFromAbove === isToAbove) return isInside
    const turn = cross(less(to, from), less({ x, y }, from))
    return turn.n > 0n === isToAbove ? !isInside : isInside
  }, false)
}

/** The area inside a closed rim. */
export function areaWithin(rim: readonly Side[]): Ratio {
  return half(sum(rim.map(({ from, to }) => cross(from, to))))
}

/** The rim's straight stretches of one kind, each whole; both sides of a break in the run have a corner there. */
export function edgesOf(rim: readonly Side[]): readonly Side[] {
  const ends = rim.filter(({ isBreak }) => isBreak).flatMap(({ from, to }) => [from, to])
  const goOn = (at: Point, next: Point) =>
    sameSpot(at, next) && !ends.some((end) => sameSpot(end, at))
  return rim.reduce<Side[]>((done, side) => {
    const before = done.findIndex((one) => isOneEdge(one, side) && goOn(one.to, side.from))
    const joined = before < 0 ? side : { ...side, from: done[before]?.from ?? side.from }
    if (before >= 0) done.splice(before, 1)
    const after = done.findIndex((one) => isOneEdge(joined, one) && goOn(joined.to, one.from))
    const whole = after < 0 ? joined : { ...joined, to: done[after]?.to ?? joined.to }
    if (after >= 0) done.splice(after, 1)
    done.push(whole)
    return done
  }, [])
}

function isOneEdge(a: Side, b: Side): boolean {
  const [one, other] = [less(a.to, a.from), less(b.to, b.from)]
  const isStraight = cross(one, other).n === 0n && dot(one, other).n > 0n
  const isAlike = a.gap === b.gap && a.trim === b.trim
  return isStraight && isAlike && a.wall?.room === b.wall?.room && a.wall?.place === b.wall?.place
}
