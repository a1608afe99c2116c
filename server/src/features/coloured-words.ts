import type { Span } from '../facts/span.ts'
import type { Block, Entry, Token, Tree } from '../language/tree.ts'
import { type NameKind, type NameUse, namesOn } from './names/name-use.ts'
import { blocksIn, entriesIn } from './place/entries.ts'

/** What a stretch of the text is, for its colour. */
export type ColourKind =
  /** A word of the language: the first of a line, or one in a phrase. */
  | 'first word'
  | 'word'
  | NameKind
  | 'reading'
  /** A `?`: to be taken, or to be taken again. */
  | 'asked'
  /** Text that is carried as it stands. */
  | 'text'

export interface Coloured {
  readonly span: Span
  readonly kind: ColourKind
  /** A name where it is given, not used. */
  readonly gives: boolean
}

/**
 * The coloured stretches of a part of a file, in order and apart. They depend on the text of each block
 * alone, so that typing in one changes nothing in the others but where they stand.
 */
export function colouredWords(
  tree: Tree,
  { start, end }: { readonly start: number; readonly end: number } = {
    start: 0,
    end: tree.text.length,
  },
): readonly Coloured[] {
  return blocksIn(tree, start, end)
    .flatMap(colouredInBlock)
    .filter(({ span }) => span.start <= end && start <= span.end)
}

const known = new WeakMap<Block, readonly Coloured[]>()

function colouredInBlock(block: Block): readonly Coloured[] {
  const there = known.get(block)
  if (there !== undefined) return there
  const made = entriesIn(block).flatMap((entry) => colouredOnLine(block, entry))
  known.set(block, made)
  return made
}

function colouredOnLine(block: Block, entry: Entry): readonly Coloured[] {
  const names = namesOn(block, entry)
  const read = entry === block ? block.phrases : entry.phrases
  const coloured: Coloured[] = []
  let covered = 0
  for (const token of entry.line.tokens) {
    if (token.span.start < covered) continue
    const name = names.find((use) => holds(use.name.span, token.span))
    const isRead = name !== undefined || read.some(({ span }) => holds(span, token.span))
    const found = name === undefined ? plain(token, isRead) : named(name)
    if (found === null) continue
    coloured.push(found)
    covered = found.span.end
  }
  return coloured
}

function named({ name, kind, gives }: NameUse): Coloured {
  return { span: name.span, kind, gives }
}

/** A token that is no name; null for one without a colour: a comment, or one that could not be read. */
function plain({ kind, span }: Token, isRead: boolean): Coloured | null {
  const coloured = (colour: ColourKind): Coloured => ({ span, kind: colour, gives: false })
  if (kind === 'head') return coloured('first word')
  if (kind === 'text') return coloured('text')
  if (!isRead) return null
  switch (kind) {
    case 'figure':
      return coloured('reading')
    case 'asked':
      return coloured('asked')
    case 'word':
    case 'about':
    case 'within':
    case 'by':
      return coloured('word')
    default:
      return null
  }
}

function holds(outer: Span, inner: Span): boolean {
  return outer.start <= inner.start && inner.end <= outer.end
}
