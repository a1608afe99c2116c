import type { Block, Tree } from '../../language/tree.ts'
import { lastBefore } from './line-at.ts'

/** Where the last line of a block with a word on it ends; remarks and blank lines below are not counted. */
export function blockEnd(tree: Tree, block: Block): number {
  const at = lastBefore(tree.blocks, block.line.span.start, ({ line }) => line.span.start)
  const next = tree.blocks[at + 1]
  let index = next === undefined ? tree.lines.length - 1 : next.line.number - 2
  while (index >= block.line.number && tree.lines[index]!.head === null) index -= 1
  return tree.lines[index]!.span.end
}
