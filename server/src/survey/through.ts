import type { Opening } from '../job/job.ts'
import type { Pair, Side } from './pairing.ts'
import type { RoomPlan } from './room-plan.ts'

/** A thickness that the opening's own line gives, not the job's. */
export function ownThickness({ thickness, span }: Opening) {
  const own = thickness?.span ?? null
  const inside =
    own !== null && own.file === span.file && own.start >= span.start && own.end <= span.end
  return inside ? thickness : null
}

/**
 * From the rim of the near room to the rim of the far one: the wall's thickness, as either side's own
 * line says, else as the job does (0 while nobody did, which is asked), and a kept base on either side.
 */
export function throughAt(pair: Pair, plans: readonly RoomPlan[]): number {
  const { near, far } = pair
  const given = givenThickness(pair)?.value ?? 0
  if (near.face.opening.kind === 'open side') return given
  const insetOf = ({ room }: Side): number => plans[room]!.shape.plane.inset
  return given + insetOf(near) + (far === null ? 0 : insetOf(far))
}

/** How thick the wall is as either side's own line says, else as the job does; null where nobody did. */
export function givenThickness({ near, far }: Pair): Opening['thickness'] {
  const openings = (far === null ? [near] : [near, far]).map(({ face }) => face.opening)
  const own = openings.map(ownThickness).find((thickness) => thickness !== null)
  return own ?? openings.find(({ thickness }) => thickness !== null)?.thickness ?? null
}
