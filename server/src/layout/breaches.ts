import type { Nm } from '../units/length.ts'
import { doorwayJoints, staggers, type Touch } from './breach-joints.ts'
import { narrowRips, shortEnds } from './breach-pieces.ts'
import { longRuns } from './breach-run.ts'
import type { PlankRules } from './problem.ts'
import type {
  PublishedBreach,
  PublishedJoint,
  PublishedPiece,
  PublishedRing,
  PublishedZone,
} from './published.ts'

/** What the soft rules are held against. */
export interface Laid {
  readonly rules: PlankRules
  readonly pieces: readonly PublishedPiece[]
  readonly joints: readonly PublishedJoint[]
  readonly planks: readonly { readonly plank: number; readonly length: Nm }[]
  /** Where neighbouring courses touch, with the seam between them. */
  readonly touches: readonly Touch[]
  readonly rings: readonly PublishedRing[]
  readonly doorways: readonly PublishedZone[]
}

/** Every breach of a soft rule, as `published.ts` defines them: rule by rule, then in the order of pieces. */
export function breachesOf(laid: Laid): PublishedBreach[] {
  return [
    ...staggers(laid),
    ...shortEnds(laid),
    ...narrowRips(laid),
    ...longRuns(laid),
    ...doorwayJoints(laid),
  ]
}
