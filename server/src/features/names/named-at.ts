import type { Span } from '../../facts/span.ts'
import { at } from '../place/at.ts'
import { thingOn } from '../place/line-thing.ts'
import type { View } from '../view.ts'
import { meaningOf } from './meaning.ts'
import type { Thing } from './thing.ts'

/** The thing that is named at an offset, or that the line tells where its first word is touched. */
export interface NamedAt {
  readonly thing: Thing
  /** The name, or the word of the line. */
  readonly span: Span
}

export function namedAt({ tree, measured }: View, offset: number): NamedAt | null {
  const { name, block, entry, onWord } = at(tree, offset)
  if (block === null || entry === null) return null
  if (name !== null) {
    const thing = meaningOf(measured, block, name)
    return thing === null ? null : { thing, span: name.name.span }
  }
  const thing = onWord ? thingOn(measured, block, entry) : null
  return thing === null ? null : { thing, span: entry.wordSpan }
}
