import type { Span } from '../facts/span.ts'
import { mentionsOf } from './names/mentions.ts'
import { namedAt } from './names/named-at.ts'
import type { View } from './view.ts'

/**
 * Every place of the job where the thing that is named at an offset is named: by its own name, and walls
 * and corners by their ways. With `given` also where it gets its name.
 */
export function references(view: View, offset: number, given: boolean): readonly Span[] {
  const named = namedAt(view, offset)
  if (named === null) return []
  return mentionsOf(view.measured, view.measured.trees, named.thing)
    .filter(({ gives }) => given || !gives)
    .map(({ span }) => span)
}
