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
  const found: Mention[] = []
  const look = (block: Block, entry: Entry): void => {
    if (thing.kind === 'product') found.push(...pricedIn(block, entry, keys))
    for (const use of usesOf(block, entry, keys)) {
      const meant = meaningOf(measured, block, use)
      const { name, gives } = use
      if (meant !== null && idOf(meant) === id) found.push({ ...name, gives, inText: false })
    }
    for (const below of entry.under) look(block, below)
  }
  for (const { blocks } of trees) for (const block of blocks) look(block, block)
  return found.sort(byPlace(trees))
}

/** A line may stand under another one that it does not follow. */
function byPlace(trees: readonly Tree[]): (a: Mention, b: Mention) => number {
  const rank = new Map(trees.map(({ file }, index) => [file, index]))
  const of = ({ span }: Mention): number => rank.get(span.file) ?? 0
  return (a, b) => of(a) - of(b) || a.span.start - b.span.start
}

/** The names on a line that may mean the thing: most lines have none, and cost no more than a look. */
function usesOf(block: Block, entry: Entry, keys: ReadonlySet<string>): readonly NameUse[] {
  const { phrases } = entry
  if (entry !== block && !phrases.some(({ names }) => names.some(({ key }) => keys.has(key))))
    return NONE
  return namesOn(block, entry).filter(({ name }) => keys.has(name.key))
}

const NONE: readonly NameUse[] = []

/** A price line is carried as it stands, and begins with what it prices. */
function pricedIn(block: Block, entry: Entry, keys: ReadonlySet<string>): readonly Mention[] {
  if (block.word !== 'prices' || entry.word !== 'price') return []
  const text = entry.text.split(',', 1)[0]!.trimEnd()
  const key = keyOf(text)
  if (!keys.has(key)) return []
  const { start } = entry.textSpan
  const span = { file: entry.textSpan.file, start, end: start + text.length }
  return [{ span, text, key, gives: false, inText: true }]
}
