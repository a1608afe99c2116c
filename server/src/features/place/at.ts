import type { Span } from '../../facts/span.ts'
import type { Block, Entry, Line, Measure, Name, Phrase, Token, Tree } from '../../language/tree.ts'
import { type NameUse, namesOn } from '../names/name-use.ts'
import { blockAt, entryPath } from './entries.ts'
import { lineAt } from './line-at.ts'

/** What stands at an offset of one file, from its line inward. */
export interface At {
  readonly offset: number
  readonly line: Line
  /** The block that the line belongs to; a blank line belongs to the block above it. */
  readonly block: Block | null
  /** From the block to the line's own entry, outer ones first; empty on a line without one. */
  readonly path: readonly Entry[]
  /** The line's own entry: the last of `path`. */
  readonly entry: Entry | null
  /** Null between words. */
  readonly token: Token | null
  /** The line's first word is touched. */
  readonly onWord: boolean
  readonly phrase: Phrase | null
  readonly measure: Measure | null
  readonly name: NameUse | null
}

/**
 * What stands at an offset. A thing is touched from its first character to just past its last, and of
 * two that meet the one that begins there is meant. An offset outside the text counts as its nearest
 * end. Halves lines and blocks: what it costs is the size of one block at most.
 */
export function at(tree: Tree, offset: number): At {
  const inside = Math.max(0, Math.min(offset, tree.text.length))
  const line = lineAt(tree, inside)
  const block = blockAt(tree, inside)
  const path = block === null ? [] : entryPath(block, line)
  const entry = path.at(-1) ?? null
  const touched = <T extends { readonly span: Span }>(things: readonly T[]): T | null =>
    touching(things, inside)
  const phrase = touched(entry?.phrases ?? [])
  const names = block === null || entry === null ? [] : namesOn(block, entry)
  return {
    offset: inside,
    line,
    block,
    path,
    entry,
    token: touched(line.tokens.filter(({ kind }) => kind !== 'blank')),
    onWord: entry !== null && holds(entry.wordSpan, inside),
    phrase,
    measure: touched(phrase?.measures ?? []),
    name: touching(names, inside, ({ name }: { readonly name: Name }) => name.span),
  }
}

/** Of the things that hold an offset the last: they stand in the order of the text. */
function touching<T>(
  things: readonly T[],
  offset: number,
  spanOf: (thing: T) => Span = (thing) => (thing as { readonly span: Span }).span,
): T | null {
  return things.findLast((thing) => holds(spanOf(thing), offset)) ?? null
}

function holds({ start, end }: Span, offset: number): boolean {
  return start <= offset && offset <= end && start < end
}
