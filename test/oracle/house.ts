import type { Job, OnWall } from './job.ts'
import type { Nm } from './lengths.ts'
import { add, less, middle, type Point, point, rounded, scaled } from './point.ts'
import { compare, plus, type Ratio, ratio } from './ratio.ts'
import { type Shape, shapeOf } from './shape.ts'
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
  readonly through: Nm
}

export interface House {
  readonly rooms: readonly Placed[]
  readonly doorways: readonly Doorway[]
}

/** Every measured room in its place, by the middles of the openings between them. */
export function houseOf(job: Job): House {
  const alone = job.rooms.flatMap((room) => shapeOf(room) ?? []).map(standing)
  const places = new Map<string, Point>()
  const links = doorwaysOf(job, alone)
  while (places.size < alone.length) {
    const next = alone.find(
      ({ shape }) => !places.has(shape.room.key) && linkOf(shape, links, places),
    )
    const first = alone.find(({ shape }) => !places.has(shape.room.key))
    if (next !== undefined) places.set(next.shape.room.key, moveOf(next.shape, links, places))
    else if (first !== undefined) places.set(first.shape.room.key, apart(first, alone, places))
  }
  const rooms = alone.map(({ shape }) =>
    standing(movedBy(shape, places.get(shape.room.key) ?? point(0n, 0n))),
  )
  return { rooms, doorways: doorwaysOf(job, rooms) }
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
      return [
        {
          from: room.shape.room.key,
          to,
          near,
          far,
          through: throughOf(job, room, near, far, beyond),
        },
      ]
    }),
  )
}

/** The opening as the room beyond has it: of one name where they have names, else its only one. */
function otherSide({ shape }: Placed, one: OnWall, beyond: Placed): Spot | null {
  const back = beyond.spots.filter(
    ({ one: { to, kind } }) => to === shape.room.key && PASSAGES.includes(kind),
  )
  return (
    back.find(({ one: { called } }) => called === one.called) ??
    (back.length === 1 ? (back[0] ?? null) : null)
  )
}

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

type Places = ReadonlyMap<string, Point>

/** The first opening written on both sides between this room and a placed one. */
function linkOf({ room }: Shape, links: readonly Doorway[], places: Places): Doorway | undefined {
  return links.find(
    ({ from, to, far }) =>
      far !== null &&
      ((from === room.key && places.has(to)) || (to === room.key && places.has(from))),
  )
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

/** Rooms that nothing ties to those before stand a metre east of them. */
function apart(first: Placed, alone: readonly Placed[], places: Places): Point {
  const east = alone.flatMap(({ shape }) => {
    const place = places.get(shape.room.key)
    return place === undefined ? [] : shape.rim.map(({ x }) => plus(x, place.x))
  })
  if (east.length === 0) return point(0n, 0n)
  const most = east.reduce((a, b) => (compare(a, b) > 0 ? a : b))
  const west = first.shape.rim
    .map(({ x }) => x)
    .reduce((a, b): Ratio => (compare(a, b) < 0 ? a : b))
  return { x: plus(plus(most, ratio(10n ** 9n)), { n: -west.n, d: west.d }), y: ratio(0n) }
}
