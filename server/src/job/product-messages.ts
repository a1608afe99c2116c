import { message } from '../facts/message.ts'
import type { Block, Name } from '../language/tree.ts'
import type { Binding } from './binding.ts'
import type { ProductLines, Wanted } from './product-rules.ts'
import { allOf } from './sentence.ts'

/** The product that is spoken of. */
export interface Spoken {
  readonly block: Block
  readonly name: Name
  /** A floor is laid with it, so that what it lacks holds up the totals. */
  readonly isUsed: boolean
}

const FACE: Wanted = { word: 'plank', what: 'how large a plank is', write: '7" x 48"' }
const BOX: Wanted = { word: 'box', what: 'what a box holds', write: '9 planks' }

/** The lines without which nothing can be counted. */
export function linesWanted(lines: ProductLines): readonly Wanted[] {
  return [FACE, BOX].filter(({ word }) => !lines.has(word))
}

/**
 * What the maker alone can say is asked for, never assumed, and unfinished rather than wrong. Said of
 * nothing while a line of the product is broken: that may be the one.
 */
export function sayWanted(
  { block, name, isUsed }: Spoken,
  wanted: readonly Wanted[],
  binding: Binding,
): void {
  const isAwaited = block.broken || block.under.some((entry) => entry.broken)
  if (wanted.length === 0 || isAwaited) return
  const text =
    `${name.text} does not say yet ${allOf(wanted.map(({ what }) => what))}. Its maker does, and nobody ` +
    `should guess it: write as in ${binding.samples(linesOf(wanted).join('; '))}.`
  const weight = isUsed ? 'incomplete' : 'note'
  binding.say(message(weight, 'product-unfinished', block.line.span, text))
}

/** The lines that give what is wanted, each as it is written. */
function linesOf(wanted: readonly Wanted[]): readonly string[] {
  const byWord = Map.groupBy(wanted, ({ word }) => word)
  return [...byWord].map(([word, facts]) => `${word} ${facts.map(({ write }) => write).join(', ')}`)
}

/** Says once for a product what is taken from common practice. */
export function sayAssumed(
  { block, name, isUsed }: Spoken,
  assumed: readonly string[],
  binding: Binding,
): void {
  if (assumed.length === 0 || !isUsed) return
  const text = `Not said for ${name.text}, so taken from common practice: ${assumed.join('; ')}.`
  binding.say(message('note', 'product-defaults', block.line.span, text))
}
