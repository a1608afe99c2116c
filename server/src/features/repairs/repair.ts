import type { Message } from '../../facts/message.ts'
import type { Span } from '../../facts/span.ts'
import type { Edit, View } from '../view.ts'

/**
 * What a repair rests on.
 * - `sure`: what stands there means nothing else.
 * - `choice`: one of several things that may be meant.
 * - `to be measured`: likely by the other readings; the tape has the last word.
 * - `accept`: nothing is changed, the warning is settled.
 */
export type RepairKind = 'sure' | 'choice' | 'to be measured' | 'accept'

/** One way to settle a message. */
export interface Repair {
  readonly title: string
  readonly kind: RepairKind
  readonly edits: readonly Edit[]
  readonly message: Message
}

/** A message, and the place of it that is asked about: its own, or one of those that it speaks of too. */
export interface Asked {
  readonly view: View
  readonly message: Message
  readonly place: Span
}

export function repair(
  { message }: Asked,
  kind: RepairKind,
  title: string,
  edits: readonly Edit[],
): Repair {
  return { title, kind, edits, message }
}
