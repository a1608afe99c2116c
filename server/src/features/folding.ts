import type { Block, Line, Tree } from '../language/tree.ts'
import { entriesIn, lastLineOf } from './place/entries.ts'

/** Lines that may be folded into their first one; numbers from 1, both ends included. */
export interface Fold {
  readonly kind: 'block' | 'under' | 'comment'
  readonly first: number
  readonly last: number
}

/** Blocks, lines with lines under them, and runs of comment lines, by where they begin. */
export function folds(tree: Tree): readonly Fold[] {
  return [...tree.blocks.flatMap(foldsOfBlock), ...commentRuns(tree.lines)]
    .filter(({ first, last }) => first < last)
    .sort((a, b) => a.first - b.first || b.last - a.last)
}

function foldsOfBlock(block: Block): readonly Fold[] {
  return entriesIn(block).map((entry) => ({
    kind: entry === block ? 'block' : 'under',
    first: entry.line.number,
    last: lastLineOf(entry).number,
  }))
}

function commentRuns(lines: readonly Line[]): readonly Fold[] {
  const runs: { kind: 'comment'; first: number; last: number }[] = []
  for (const { number, head, comment } of lines) {
    if (head !== null || comment === null) continue
    const run = runs.at(-1)
    if (run?.last === number - 1) run.last = number
    else runs.push({ kind: 'comment', first: number, last: number })
  }
  return runs
}
