import { closetOf } from './closets.ts'
import type { Job, OnWall } from './job.ts'
import { INCH, type Nm } from './lengths.ts'
import { outlineOf } from './outline.ts'
import { add, cross, dot, less, middle, type Point, point, rounded, scaled } from './point.ts'
import {
  ceiling,
  compare,
  minus,
  over,
  plus,
  type Ratio,
  ratio,
  size,
  times,
  ZERO,
} from './ratio.ts'
import { larger, smaller } from './region.ts'
import { type Face, faceOf, type Shape, shapeOf } from './shape.ts'
import { type Spot, spotsOf } from './spots.ts'
import { standsOff, thickness } from './worth.ts'

/** A room where it stands in the plan. */
export interface Placed {
  readonly shape: Shape
  readonly spots: readonly Spot[]
}

/** An opening from a room to another, or to something that is not measured. */
export interface Doorway {
  readonly from: string
  readonly to: string
  readonly near: Spot
  /** The same opening as the room beyond has it, where it does. */
  readonly far: Spot | null
  /** The wall that it comes out at, where the room beyond is placed and has one there. */
  readonly beyond: Face | null
  readonly through: Nm
}

export interface House {
  readonly rooms: readonly Placed[]
  readonly doorways: readonly Doorway[]
}

/** Every measured room in its place, by the middles of the openings between them. */
export function houseOf(job: Job): House {
  const alone = job.rooms.flatMap((room) => shapeOf(room) ?? []).map(standing)
  const links = doorwaysOf(job, alone)
  const places = new Map<string, Point>()
  let reached: Ratio | null = null
  for (const first of alone) {
    if (places.has(first.shape.room.key)) continue
    const group = groupFrom(first, alone, links)
    const x = group.flatMap(([room, place]) => outline(job, room).map((at) => plus(at.x, place.x)))
    const east: Ratio = reached === null ? ZERO : minus(wholeMetrePast(reached), x.reduce(smaller))
    for (const [{ shape }, place] of group) {
      places.set(shape.room.key, { x: plus(place.x, east), y: place.y })
    }
    reached = plus(x.reduce(larger), east)
  }
  const rooms = alone.map(({ shape }) =>
    standing(movedBy(shape, places.get(shape.room.key) ?? ORIGIN)),
  )
  return { rooms, doorways: doorwaysOf(job, rooms) }
}

const METRE = ratio(10n ** 9n)
const MICROMETRE = ratio(1000n)

/** The first whole metre that is a metre, less at most a micrometre, past a place. */
function wholeMetrePast(place: Ratio): Ratio {
  const least = minus(plus(place, METRE), MICROMETRE)
  return times(METRE, ratio(ceiling(over(least, METRE))))
}

const ORIGIN = point(0n, 0n)

/** The rooms that openings tie to this one, each with its place beside it. */
function groupFrom(
  first: Placed,
  rooms: readonly Placed[],
  links: readonly Doorway[],
): readonly (readonly [Placed, Point])[] {
  const places = new Map([[first.shape.room.key, ORIGIN]])
  const group: (readonly [Placed, Point])[] = [[first, ORIGIN]]
  for (;;) {
    const next = rooms.find(
      ({ shape }) => !places.has(shape.room.key) && linkOf(shape, links, places),
    )
    if (next === undefined) return group
    const place = moveOf(next.shape, links, places)
    places.set(next.shape.room.key, place)
    group.push([next, place])
  }
}

/** Every corner of a room's floor and its closets. */
function outline(job: Job, room: Placed): readonly Point[] {
  const closets = room.spots.filter(({ one }) => one.kind === 'closet')
  return [
    ...outlineOf(room).map(({ from }) => from),
    ...closets.flatMap((spot) => closetOf(job, room, spot).ring),
  ]
}

const standing = (shape: Shape): Placed => ({ shape, spots: spotsOf(shape) })

function movedBy(shape: Shape, by: Point): Shape {
  const moved = (ring: readonly Point[]) => ring.map((corner) => add(corner, by))
  return { ...shape, corners: moved(shape.corners), rim: moved(shape.rim) }
}

const PASSAGES = ['door', 'opening', 'pass-through']

