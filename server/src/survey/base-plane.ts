import { type Message, message } from '../facts/message.ts'
import type { Plane, Reading, Room } from '../job/job.ts'
import type { Nm, UnitStyle } from '../units/length.ts'
import { samplesIn } from '../units/samples.ts'
import { cross, directionOf, dot, leftOf, plus, times, type Vector } from './vector.ts'

/**
 * What the tape touched and what the floor runs to. A base that comes off lets the floor run to the
 * wall, its thickness farther than a tape against the base says; a base that stays stops it. No closing
 * error shows that difference, so that it is worked in here.
 */
export interface BasePlane {
  /** How far the floor's rim lies outside of what the tape touched; negative: inside. */
  readonly grown: Nm
  /** How far inside the wall's own face the rim lies: a kept base's thickness. */
  readonly inset: Nm
}

const NOTHING: BasePlane = { grown: 0, inset: 0 }

export function basePlaneOf(room: Room): BasePlane {
  const thickness = room.base?.thickness ?? 0
  const touched = touchedPlane(room)
  const rim = rimPlane(room, touched)
  if (touched !== 'base' && touched !== 'wall') return NOTHING
  const inset = rim === 'base' ? thickness : 0
  if (rim === touched) return { grown: 0, inset }
  return { grown: rim === 'wall' ? thickness : -thickness, inset }
}

/** Asked where the base's thickness matters and nobody gave it. */
export function basePlaneMessage(room: Room, style: UnitStyle): Message | null {
  const touched = touchedPlane(room)
  const planes = room.walls.map((wall) => wall.reading.plane)
  const differ = planes.some((plane) => isBaseOrWall(plane) && plane !== touched)
  const rim = rimPlane(room, touched)
  const matters = isBaseOrWall(touched) && (rim !== touched || differ)
  if (!matters || room.base === null || room.base.thickness !== null) return null
  const text =
    `${room.name.text} was read to the ${touched} and its floor runs to the ${rim}: how thick is the base? ` +
    `Write it, such as ${samplesIn('base 1/2" thick', style)}.`
  return message('incomplete', 'base-thickness-not-said', room.base.span, text)
}

const isBaseOrWall = (plane: Plane) => plane === 'base' || plane === 'wall'

/** What most of a room's walls were read to; of two alike, the one read first. */
function touchedPlane(room: Room): Plane {
  const counts = Map.groupBy(room.walls, (wall) => wall.reading.plane)
  let most: Plane = 'wall'
  let count = 0
  for (const [plane, walls] of counts) {
    if (walls.length <= count) continue
    most = plane
    count = walls.length
  }
  return most
}

function rimPlane(room: Room, touched: Plane): Plane {
  const fate = room.base?.fate ?? null
  if (fate === null) return touched
  return fate === 'kept' ? 'base' : 'wall'
}

/**
 * For the readings of one room: how much farther out a reading's end lies than what its other readings
 * touched, square off a wall. It is a base's thickness, out or in, or nothing.
 */
export function otherPlane(room: Room): (reading: Reading) => Nm {
  const touched = touchedPlane(room)
  const thickness = room.base?.thickness ?? 0
  return ({ plane }) => {
    if (plane === touched || !isBaseOrWall(plane) || !isBaseOrWall(touched)) return 0
    return plane === 'wall' ? thickness : -thickness
  }
}

/**
 * How far a corner moves along its walls when both move out by one: 1 at an inside corner of 90°, −1 at
 * an outside one, 0 where the walls lie in line. That is tan(φ/2) for a turn φ to the right.
 */
export function leadAt(before: Vector, after: Vector): number {
  const level = 1 + dot(before, after)
  return level < 1e-6 ? 0 : -cross(before, after) / level + 0
}

/** The corners with every wall moved out by `by`, mitred. */
export function grownCorners(corners: readonly Vector[], by: Nm): readonly Vector[] {
  if (by === 0) return corners
  const count = corners.length
  const along = corners.map((corner, i) => directionOf(corner, corners[(i + 1) % count]!))
  return corners.map((corner, i) => {
    const [before, after] = [along.at(i - 1)!, along[i]!]
    const level = 1 + dot(before, after)
    if (level < 1e-6) return corner
    return plus(corner, times(plus(leftOf(before), leftOf(after)), by / level))
  })
}
