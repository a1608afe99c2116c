import type { Tree } from '../../server/src/language/tree.ts'
import { outlineOf } from './said.ts'

/** A block by its first line and by all that it holds. */
export interface Block {
  readonly title: string
  readonly outline: string
}

/** The blocks of a tree, each in short. */
export function blockTexts(tree: Tree): readonly Block[] {
  return tree.blocks.map((block) => ({
    title: tree.text.slice(block.line.span.start, block.line.span.end),
    outline: outlineOf([block]),
  }))
}
