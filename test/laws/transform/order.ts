import type { Entry, Tree } from '../../../server/src/language/tree.ts'
import type { Dice } from '../../generate/dice.ts'
import { blocksNamed, textOf, treeOf, wholeOf } from './edit.ts'
import { shuffled } from './phrases.ts'

/**
 * The blocks in another order, file lines too; but of `kept`, each kind keeps the order it was written
 * in, for the rooms are placed and the floors are listed by it. The version line stays first.
 */
export function withBlocksMoved(text: string, kept: readonly string[], dice: Dice): string {
  const tree = treeOf(text)
  const version = tree.blocks.filter((block) => block.word === 'floorscribe')
  const others = tree.blocks.filter((block) => block.word !== 'floorscribe')
  const mixed = shuffled(others, dice)
  const waiting = new Map(kept.map((word) => [word, others.filter((one) => one.word === word)]))
  const inOrder = mixed.map((block) => waiting.get(block.word)?.shift() ?? block)
  return [...version, ...inOrder].map((block) => textOf(tree, block)).join('')
}

/** The blocks of one kind in another order, in the places that they had; null where there is but one. */
export function withKindReordered(text: string, word: string, dice: Dice): string | null {
  const tree = treeOf(text)
  const blocks = blocksNamed(tree, word)
  if (blocks.length < 2) return null
  const mixed = shuffled(blocks, dice)
  return inPlaceOf(tree, blocks, mixed)
}

/** The lines of every product, floor and job block in another order. */
export function withLinesReordered(text: string, dice: Dice): string {
  const tree = treeOf(text)
  const blocks = tree.blocks.filter((block) => ['product', 'floor', 'job'].includes(block.word))
  const lines = blocks.flatMap((block) => block.under)
  const mixed = blocks.flatMap((block) => shuffled(block.under, dice))
  return inPlaceOf(tree, lines, mixed)
}

const FREE = ['column', 'island', 'stairwell', 'vent', 'diagonal', 'across', 'square', 'subfloor']

/** What stands by itself in a room told before its walls, in the order it was told after them. */
export function withFreeLinesFirst(text: string): string | null {
  const tree = treeOf(text)
  const rooms = blocksNamed(tree, 'room')
  const moved = rooms.map((room) => {
    const isFree = (entry: Entry) => FREE.includes(entry.word)
    return [...room.under.filter(isFree), ...room.under.filter((entry) => !isFree(entry))]
  })
  const lines = rooms.flatMap((room) => room.under)
  const isSame = moved.flat().every((entry, i) => entry === lines[i])
  return isSame ? null : inPlaceOf(tree, lines, moved.flat())
}

/** The text with each entry of a list replaced by the one that now stands in its place. */
export function inPlaceOf(tree: Tree, places: readonly Entry[], entries: readonly Entry[]): string {
  let done = ''
  let at = 0
  for (const [i, place] of places.entries()) {
    const { start, end } = wholeOf(tree, place)
    done += tree.text.slice(at, start) + textOf(tree, entries[i]!)
    at = end
  }
  return done + tree.text.slice(at)
}
