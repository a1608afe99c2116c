import type { OnWall, Room, Wall } from './job.ts'
import { add, type Point, rounded, scaled } from './point.ts'
import { compare, minus, plus, type Ratio, ratio, sum, times, ZERO } from './ratio.ts'
import { type Face, faceOf, leftMoved, rightMoved, type Shape } from './shape.ts'
import { allowance, type Taken, taken } from './worth.ts'

/** Where something stands on a wall: its left and right side on the face, as you look at it. */
export interface Spot {
  readonly one: OnWall
  readonly face: Face
  readonly left: Point
  readonly right: Point
  /** The same two as distances from the wall's left end. */
  readonly from: Ratio
  readonly to: Ratio
  /** A whole side without a wall. */
  readonly isOpenSide: boolean
}

/** Everything on the walls of a room whose place is known. */
export function spotsOf(shape: Shape): readonly Spot[] {
  const { room } = shape
  const standing = room.onWalls.flatMap((one) => spotOf(shape, one) ?? [])
  const open = room.walls.flatMap((wall, i) =>
    wall.openTo === null ? [] : [openSide(shape, wall, i)],
  )
  return [...standing, ...open]
}

function spotOf(shape: Shape, one: OnWall): Spot | null {
  const face = faceOf(shape, one.wall)
  const stretch = stretchOf(shape, one, face)
  if (stretch === null) return null
  const [from, to] = stretch
  const at = (on: Ratio) => rounded(add(face.left, scaled(face.along, on)))
  return { one, face, from, to, left: at(from), right: at(to), isOpenSide: false }
}

/** From the wall's left end to both sides of the thing. */
function stretchOf(shape: Shape, one: OnWall, face: Face): readonly [Ratio, Ratio] | null {
  const { room } = shape
  const width = taken(one.width, room.tape)
  const near = nearOf(room, one)
  if (near === null) return null
  if (one.farAt !== null) {
    const far = taken([one.farAt], room.tape)
    return far === null ? null : fromLeft(shape, one, face, [near.length, far.length])
  }
  if (width === null) return null
  const [from, to] = fromLeft(shape, one, face, [near.length, plus(near.length, width.length)])
  const wall = shape.takens[one.wall]
  const allowed = allowance([wall, near, width].map((read) => read?.variance ?? ZERO))
  return backOnto(from, to, face.long, ratio(allowed))
}

/** The distance of its near side from an end of the wall: read, or made by the parts on its left. */
function nearOf(room: Room, one: OnWall): Taken | null {
  if (one.at !== null) return taken([one.at], room.tape)
  const wall = room.walls[one.wall]
  return wall?.parts == null ? null : { length: partsBefore(room, wall, one), variance: ZERO }
}

function partsBefore(room: Room, { parts }: Wall, one: OnWall): Ratio {
  const alike = room.onWalls.filter(({ wall, kind }) => wall === one.wall && kind === one.kind)
  const nth = alike.indexOf(one)
  const places = (parts ?? []).flatMap(({ kind }, i) => (kind === one.kind ? [i] : []))
  const before = (parts ?? []).slice(0, places[nth] ?? 0)
  return sum(before.map(({ length }) => ratio(length)))
}

/** Distances from the end that was measured from, as distances from the left end of the floor's rim. */
function fromLeft(
  shape: Shape,
  one: OnWall,
  face: Face,
  [near, far]: readonly [Ratio, Ratio],
): readonly [Ratio, Ratio] {
  if (one.from === 'left') {
    const moved = leftMoved(shape, one.wall)
    return [minus(near, moved), minus(far, moved)]
  }
  const end = minus(face.long, rightMoved(shape, one.wall))
  return [minus(end, far), minus(end, near)]
}

/** What ends past the wall by no more than the readings allow is moved back onto it. */
function backOnto(from: Ratio, to: Ratio, long: Ratio, allowed: Ratio): readonly [Ratio, Ratio] {
  const past = compare(from, ZERO) < 0 ? from : compare(to, long) > 0 ? minus(to, long) : ZERO
  const isFar = compare(times(past, past), times(allowed, allowed)) > 0
  return isFar ? [from, to] : [minus(from, past), minus(to, past)]
}

/** A side that is open: an opening as wide as its wall. */
function openSide(shape: Shape, wall: Wall, place: number): Spot {
  const face = faceOf(shape, place)
  const one: OnWall = {
    kind: 'opening',
    wall: place,
    width: wall.readings,
    at: null,
    from: 'left',
    farAt: null,
    to: wall.openTo,
    called: null,
    isSliding: false,
    deep: null,
    inside: null,
    leftReturn: null,
    rightReturn: null,
    thick: wall.thick ?? 0n,
    gap: null,
  }
  return {
    one,
    face,
    left: face.left,
    right: face.right,
    from: ZERO,
    to: face.long,
    isOpenSide: true,
  }
}
