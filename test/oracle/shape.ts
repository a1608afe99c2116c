import type { Room, Wall } from './job.ts'
import type { Nm } from './lengths.ts'
import { triangulated } from './out-of-square.ts'
import { add, length, less, meeting, type Point, rounded, scaled, toLeft, unit } from './point.ts'
import { plus, type Ratio, ratio, times } from './ratio.ts'
import { type Closing, closed, closingOf, coursesOf } from './traverse.ts'
import { tangent } from './turns.ts'
import { drawnPlane, rimOutside, type Taken, taken, usualPlane } from './worth.ts'

/** A room closed: its corners as drawn, from the first wall's left end on, and as the floor meets them. */
export interface Shape {
  readonly room: Room
  readonly takens: readonly Taken[]
  /** Null where distances alone give the shape. */
  readonly closing: Closing | null
  readonly corners: readonly Point[]
  readonly rim: readonly Point[]
}

/** Null where a room has no walls, or one is still to be read. */
export function shapeOf(room: Room): Shape | null {
  const read = room.walls.map((wall) => taken(wall.readings, room.tape))
  const takens = read.flatMap((one) => one ?? [])
  if (takens.length < 3 || takens.length < read.length) return null
  const inPlane = broughtToPlane(room, takens)
  const courses = coursesOf(room.walls, inPlane)
  const exact = room.isOutOfSquare ? triangulated(room, inPlane) : closed(courses)
  if (exact === null) return null
  const closing = room.isOutOfSquare ? null : closingOf(courses)
  const rim = movedOut(exact, rimOutside(room)).map(rounded)
  return { room, takens, closing, corners: exact.map(rounded), rim }
}

/**
 * Walls read to another plane than the room is drawn to: by the base's thickness at each corner, times
 * the tangent of half the turn to the right.
 */
function broughtToPlane(room: Room, takens: readonly Taken[]): readonly Taken[] {
  const drawn = drawnPlane(room)
  const thick = ratio(room.base.thick ?? 0n)
  const turns = room.walls.map((wall, i) => turnBefore(room.walls, wall, i))
  return takens.map((one, i) => {
    const plane = room.walls[i]?.touching ?? usualPlane(room)
    const isMixed = [plane, drawn].includes('base') && [plane, drawn].includes('wall')
    if (plane === drawn || !isMixed) return one
    const sides = [turns[i], turns[(i + 1) % turns.length]]
    const bends = sides.map((degrees) => tangent(ratio(BigInt(degrees ?? 0), 2n))).reduce(plus)
    const change = times(times(thick, bends), ratio(plane === 'wall' ? -1n : 1n))
    return { ...one, length: plus(one.length, change) }
  })
}

const EIGHTHS = [
  'north',
  'north-east',
  'east',
  'south-east',
  'south',
  'south-west',
  'west',
  'north-west',
]

/** Degrees to the right from the wall before, of walls by way. */
function turnBefore(walls: readonly Wall[], { way }: Wall, place: number): number {
  const before = walls[(place + walls.length - 1) % walls.length]
  const turn = (EIGHTHS.indexOf(way) - EIGHTHS.indexOf(before?.way ?? way) + 8) % 8
  return turn > 4 ? (turn - 8) * 45 : turn * 45
}

/** A clockwise ring with every side moved outward, mitred. */
function movedOut(ring: readonly Point[], by: Nm): readonly Point[] {
  if (by === 0n) return ring
  const sides = ring.map((from, i) => {
    const along = unit(less(ring[(i + 1) % ring.length] ?? from, from))
    return { along, from: add(from, scaled(toLeft(along), ratio(by))) }
  })
  return sides.map(({ from, along }, i) => {
    const before = sides[(i + sides.length - 1) % sides.length]
    const corner = before ? meeting(before.from, before.along, from, along) : null
    return corner ?? from
  })
}

/** A wall of a closed room: its ends as you face it, the way along it, and the way out of the room. */
export interface Face {
  readonly left: Point
  readonly right: Point
  readonly along: Point
  readonly out: Point
  readonly long: Ratio
}

/** A wall where the floor meets it. */
export const faceOf = ({ rim }: Shape, wall: number): Face => sideOf(rim, wall)

/** A wall as it was read to. */
export const drawnFaceOf = ({ corners }: Shape, wall: number): Face => sideOf(corners, wall)

function sideOf(ring: readonly Point[], wall: number): Face {
  const left = ring[wall]
  const right = ring[(wall + 1) % ring.length]
  if (left === undefined || right === undefined) throw new RangeError('a room has no such wall')
  const way = less(right, left)
  const along = unit(way)
  return { left, right, along, out: toLeft(along), long: length(way) }
}

/** How far along a wall its left end was moved (below nothing: the wall grew by it). */
export function leftMoved(shape: Shape, wall: number): Ratio {
  const { along } = faceOf(shape, wall)
  const drawn = shape.corners[wall]
  const rim = shape.rim[wall]
  return drawn && rim ? alongside(less(rim, drawn), along) : ratio(0n)
}

export function rightMoved(shape: Shape, wall: number): Ratio {
  const { along } = faceOf(shape, wall)
  const next = (wall + 1) % shape.corners.length
  const drawn = shape.corners[next]
  const rim = shape.rim[next]
  return drawn && rim ? alongside(less(rim, drawn), along) : ratio(0n)
}

const alongside = (move: Point, along: Point): Ratio =>
  plus(times(move.x, along.x), times(move.y, along.y))
