import type { House } from './house.ts'
import type { Floor } from './job.ts'
import type { Side } from './patch.ts'
import { pairOf } from './phrases.ts'
import { cross, dot, length, less, type Point, point } from './point.ts'
import { compare, minus, over, type Ratio, ratio, size, sum, times, ZERO } from './ratio.ts'
import { WAYS, wallNamed } from './read-room.ts'
import { larger, smaller } from './region.ts'
import { faceOf } from './shape.ts'

/** All edges of one wall that have the floor on the same side; openings in it are left out. */
export interface WallEdges {
  readonly room: string | null
  readonly place: number
  readonly edges: readonly Side[]
}

/** How the planks lie: u along them (not of unit length), and the wall that the first course lies along. */
export interface Run {
  readonly axis: Point
  readonly start: WallEdges
}

/** The walls where laying may start: the one that is said, else the longest, of those alike each. */
export function runsOf(house: House, floor: Floor, rim: readonly Side[]): readonly Run[] {
  const along = alongOf(house, floor, rim)
  const walls = candidates(rim, along)
  const said = walls.filter((wall) => isStart(house, floor, wall))
  const starts = said.length > 0 ? said : longest(walls, along)
  return starts.map((start) => ({ start, axis: axisFrom(start, along) }))
}

/** Walls along the planks; where there are none, steeper ones; where there are none, other edges. */
function candidates(rim: readonly Side[], along: Point): readonly WallEdges[] {
  const ofWalls = rim.filter(({ wall }) => wall !== null)
  const choices = [ofWalls, rim].flatMap((edges) =>
    [LEVEL, STEEPEST].map((rise) => edges.filter((side) => rises(wayOf(side), along, rise))),
  )
  const edges = choices.find((choice) => choice.length > 0) ?? []
  return wallsOf(edges, (side) => compare(dot(wayOf(side), along), ZERO) > 0)
}

const wayOf = ({ from, to }: Side): Point => less(to, from)

/** What an edge along the planks may rise across them, in parts of its run along them. */
export const LEVEL = ratio(1n, 4n)
/** The same where no wall lies along them. */
const STEEPEST = ratio(1n)

/** Whether an edge rises across the run by no more than so many parts of its run along it. */
export function rises(way: Point, along: Point, most: Ratio): boolean {
  return compare(size(cross(way, along)), times(size(dot(way, along)), most)) <= 0
}

/** The run's direction, turned so that the floor lies below the start wall: against its edges. */
function axisFrom({ edges }: WallEdges, along: Point): Point {
  const [edge] = edges
  const isAgainst = edge !== undefined && compare(dot(wayOf(edge), along), ZERO) < 0
  return isAgainst ? along : less(point(0n, 0n), along)
}

/** Edges put together by wall and side; those of no wall stand each alone. */
export function wallsOf(
  edges: readonly Side[],
  side: (edge: Side) => boolean,
): readonly WallEdges[] {
  const keyOf = (edge: Side, i: number) =>
    edge.wall === null ? `${i}` : `${edge.wall.room}, ${edge.wall.place}, ${side(edge)}`
  const groups = new Map<string, Side[]>()
  for (const [i, edge] of edges.entries())
    groups.set(keyOf(edge, i), [...(groups.get(keyOf(edge, i)) ?? []), edge])
  return [...groups.values()].map((all) => {
    const wall = all[0]?.wall ?? null
    return { room: wall?.room ?? null, place: wall?.place ?? 0, edges: all }
  })
}

/** How long a wall is along the run, openings left out. */
export const longOf = ({ edges }: WallEdges, along: Point): Ratio =>
  over(sum(edges.map((edge) => size(dot(wayOf(edge), along)))), length(along))

/** Every wall that is as long as the longest. */
export function longest(walls: readonly WallEdges[], along: Point): readonly WallEdges[] {
  const long = walls.map((wall) => longOf(wall, along))
  const most = long.reduce(larger, ZERO)
  return walls.filter((_, i) => compare(long[i] ?? ZERO, most) === 0)
}

function alongOf({ rooms }: House, { running, rooms: laid }: Floor, rim: readonly Side[]): Point {
  if (running === 'east-west') return point(1n, 0n)
  if (running === 'north-south') return point(0n, 1n)
  if (running === 'north-east') return point(1n, 1n)
  if (running === 'north-west') return point(-1n, 1n)
  const [wall = '', of = ''] = pairOf((running ?? '').replace(/^along /, ''), 'of') ?? []
  const room = rooms.find(({ shape }) => shape.room.key === of)
  const place = room ? wallNamed(room.shape.room.walls, wall) : null
  if (room && place !== null) {
    const { left, right } = faceOf(room.shape, place)
    return less(right, left)
  }
  return longestBoxSide(laid.map((key) => rim.filter((side) => side.wall?.room === key)))
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

function isStart({ rooms }: House, { start }: Floor, wall: WallEdges): boolean {
  if (start === null || wall.room !== start.room) return false
  const room = rooms.find(({ shape }) => shape.room.key === start.room)
  return room !== undefined && wall.place === wallNamed(room.shape.room.walls, start.wall)
}

/** v by which a shift moves the line: its part across the planks. */
export function shiftAcross({ shift }: Floor, axis: Point): Ratio {
  if (shift === null) return ZERO
  const place = WAYS.indexOf(shift.way)
  const east = [0n, 1n, 1n, 1n, 0n, -1n, -1n, -1n][place] ?? 0n
  const north = [1n, 1n, 0n, -1n, -1n, -1n, 0n, 1n][place] ?? 0n
  return ratio(shift.by * BigInt(compare(cross(axis, point(east, north)), ZERO)))
}
