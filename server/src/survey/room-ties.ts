import type { Check } from '../job/job.ts'
import { roundToNm } from '../units/round.ts'
import { chainVariance } from './chain.ts'
import type { Placing } from './placing.ts'
import { allowedFor, lengthFrom } from './reading.ts'
import type { RoomPlan } from './room-plan.ts'
import type { CheckResult } from './survey.ts'
import { dot, middleOf, minus, plus, type Vector } from './vector.ts'
import { wallFrame } from './wall-frame.ts'

type RoomTie = Extract<Check, { kind: 'room tie' }>

/** The rooms and how they lie, and where in the list the first of each name stands. */
export interface PlacedRooms {
  readonly plans: readonly RoomPlan[]
  readonly placing: Placing
  readonly byKey: ReadonlyMap<string, number>
}

/**
 * The ties of a room to walls of others, square off the room's own wall, against where the rooms were
 * placed. A tie to a room that no doorway ties yet says nothing.
 */
export function roomTieResults(room: number, rooms: PlacedRooms): readonly CheckResult[] {
  return rooms.plans[room]!.shape.room.checks.flatMap((check) =>
    check.kind === 'room tie' ? tieResult(check, room, rooms) : [],
  )
}

function tieResult(
  check: RoomTie,
  room: number,
  { plans, placing, byKey }: PlacedRooms,
): readonly CheckResult[] {
  const other = byKey.get(check.room.key) ?? -1
  const reading = lengthFrom(check.reading)
  if (reading === null || other < 0) return []
  if (plans[room]!.shape.corners.length === 0 || plans[other]!.shape.corners.length === 0) return []
  const from = wallFrame(plans[room]!.shape.corners, check.from)
  const to = wallFrame(plans[other]!.shape.corners, check.to)
  const chain = chainVariance(
    plans,
    placing,
    { room, face: { frame: from } },
    { room: other, face: { frame: to } },
  )
  if (chain === null) return []
  const placed = (frame: typeof from, index: number): Vector =>
    plus(middleOf(frame.left, frame.right), placing.moves[index]!)
  const value = Math.abs(dot(minus(placed(to, other), placed(from, room)), from.out))
  const { x, y } = from.out
  const way = Math.sqrt(x * x * chain.east + y * y * chain.north)
  return [
    {
      check,
      computed: roundToNm(value),
      difference: roundToNm(reading.nm - value),
      allowed: roundToNm(allowedFor([reading.sigma, way])),
      fixes: false,
    },
  ]
}
