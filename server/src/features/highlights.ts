import type { Span } from '../facts/span.ts'
import { mentionsOf } from './names/mentions.ts'
import { namedAt } from './names/named-at.ts'
import type { View } from './view.ts'

export interface Highlight {
  readonly span: Span
  /** The line gives the name; else it uses it. */
  readonly gives: boolean
}

/** Every place of the file where the thing that is named at an offset is named. */
export function highlights(view: View, offset: number): readonly Highlight[] {
  const named = namedAt(view, offset)
  if (named === null) return []
  return mentionsOf(view.measured, [view.tree], named.thing).map(({ span, gives }) => ({
    span,
    gives,
  }))
}
