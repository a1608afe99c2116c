import { cover, type Span } from '../../facts/span.ts'
import type { Block, Entry, Line, Tree } from '../../language/tree.ts'
import { lastBefore } from './line-at.ts'

/** The block that an offset stands in: the last one that begins at or before it. Halves the blocks. */
export function blockAt(tree: Tree, offset: number): Block | null {
  return tree.blocks[lastBefore(tree.blocks, offset, startOf)] ?? null
}

/** The blocks that a stretch of a file touches, in order. */
export function blocksIn(tree: Tree, start: number, end: number): readonly Block[] {
  const first = Math.max(0, lastBefore(tree.blocks, start, startOf))
  return tree.blocks.slice(first, lastBefore(tree.blocks, end, startOf) + 1)
}

/** From a block to the entry of one of its lines, outer ones first; empty for a line without one. */
export function entryPath(block: Block, line: Line): readonly Entry[] {
  const paths = pathsIn(block)
  const path = paths[lastBefore(paths, line.span.start, ([entry]) => startOf(entry!))]
  return path?.[0]?.line.span.start === line.span.start ? path.toReversed() : []
}

/** The last line of an entry and those under it. */
export function lastLineOf({ line, under }: Entry): Line {
  let last = line
  for (const entry of under) {
    const inner = lastLineOf(entry)
    if (inner.number > last.number) last = inner
  }
  return last
}

/** From an entry's line to the last of those under it. */
export function spanOfEntry(entry: Entry): Span {
  return cover(entry.line.span, lastLineOf(entry).span)
}

/** All entries of a block in the order of their lines, itself first. */
export function entriesIn(block: Block): readonly Entry[] {
  return pathsIn(block).map(([entry]) => entry!)
}

const known = new WeakMap<Block, readonly (readonly Entry[])[]>()

/**
 * Each entry of a block with those that it stands under, inner ones first, in the order of the lines.
 * A line stands under another by its word, so that what is told nested is not always so in the text.
 */
function pathsIn(block: Block): readonly (readonly Entry[])[] {
  const there = known.get(block)
  if (there !== undefined) return there
  const paths: (readonly Entry[])[] = []
  const put = (entry: Entry, above: readonly Entry[]): void => {
    const path = [entry, ...above]
    paths.push(path)
    // Entries nest no deeper than a remark under an opening under a wall.
    for (const inner of entry.under) put(inner, path)
  }
  put(block, [])
  paths.sort(([a], [b]) => startOf(a!) - startOf(b!))
  known.set(block, paths)
  return paths
}

function startOf({ line }: Entry): number {
  return line.span.start
}
