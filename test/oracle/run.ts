import type { House } from './house.ts'
import type { Floor, Product } from './job.ts'
import type { Side } from './patch.ts'
import { cross, dot, less, type Point, point, sameSpot } from './point.ts'
import { compare, floor, half, minus, over, plus, type Ratio, ratio, size, ZERO } from './ratio.ts'
import { WAYS, wallNamed } from './read-room.ts'
import { larger, smaller } from './region.ts'
import { faceOf } from './shape.ts'

/** How the planks lie: u along them (not of unit length), and the wall that the first course lies along. */
export interface Run {
  readonly axis: Point
  readonly start: Side['wall'] | null
  readonly edge: Side
}

/** The direction of the planks and the start, as the floor says them or as they are chosen. */
export function runOf(house: House, floor: Floor, rim: readonly Side[]): Run | null {
  const along = alongOf(house, floor, rim)
  const edges = edgesOf(rim).filter((side) => cross(less(side.to, side.from), along).n === 0n)
  const said = edges.filter((edge) => isStart(house, floor, edge))
  const edge = longest(said.length > 0 ? said : edges)
  if (edge === null) return null
  return { axis: less(edge.from, edge.to), start: edge.wall, edge }
}

function alongOf({ rooms }: House, { running, rooms: laid }: Floor, rim: readonly Side[]): Point {
  if (running === 'east-west') return point(1n, 0n)
  if (running === 'north-south') return point(0n, 1n)
  if (running === 'north-east') return point(1n, 1n)
  if (running === 'north-west') return point(-1n, 1n)
  const [, wall = '', of = ''] = /^along (.*) of (.*)$/.exec(running ?? '') ?? []
  const room = rooms.find(({ shape }) => shape.room.key === of)
  const place = room ? wallNamed(room.shape.room.walls, wall) : null
  if (room && place !== null) {
    const { left, right } = faceOf(room.shape, place)
    return less(right, left)
  }
  return longestBoxSide(laid.map((key) => rim.filter(({ wall }) => wall?.room === key)))
}

/** Along the longest side of any room's box; east-west of two alike. */
function longestBoxSide(rooms: readonly (readonly Side[])[]): Point {
  const sizes = rooms
    .filter((sides) => sides.length > 0)
    .map((sides) => {
      const ends = sides.flatMap(({ from, to }) => [from, to])
      return { wide: span(ends.map(({ x }) => x)), tall: span(ends.map(({ y }) => y)) }
    })
  const wide = sizes.map((box) => box.wide).reduce(larger, ZERO)
  const tall = sizes.map((box) => box.tall).reduce(larger, ZERO)
  return compare(wide, tall) >= 0 ? point(1n, 0n) : point(0n, 1n)
}

const span = (all: readonly Ratio[]): Ratio => minus(all.reduce(larger), all.reduce(smaller))

function isStart({ rooms }: House, { start }: Floor, { wall }: Side): boolean {
  const room = rooms.find(({ shape }) => shape.room.key === start?.room)
  return (
    start !== null &&
    room !== undefined &&
    wall?.room === start.room &&
    wall.place === wallNamed(room.shape.room.walls, start.wall)
  )
}

/** The first of the longest, by exact length. */
function longest(edges: readonly Side[]): Side | null {
  const square = ({ from, to }: Side) => dot(less(to, from), less(to, from))
  return edges.reduce<Side | null>(
    (best, edge) => (best === null || compare(square(edge), square(best)) > 0 ? edge : best),
    null,
  )
}

/**
 * The rim's straight stretches of one kind, ring by ring: each from its lowest, then leftmost corner on,
 * rings by their first corners.
 */
export function edgesOf(rim: readonly Side[]): readonly Side[] {
  const left = new Set(rim)
  const rings: Side[][] = []
  for (const first of rim) {
    if (!left.has(first)) continue
    const ring: Side[] = []
    for (let side: Side | undefined = first; side !== undefined; side = nextOf(side, left)) {
      left.delete(side)
      ring.push(side)
    }
    rings.push(fromLowest(joinedUp(ring)))
  }
  return rings.sort((a, b) => lowestFirst(a[0], b[0])).flat()
}

/** Where several go on from one place the sharpest turn to the left keeps within one floor. */
function nextOf(side: Side, left: ReadonlySet<Side>): Side | undefined {
  const way = less(side.to, side.from)
  const goingOn = [...left].filter(({ from }) => sameSpot(from, side.to))
  const turn = ({ from, to }: Side) => cross(way, less(to, from))
  return goingOn.sort((a, b) => compare(turn(b), turn(a)))[0]
}

