import type { Point, Ring } from '../../geometry/point.ts'
import type { Doorway, SurveyedRoom } from '../../survey/survey.ts'
import { NM_PER_INCH, type Nm, type UnitStyle } from '../../units/length.ts'
import { printLength } from '../../units/print.ts'
import type { OpeningShape } from '../scene.ts'
import { throatOf } from './masonry.ts'
import { type Direction, direction, distance, left, moved, opposite, quarterArc } from './vector.ts'

/** Interior door leaf, 1 3/8 in (common practice, no source): only for the eye. */
const LEAF: Nm = 1.375 * NM_PER_INCH

type Faces = readonly [Point, Point]
type Hung = Pick<OpeningShape, 'heads' | 'leaves' | 'swing'>

/** The rooms and doors around an opening, which decide how its door is drawn. */
export interface Surroundings {
  readonly rooms: readonly SurveyedRoom[]
  readonly doorways: readonly Doorway[]
  readonly units: UnitStyle
}

/** An opening as it is drawn: jambs always, then a leaf, a slider or the head of a cased opening. */
export function openingShape(doorway: Doorway, around: Surroundings): OpeningShape {
  const [a, b] = doorway.near
  const [c, d] = doorway.far
  return {
    kind: 'opening',
    id: `opening ${doorway.room}: ${doorway.label}, ${doorway.opening.span.start}`,
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
  const room = around.rooms.find(
    ({ room }) => room.name.key === (intoBeyond ? doorway.to : doorway.room),
  )
  const [hinge, latch] = hingeFirst(face, room?.corners ?? [])
  return hungAt(hinge, direction(hinge, latch), into, distance(hinge, latch))
}

function fewerDoors({ room, to }: Doorway, { rooms, doorways }: Surroundings): boolean {
  const measured = rooms.some((one) => one.room.name.key === to && one.status === 'measured')
  const doors = (key: string | null): number =>
    doorways.filter((doorway) => doorway.room === key || doorway.to === key).length
  return measured && doors(to) < doors(room)
}

function hingeFirst([a, b]: Faces, corners: Ring): Faces {
  const nearest = (jamb: Point): number =>
    corners.reduce((least, corner) => Math.min(least, distance(jamb, corner)), Infinity)
  return nearest(b) < nearest(a) ? [b, a] : [a, b]
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