/** One for each opening, from the room that is written first. */
function doorwaysOf(job: Job, rooms: readonly Placed[]): readonly Doorway[] {
  const paired = new Set<Spot>()
  return rooms.flatMap((room) =>
    room.spots.flatMap((near): Doorway[] => {
      const { kind, to } = near.one
      if (!PASSAGES.includes(kind) || to === null || paired.has(near)) return []
      const beyond = rooms.find(({ shape }) => shape.room.key === to)
      const far = beyond === undefined ? null : otherSide(room, near.one, beyond)
      if (far !== null) paired.add(far)
      const through = throughOf(job, room, near, far, beyond)
      const wall = far?.face ?? (beyond ? metAt(near, through, beyond) : null)
      return [{ from: room.shape.room.key, to, near, far, beyond: wall, through }]
    }),
  )
}

/**
 * The opening as the room beyond has it: of the same name, or where either room has just one
 * and not both have a name. */
function otherSide(room: Placed, { called }: OnWall, beyond: Placed): Spot | null {
  const forth = passagesTo(room, beyond)
  const back = passagesTo(beyond, room)
  const named = back.find(({ one }) => called !== null && one.called === called)
  const [only] = back
  if (named || forth.length > 1 || back.length > 1 || only === undefined) return named ?? null
  return called !== null && only.one.called !== null ? null : only
}

const passagesTo = ({ spots }: Placed, { shape }: Placed): readonly Spot[] =>
  spots.filter(({ one: { to, kind } }) => to === shape.room.key && PASSAGES.includes(kind))

/** From face to face: the wall, and a kept base that stands off it on either side. */
function throughOf(
  job: Job,
  room: Placed,
  near: Spot,
  far: Spot | null,
  beyond: Placed | undefined,
): Nm {
  const wallOf = (placed: Placed | undefined, spot: Spot | null) =>
    spot === null ? null : placed?.shape.room.walls[spot.one.wall]?.thick
  const wall = thickness(
    job,
    near.one.thick,
    far?.one.thick,
    wallOf(room, near),
    wallOf(beyond, far),
  )
  const isOpenSide = wall === 0n
  const bases = standsOff(room.shape.room) + (far && beyond ? standsOff(beyond.shape.room) : 0n)
  return isOpenSide ? 0n : wall + bases
}

/** How far a wall may lie from where an opening comes out. */
const NEAR_ENOUGH = ratio(INCH)

/** The wall of the room beyond that an opening meets, though that room does not tell of it. */
function metAt(near: Spot, through: Nm, { shape }: Placed): Face | null {
  const out = add(middleOf(near), scaled(near.face.out, ratio(through)))
  const found = shape.room.walls
    .map((_, place) => faceOf(shape, place))
    .find(
      (face) =>
        dot(face.out, near.face.out).n < 0n &&
        cross(face.along, near.face.along).n === 0n &&
        compare(size(dot(less(out, face.left), face.out)), NEAR_ENOUGH) <= 0 &&
        [near.left, near.right].every((at) => isBeside(face, at)),
    )
  return found ?? null
}

function isBeside({ left, along, long }: Face, at: Point): boolean {
  const on = dot(less(at, left), along)
  return compare(on, ZERO) >= 0 && compare(on, long) <= 0
}

type Places = ReadonlyMap<string, Point>

/** By an opening to the room placed earliest; of several to it by the first written. */
function linkOf({ room }: Shape, links: readonly Doorway[], places: Places): Doorway | undefined {
  const isTo = (other: string) => (link: Doorway) =>
    link.far !== null &&
    ((link.from === room.key && link.to === other) || (link.to === room.key && link.from === other))
  return [...places.keys()].flatMap((other) => links.find(isTo(other)) ?? [])[0]
}

/** The move that brings the middles of the two faces a wall apart, square off the placed room's wall. */
function moveOf(shape: Shape, links: readonly Doorway[], places: Places): Point {
  const link = linkOf(shape, links, places)
  if (link?.far == null) throw new Error('no opening leads to a placed room')
  const isNearPlaced = link.from !== shape.room.key
  const [there, here] = isNearPlaced ? [link.near, link.far] : [link.far, link.near]
  const place = places.get(isNearPlaced ? link.from : link.to) ?? point(0n, 0n)
  const target = add(add(middleOf(there), place), scaled(there.face.out, ratio(link.through)))
  return rounded(less(target, middleOf(here)))
}

const middleOf = ({ left, right }: Spot): Point => middle(left, right)
