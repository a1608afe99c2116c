import type { Block } from '../language/tree.ts'
import type { Binding } from './binding.ts'
import type { PriceBook } from './job.ts'
import { directory } from './names.ts'

/** The price books, kept line by line as they stand. */
export function pricesOf(blocks: readonly Block[], binding: Binding): readonly PriceBook[] {
  const named = blocks.flatMap((block) =>
    block.word === 'prices' && block.name !== null ? [{ block, name: block.name }] : [],
  )
  return [...directory('price book', named, binding).values()].map(({ block, name }) => ({
    name,
    lines: block.under
      .filter((line) => !line.broken)
      .map((line) => ({ word: line.word, text: line.text, span: line.line.span })),
  }))
}
