import { NM_PER_INCH } from '../units/length.ts'
import type { Side } from './pairing.ts'
import { otherRoom, type Placing } from './placing.ts'
import type { RoomPlan } from './room-plan.ts'
import type { ReadWall } from './walls.ts'

/** How sure the way through several rooms is, in square nanometres, and which rooms it leads through. */
export interface Chain {
  readonly east: number
  readonly north: number
  readonly rooms: readonly number[]
}

/** One standard deviation of a wall's thickness, read at a jamb (common practice, no source): 1/16 in. */
const THICKNESS_SIGMA = NM_PER_INCH / 16

/** A wall, and where on it the way begins or ends; without a stretch, anywhere along it. */
export interface End {
  readonly room: number
  readonly face: Pick<Side['face'], 'frame'> & Partial<Pick<Side['face'], 'stretch'>>
}

/**
 * From one end to another through the doorways by which the rooms were placed; null where nothing
 * ties them. Closing a loop, the wall of the last doorway counts too.
 */
export function chainVariance(
  plans: readonly RoomPlan[],
  placing: Placing,
  from: End,
  to: End,
): Chain | null {
  if (placing.networks[from.room] !== placing.networks[to.room]) return null
  const sum = { east: 0, north: 0 }
  const rooms = [from.room]
  let at = from
  for (const room of roomsBetween(placing, from.room, to.room)) {
    const pair = doorBetween(placing, at.room, room)
    const [out, into] = pair.near.room === at.room ? [pair.near, pair.far!] : [pair.far!, pair.near]
    addInside(sum, plans[at.room]!.shape.walls, at, out)
    addAlong(sum, out.face.frame.out, THICKNESS_SIGMA)
    at = into
    rooms.push(room)
  }
  addInside(sum, plans[at.room]!.shape.walls, at, to)
  if (to.face.stretch !== undefined) addAlong(sum, to.face.frame.out, THICKNESS_SIGMA)
  return { ...sum, rooms }
}

/** The rooms after the first, up to the last: to the room both were placed from, and down again. */
function roomsBetween(placing: Placing, from: number, to: number): readonly number[] {
  const { placedBy, depths } = placing
  const above = (room: number) => otherRoom(placedBy[room]!, room)
  const up: number[] = []
  const down: number[] = []
  let [a, b] = [from, to]
  while (a !== b) {
    if (depths[a]! >= depths[b]!) {
      a = above(a)
      up.push(a)
    } else {
      down.push(b)
      b = above(b)
    }
  }
  return [...up, ...down.reverse()]
}

function doorBetween({ placedBy }: Placing, a: number, b: number) {
  const pair = placedBy[a] ?? null
  return pair !== null && otherRoom(pair, a) === b ? pair : placedBy[b]!
}

interface Sum {
  east: number
  north: number
}

/** Within a room: both places on their walls, and the walls between, by the surer way round. */
function addInside(sum: Sum, walls: readonly ReadWall[], a: End, b: End): void {
  if (a.face === b.face) return
  for (const { face } of [a, b]) {
    if (face.stretch !== undefined) addAlong(sum, face.frame.along, face.stretch.sigma)
  }
  const [i, j] = [hookOf(a, walls.length), hookOf(b, walls.length)]
  const between = walls.slice(Math.min(i, j), Math.max(i, j))
  const around = [...walls.slice(0, Math.min(i, j)), ...walls.slice(Math.max(i, j))]
  for (const part of ['east', 'north'] as const) {
    sum[part] += Math.min(variance(between, part), variance(around, part))
  }
}

/** The corner that a place on a wall was read from. */
function hookOf({ face }: End, count: number): number {
  return face.stretch?.from === 'right' ? (face.frame.wall + 1) % count : face.frame.wall
}

function variance(walls: readonly ReadWall[], part: 'east' | 'north'): number {
  return walls.reduce((sum, { sigma, direction }) => {
    const along = sigma * (part === 'east' ? direction.x : direction.y)
    return sum + along * along
  }, 0)
}

function addAlong(sum: Sum, { x, y }: { readonly x: number; readonly y: number }, sigma: number) {
  sum.east += x * sigma * (x * sigma)
  sum.north += y * sigma * (y * sigma)
}
