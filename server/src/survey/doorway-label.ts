import type { Pair } from './pairing.ts'
import type { RoomPlan } from './room-plan.ts'

/** The opening's own name, else "hall to bath", else "hall door". */
export function doorwayLabel({ near, far }: Pair, plans: readonly RoomPlan[]): string {
  const { name, to, kind } = near.face.opening
  const own = name ?? far?.face.opening.name ?? null
  if (own !== null) return own.text
  const room = plans[near.room]!.shape.room.name.text
  return to === null ? `${room} ${kind}` : `${room} to ${to.text}`
}
