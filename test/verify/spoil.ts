import type { PublishedFloor } from '../../server/src/layout/published.ts'
import { BREACH_SPOILERS } from './spoil/breaches.ts'
import { JOINT_SPOILERS } from './spoil/joints.ts'
import { NUMBER_SPOILERS } from './spoil/numbers.ts'
import { PLANK_SPOILERS } from './spoil/planks.ts'
import { RING_SPOILERS } from './spoil/rings.ts'
import { SHAPE_SPOILERS } from './spoil/shape.ts'
import type { Spoiler } from './spoil/spoiler.ts'

/** Every way we know to falsify a layout. */
export const SPOILERS: readonly Spoiler[] = [
  ...RING_SPOILERS,
  ...PLANK_SPOILERS,
  ...JOINT_SPOILERS,
  ...BREACH_SPOILERS,
  ...NUMBER_SPOILERS,
  ...SHAPE_SPOILERS,
]

/** A falsified copy of a floor, or null where it has nothing that could be spoiled so. */
export function spoiled(floor: PublishedFloor, { spoil }: Spoiler): PublishedFloor | null {
  // Through JSON, as a reader gets it: two places that hold one list in memory become two.
  const copy = JSON.parse(JSON.stringify(floor))
  return spoil(copy) ? copy : null
}