function joinedUp(ring: readonly Side[]): Side[] {
  const done: Side[] = []
  for (const side of ring) {
    const last = done.at(-1)
    if (last && isOneEdge(last, side)) done[done.length - 1] = { ...last, to: side.to }
    else done.push(side)
  }
  const [first, last] = [done[0], done.at(-1)]
  if (done.length < 2 || !first || !last || !isOneEdge(last, first)) return done
  return [{ ...first, from: last.from }, ...done.slice(1, -1)]
}

function isOneEdge(a: Side, b: Side): boolean {
  const isStraight = cross(less(a.to, a.from), less(b.to, b.from)).n === 0n
  const isAlike = a.gap === b.gap && a.trim === b.trim
  return isStraight && isAlike && a.wall?.room === b.wall?.room && a.wall?.place === b.wall?.place
}

function fromLowest(ring: Side[]): Side[] {
  const lowest = ring.reduce((best, side, i) => (lowestFirst(side, ring[best]) < 0 ? i : best), 0)
  return [...ring.slice(lowest), ...ring.slice(0, lowest)]
}

const lowestFirst = (a: Side | undefined, b: Side | undefined): number =>
  a && b ? compare(a.from.y, b.from.y) || compare(a.from.x, b.from.x) : 0

/**
 * From the start wall to the longest edge of its room that faces it, less both gaps; null where none
 * does. `start` is where the first course ends at the start wall.
 */
export interface ClearWidth {
  readonly start: Ratio
  readonly most: Ratio | null
  readonly varies: Ratio
}

/** `turned` is the rim in the frame of the run, side for side. */
export function clearWidth(
  { start, edge }: Run,
  rim: readonly Side[],
  turned: readonly Side[],
): ClearWidth {
  const edges = turned.filter(({ wall }) => wall !== null && wall.room === start?.room)
  const starts = edges.filter((one) => one.wall?.place === start?.place && runs(one) < 0)
  const facing = longest(edges.filter((one) => runs(one) > 0 && isAlong(one)))
  const from = starts.length > 0 ? starts : turned.filter((_, i) => rim[i] === edge)
  const high = from.flatMap((one) => [one.from.y, one.to.y].map((y) => minus(y, ratio(one.gap))))
  const [most, least] = [high.reduce(larger), high.reduce(smaller)]
  if (facing === null) return { start: most, most: null, varies: ZERO }
  const low = [facing.from.y, facing.to.y].map((y) => plus(y, ratio(facing.gap)))
  const widest = minus(most, low.reduce(smaller))
  return { start: most, most: widest, varies: minus(widest, minus(least, low.reduce(larger))) }
}

/** Along u with floor at higher v (1), or against it with floor at lower v (-1). */
const runs = ({ from, to }: Side): number => compare(to.x, from.x)

/** No further off the run than half a right angle. */
const isAlong = ({ from, to }: Side): boolean => {
  const [u, v] = [minus(to.x, from.x), minus(to.y, from.y)]
  return compare(size(v), size(u)) <= 0
}

/** How the width is shared between first and last course. */
export interface Balance {
  /** Full courses between them, or in all where there is no rest. */
  readonly full: bigint
  readonly first: Ratio
  readonly last: Ratio
}

export function balanceOf(most: Ratio, varies: Ratio, { width, narrowestRip }: Product): Balance {
  const plank = ratio(width)
  const whole = floor(over(most, plank))
  const rest = minus(most, ratio(whole * width))
  if (rest.n === 0n) return { full: whole - 2n, first: plank, last: plank }
  if (whole === 0n) return { full: 0n, first: most, last: most }
  const shared = plus(plank, rest)
  const wished = larger(half(shared), plus(ratio(narrowestRip), varies))
  const last = smaller(smaller(wished, plank), minus(shared, ratio(narrowestRip)))
  return { full: whole - 1n, first: minus(shared, last), last }
}

/** v by which a shift moves the line: its part across the planks. */
export function shiftAcross({ shift }: Floor, axis: Point): Ratio {
  if (shift === null) return ZERO
  const place = WAYS.indexOf(shift.way)
  const east = [0n, 1n, 1n, 1n, 0n, -1n, -1n, -1n][place] ?? 0n
  const north = [1n, 1n, 0n, -1n, -1n, -1n, 0n, 1n][place] ?? 0n
  const side = compare(cross(axis, point(east, north)), ZERO)
  return ratio(shift.by * BigInt(side))
}
