import type { Span } from '../facts/span.ts'
import type { Block, Entry, Tree } from '../language/tree.ts'
import { WALL_WORDS } from '../language/word.ts'
import { visible } from '../report/visible.ts'
import { spanOfEntry } from './place/entries.ts'

/** What an item of the outline stands for. */
export type OutlineKind =
  | 'job'
  | 'room'
  | 'wall'
  | 'opening'
  | 'closet'
  | 'obstacle'
  | 'check'
  | 'product'
  | 'floor'
  | 'prices'

export interface OutlineItem {
  readonly kind: OutlineKind
  /** Never empty. */
  readonly name: string
  /** The reading, or what else tells one from another; may be empty. */
  readonly detail: string
  /** All of it, lines below it included. */
  readonly span: Span
  /** What is shown when it is gone to: within `span`. */
  readonly at: Span
  readonly under: readonly OutlineItem[]
}

const BLOCKS: readonly string[] = ['room', 'product', 'floor', 'prices']

const KINDS: ReadonlyMap<string, OutlineKind> = new Map([
  ...WALL_WORDS.map((word) => [word, 'wall'] as const),
  ...['door', 'opening', 'pass-through'].map((word) => [word, 'opening'] as const),
  ['closet', 'closet'],
  ...['alcove', 'hearth', 'column', 'island', 'stairwell', 'vent'].map(
    (word) => [word, 'obstacle'] as const,
  ),
  ...['diagonal', 'across', 'tie'].map((word) => [word, 'check'] as const),
])

/** A file as a tree: the job over its rooms, products, floors and price books; a part as a list. */
export function outlineOf(tree: Tree): readonly OutlineItem[] {
  const blocks = tree.blocks.filter(({ word }) => BLOCKS.includes(word)).map(blockItem)
  const job = tree.blocks.find(({ word }) => word === 'job')
  if (job === undefined) return blocks
  return [
    {
      kind: 'job',
      name: shown(job.text, 'job'),
      detail: '',
      span: { file: tree.file, start: 0, end: tree.text.length },
      at: job.line.span,
      under: blocks,
    },
  ]
}

function blockItem(block: Block): OutlineItem {
  return {
    kind: block.word as OutlineKind,
    name: shown(block.name?.text ?? '', block.word),
    detail: '',
    span: spanOfEntry(block),
    at: block.name?.span ?? block.line.span,
    under: itemsOf(block.under),
  }
}

function itemsOf(entries: readonly Entry[]): readonly OutlineItem[] {
  return entries.flatMap((entry) => {
    const kind = KINDS.get(entry.word)
    return kind === undefined ? [] : [entryItem(entry, kind)]
  })
}

function entryItem(entry: Entry, kind: OutlineKind): OutlineItem {
  return {
    kind,
    name: shown(nameOf(entry), entry.word),
    detail: visible(
      entry.phrases.find(({ form }) => form === 'LENGTH')?.measures[0]?.figure.text ?? '',
    ),
    span: spanOfEntry(entry),
    at: entry.line.span,
    under: itemsOf(entry.under),
  }
}

/** Its own name after its word, or where it leads: "north, window wall", "door to hall". */
function nameOf({ word, phrases }: Entry): string {
  const name = (form: string) => phrases.find((phrase) => phrase.form === form)?.names[0]?.text
  const own = name('called NAME')
  if (own !== undefined) return `${word}, ${own}`
  const to = name('to ROOM')
  return to === undefined ? word : `${word} to ${to}`
}

function shown(text: string, otherwise: string): string {
  return text.trim() === '' ? otherwise : visible(text)
}
