import type { Block, Entry, Tree } from '../../language/tree.ts'
import { blockAt, entriesIn, entryPath } from '../place/entries.ts'
import { lineAt } from '../place/line-at.ts'

/** A line with a meaning, and the block that it stands in. */
export interface LineInBlock {
  readonly block: Block
  readonly entry: Entry
}

/**
 * The lines of a file that may hold a name, by its key, in written order: found in the text, which is much
 * faster than to look at each line's names. Every line that holds the name is among them, and some others.
 */
export function linesNaming(tree: Tree, key: string): readonly LineInBlock[] {
  const run = longestRun(key)
  const text = lowered(tree)
  if (run === '' || text === null) return allLines(tree)
  const found: LineInBlock[] = []
  for (let from = text.indexOf(run); from >= 0; ) {
    const line = lineAt(tree, from)
    const block = blockAt(tree, from)
    const entry = block === null ? undefined : entryPath(block, line).at(-1)
    if (block !== null && entry !== undefined) found.push({ block, entry })
    from = text.indexOf(run, line.span.end)
  }
  return found
}

/** What no way of writing a name changes: letters and digits without marks, between blanks and marks. */
function longestRun(key: string): string {
  const runs = key.match(/[a-z0-9]+/g) ?? []
  return runs.reduce((longest, run) => (run.length > longest.length ? run : longest), '')
}

const known = new WeakMap<Tree, string | null>()

/** The text in small letters; null where those take more room, and places would be others. */
function lowered(tree: Tree): string | null {
  const there = known.get(tree)
  if (there !== undefined) return there
  const lower = tree.text.toLowerCase()
  const made = lower.length === tree.text.length ? lower : null
  known.set(tree, made)
  return made
}

function allLines({ blocks }: Tree): readonly LineInBlock[] {
  return blocks.flatMap((block) => entriesIn(block).map((entry) => ({ block, entry })))
}
