import type { Dice } from '../../generate/dice.ts'
import { edited, entriesOf, treeOf } from './edit.ts'

/** Lines in which the order of the phrases is what they say. */
const ORDERED = ['parts', 'box', 'rooms', 'existing', 'subfloor', 'slant', 'column']

/** Phrases between commas in any order. */
export function withPhrasesShuffled(text: string, dice: Dice): string | null {
  const edits = entriesOf(treeOf(text))
    .filter(({ word, phrases }) => !ORDERED.includes(word) && phrases.length > 1)
    .flatMap(({ phrases }) => {
      const texts = shuffled(
        phrases.map(({ span }) => text.slice(span.start, span.end)),
        dice,
      )
      return phrases.map(({ span }, i) => ({ span, text: texts[i]! }))
    })
  return edits.length === 0 ? null : edited(text, edits)
}

/** Every order as likely as any other (Fisher and Yates). */
export function shuffled<T>(list: readonly T[], dice: Dice): T[] {
  const mixed = [...list]
  for (let i = mixed.length - 1; i > 0; i -= 1) {
    const j = dice.below(i + 1)
    ;[mixed[i], mixed[j]] = [mixed[j]!, mixed[i]!]
  }
  return mixed
}
