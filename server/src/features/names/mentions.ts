import type { Span } from '../../facts/span.ts'
import { keyOf } from '../../language/name.ts'
import type { Block, Entry, Tree } from '../../language/tree.ts'
import type { Measured } from '../../report/compiled.ts'
import { entriesIn } from '../place/entries.ts'
import { type LineInBlock, linesNaming } from './lines-naming.ts'
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

/** Every place in some files of a job where a thing is named, in written order. */
export function mentionsOf(
  measured: Measured,
  trees: readonly Tree[],
  thing: Thing,
): readonly Mention[] {
  const id = idOf(thing)
  const keys = new Set(keysOf(thing).filter((key) => key !== ''))
  if (id === null || keys.size === 0) return []
  const isMeant = (block: Block, use: NameUse): boolean => {
    const meant = keys.has(use.name.key) ? meaningOf(measured, block, use) : null
    return meant !== null && idOf(meant) === id
  }
  return trees.flatMap((tree) =>
    linesFor(tree, thing, keys).flatMap(({ block, entry }) => [
      ...namesOn(block, entry)
        .filter((use) => isMeant(block, use))
        .map(({ name, gives }) => ({ ...name, gives, inText: false })),
      ...(thing.kind === 'product' ? pricedIn(block, entry, keys) : []),
    ]),
  )
}

/** Lines that may name the thing: what belongs to a room is named in its block, or beside the room's name. */
function linesFor(tree: Tree, thing: Thing, keys: ReadonlySet<string>): readonly LineInBlock[] {
  if (!('room' in thing) || thing.kind === 'room' || thing.kind === 'closet') {
    const [key = ''] = keys
    return linesNaming(tree, key)
  }
  const rooms = [thing.room.name.key, ...(thing.kind === 'opening' ? beyond(thing) : [])]
  const own = tree.blocks.filter(
    ({ word, name }) => word === 'room' && name !== null && rooms.includes(name.key),
  )
  const inside = own.flatMap((block) => entriesIn(block).map((entry) => ({ block, entry })))
  const outside = linesNaming(tree, rooms[0]!).filter(({ block }) => !own.includes(block))
  return [...inside, ...outside].sort((a, b) => a.entry.line.number - b.entry.line.number)
}

function beyond({ opening }: Extract<Thing, { kind: 'opening' }>): readonly string[] {
  return opening.to === null ? [] : [opening.to.key]
}

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
