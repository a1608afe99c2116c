import type { Span } from '../facts/span.ts'
import { keyOf } from '../language/name.ts'
import type { Block, Entry, Tree } from '../language/tree.ts'
import type { Measured } from '../report/compiled.ts'
import { meaningOf } from './meaning.ts'
import { type NameUse, namesOn } from './name-use.ts'
import type { Thing } from './thing.ts'
import { idOf, keysOf } from './thing-id.ts'

/** A place where a thing is named. */
export interface Mention {
  readonly span: Span
  /** The name as it is typed, without quotes. */
  readonly text: string
  readonly key: string
  /** The line gives the name; else it uses it. */
  readonly gives: boolean
  /** The line is carried as plain text: a name in it has no quotes. */
  readonly inText: boolean
}

/**
 * Every place in some files of a job where a thing is named, in written order. Names are compared before
 * anything is looked up, so that what it costs is one walk over the lines.
 */
export function mentionsOf(
  measured: Measured,
  trees: readonly Tree[],
  thing: Thing,
): readonly Mention[] {
  const id = idOf(thing)
  const keys = new Set(keysOf(thing).filter((key) => key !== ''))
  if (id === null || keys.size === 0) return []
  const means = (block: Block, use: NameUse): boolean => {
    const found = keys.has(use.name.key) ? meaningOf(measured, block, use) : null
    return found !== null && idOf(found) === id
  }
  return trees.flatMap(({ blocks }) =>
    blocks.flatMap((block) =>
      linesOf(block).flatMap((entry) => [
        ...namesIn(block, entry, keys)
          .filter((use) => means(block, use))
          .map(({ name, gives }) => ({ ...name, gives, inText: false })),
        ...(thing.kind === 'product' ? pricedIn(block, entry, keys) : []),
      ]),
    ),
  )
}

/** The block's own line and those in it: openings and remarks stand under walls. */
function linesOf(block: Block): readonly Entry[] {
  const lines: Entry[] = [block]
  const put = (entries: readonly Entry[]): void => {
    for (const entry of entries) {
      lines.push(entry)
      if (entry.under.length > 0) put(entry.under)
    }
  }
  put(block.under)
  return lines
}

const NONE: readonly NameUse[] = []

function namesIn(block: Block, entry: Entry, keys: ReadonlySet<string>): readonly NameUse[] {
  const isNamed = entry.phrases.some(({ names }) => names.some(({ key }) => keys.has(key)))
  return isNamed || entry === block ? namesOn(block, entry) : NONE
}

/** A price line is carried as it stands, and begins with what it prices. */
function pricedIn(block: Block, entry: Entry, keys: ReadonlySet<string>): readonly Mention[] {
  if (block.word !== 'prices' || entry.word !== 'price') return []
  const text = entry.text.split(',', 1)[0]!.trimEnd()
  const key = keyOf(text)
  if (!keys.has(key)) return []
  const { start } = entry.textSpan
  const span = { ...entry.textSpan, start, end: start + text.length }
  return [{ span, text, key, gives: false, inText: true }]
}
