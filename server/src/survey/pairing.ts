import type { Message } from '../facts/message.ts'
import { once } from '../facts/once.ts'
import type { UnitStyle } from '../units/length.ts'
import type { Face } from './faces.ts'
import { ambiguous, doNotFace, sidesDisagree, toOwnRoom } from './pairing-messages.ts'
import type { RoomPlan } from './room-plan.ts'
import { dot } from './vector.ts'

/** A face and the room (index in written order) that it belongs to. */
export interface Side {
  readonly room: number
  readonly face: Face
}

/** A doorway as far as it is written: from one room, or from both. */
export interface Pair {
  /** As the room written first has it. */
  readonly near: Side
  /** As the room beyond has it; null where that room does not write it. */
  readonly far: Side | null
  /** The measured room beyond, written from there or not; null for any other, or where that is not clear. */
  readonly beyond: number | null
}

/** A side, and the measured room that its opening leads to. */
interface Leading extends Side {
  readonly beyond: number | null
}

/** Where in the list the first room of each name stands: of two with one name the first has it. */
export const roomsByKey = once((plans: readonly RoomPlan[]): ReadonlyMap<string, number> => {
  const rooms = new Map<string, number>()
  for (const [i, { shape }] of plans.entries()) {
    const { key } = shape.room.name
    if (!rooms.has(key)) rooms.set(key, i)
  }
  return rooms
})

type Say = (message: Message) => void

/**
 * Brings the two sides of each doorway together: by their names where they have the same one, else
 * where just one door on either side is left between two rooms. Pairs come in written order.
 */
export function pairDoorways(
  plans: readonly RoomPlan[],
  style: UnitStyle,
  say: Say,
): readonly Pair[] {
  const rooms = roomsByKey(plans)
  const beyondOf = (room: number, { opening }: Face): number | null => {
    const index = opening.to === null ? undefined : rooms.get(opening.to.key)
    return index === undefined || plans[index]!.shape.walls.length === 0 || index === room
      ? null
      : index
  }
  const sides = plans.flatMap(({ faces }, room) =>
    faces.map((face): Leading => ({ room, face, beyond: beyondOf(room, face) })),
  )
  for (const side of sides) {
    if (side.face.opening.to?.key === plans[side.room]!.shape.room.name.key)
      say(toOwnRoom(side, plans))
  }
  const groups = Map.groupBy(sides, ({ room, beyond }) => {
    if (beyond === null) return null
    return Math.min(room, beyond) * plans.length + Math.max(room, beyond)
  })
  const partners = new Map<Side, Side>()
  const unclear = new Set<Side>()
  for (const [key, group] of groups) {
    if (key === null) continue
    const { pairs, left } = matched(group, plans, say)
    for (const side of left) unclear.add(side)
    for (const [a, b] of pairs) {
      if (faceEachOther(a, b)) {
        for (const message of sidesDisagree(a, b, plans, style)) say(message)
        partners.set(a, b).set(b, a)
      } else {
        say(doNotFace(a, b, plans))
        unclear.add(a).add(b)
      }
    }
  }
  return sides.flatMap((side) => {
    const far = partners.get(side) ?? null
    const beyond = unclear.has(side) ? null : side.beyond
    return far !== null && far.room < side.room ? [] : [{ near: side, far, beyond }]
  })
}

interface Matched {
  readonly pairs: readonly (readonly [Side, Side])[]
  /** Sides of which it cannot be told which is which, and was said so. */
  readonly left: readonly Side[]
}

/** The doorways between two rooms whose two sides are known to be one. */
function matched(group: readonly Side[], plans: readonly RoomPlan[], say: Say): Matched {
  const first = Math.min(...group.map((side) => side.room))
  const here = group.filter((side) => side.room === first)
  const there = group.filter((side) => side.room !== first)
  const pairs: (readonly [Side, Side])[] = []
  const left = here.filter((side) => {
    const name = nameOf(side)
    const same = there.findIndex((other) => name !== null && nameOf(other) === name)
    if (same < 0) return true
    pairs.push([side, there.splice(same, 1)[0]!])
    return false
  })
  const [a, b] = [left[0], there[0]]
  if (!a || !b) return { pairs, left: [] }
  if (left.length > 1 || there.length > 1) {
    say(ambiguous(left, there, plans))
    return { pairs, left: [...left, ...there] }
  }
  // Two that have different names are two doors.
  const same = nameOf(a) === null || nameOf(b) === null
  return { pairs: same ? [...pairs, [a, b]] : pairs, left: [] }
}

const nameOf = ({ face }: Side): string | null => face.opening.name?.key ?? null

/** Within 45 degrees: out-of-square rooms meet at an angle, a door in the wrong wall by a right one. */
const FACING = -0.7

function faceEachOther(a: Side, b: Side): boolean {
  return dot(a.face.frame.out, b.face.frame.out) <= FACING
}
