import type { Point, Ring } from '../../geometry/point.ts'
import type { Doorway, SurveyedRoom } from '../../survey/survey.ts'
import { NM_PER_INCH, type Nm, type UnitStyle } from '../../units/length.ts'
import { printLength } from '../../units/print.ts'
import type { OpeningShape } from '../scene.ts'
import { throatOf } from './masonry.ts'
import { distanceToNearest } from './nearest.ts'
import { type Direction, direction, distance, left, moved, opposite, quarterArc } from './vector.ts'

/** Interior door leaf, 1 3/8 in (common practice, no source): only for the eye. */
const LEAF: Nm = 1.375 * NM_PER_INCH

type Faces = readonly [Point, Point]
type Hung = Pick<OpeningShape, 'heads' | 'leaves' | 'swing'>

/** The rooms and doors around an opening, which decide how its door is drawn; rooms by their keys. */
export interface Surroundings {
  readonly units: UnitStyle
  /** Rooms that are measured. */
  readonly measured: ReadonlySet<string>
  /** How many doorways each room has. */
  readonly doors: ReadonlyMap<string, number>
  /** How far a point lies from a room's nearest corner. */
  readonly toCorner: (room: string | null, point: Point) => number
}

/** What is asked of the rooms and doors, counted once for all openings. */
export function surroundingsOf(
  rooms: readonly SurveyedRoom[],
  doorways: readonly Doorway[],
  units: UnitStyle,
): Surroundings {
  const doors = new Map<string, number>()
  for (const { room, to } of doorways)
    for (const key of new Set([room, to]))
      if (key !== null) doors.set(key, (doors.get(key) ?? 0) + 1)
  // Of two rooms with one name the first has it.
  const byKey = new Map(rooms.map((room) => [room.room.name.key, room] as const).toReversed())
  const nearest = new Map<string, (point: Point) => number>()
  return {
    units,
    doors,
    measured: new Set(
      rooms.filter(({ status }) => status === 'measured').map(({ room }) => room.name.key),
    ),
    toCorner: (room, point) => {
      const key = room ?? ''
      const known = nearest.get(key) ?? distanceToNearest(byKey.get(key)?.corners ?? [])
      nearest.set(key, known)
      return known(point)
    },
  }
}

/** What an opening is called in a scene. */
export function openingId({ room, label }: Pick<Doorway, 'room' | 'label'>): string {
  return `opening ${room}: ${label}`
}

/** An opening as it is drawn: jambs always, then a leaf, a slider or the head of a cased opening. */
export function openingShape(doorway: Doorway, around: Surroundings): OpeningShape {
  const [a, b] = doorway.near
  const [c, d] = doorway.far
  return {
    kind: 'opening',
    id: openingId(doorway),
    span: doorway.opening.span,
    of: doorway.kind,
    throat: throatOf(doorway),
    jambs: [
      [a, c],
      [b, d],
    ],
    ...hung(doorway, around),
    title: `${doorway.label}: ${printLength(doorway.width, around.units)} wide`,
  }
}

function hung(doorway: Doorway, around: Surroundings): Hung {
  const heads = [doorway.near, doorway.far]
  if (doorway.kind === 'door' && doorway.opening.sliding)
    return { heads: [], leaves: slidingLeaves(doorway), swing: [] }
  if (doorway.kind === 'door') return { heads: [], ...swinging(doorway, around) }
  return { heads: doorway.kind === 'open side' ? [] : heads, leaves: [], swing: [] }
}

/** Two leaves that pass each other in the middle of the wall. */
function slidingLeaves({ near: [a, b], far: [c], width }: Doorway): Ring[] {
  const along = direction(a, b)
  const outward = left(along)
  const deep = distance(a, c)
  const leaf = (from: number, aside: number): Ring => {
    const corner = moved(moved(a, along, from), outward, deep / 2 + aside)
    const end = moved(corner, along, width * 0.53)
    return [corner, end, moved(end, outward, LEAF), moved(corner, outward, LEAF)]
  }
  return [leaf(0, -LEAF), leaf(width * 0.47, 0)]
}

/**
 * Which side a door swings to is not read: it is drawn into the room with fewer doors, as hall doors
 * hang, with its hinge at the jamb nearer to a corner.
 */
function swinging(doorway: Doorway, around: Surroundings): Pick<Hung, 'leaves' | 'swing'> {
  const intoBeyond = fewerDoors(doorway, around)
  const face: Faces = intoBeyond ? doorway.far : doorway.near
  const across = left(direction(...doorway.near))
  const into = intoBeyond ? across : opposite(across)
  const room = intoBeyond ? doorway.to : doorway.room
  const [hinge, latch] = hingeFirst(face, (jamb) => around.toCorner(room, jamb))
  return hungAt(hinge, direction(hinge, latch), into, distance(hinge, latch))
}

function fewerDoors({ room, to }: Doorway, { measured, doors }: Surroundings): boolean {
  return to !== null && measured.has(to) && (doors.get(to) ?? 0) < (doors.get(room) ?? 0)
}

function hingeFirst([a, b]: Faces, toCorner: (jamb: Point) => number): Faces {
  return toCorner(b) < toCorner(a) ? [b, a] : [a, b]
}

function hungAt(
  hinge: Point,
  closed: Direction,
  open: Direction,
  width: Nm,
): Pick<Hung, 'leaves' | 'swing'> {
  const tip = moved(hinge, open, width)
  const leaf: Ring = [hinge, tip, moved(tip, closed, LEAF), moved(hinge, closed, LEAF)]
  const turnsLeft = left(open).x * closed.x + left(open).y * closed.y > 0
  return {
    leaves: [turnsLeft ? leaf.toReversed() : leaf],
    swing: quarterArc(hinge, closed, open, width),
  }
}
