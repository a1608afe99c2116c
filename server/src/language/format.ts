import { lastBefore } from '../facts/last-before.ts'
import type { Span } from '../facts/span.ts'
import type { TapeOptions } from '../units/tape.ts'
import { canonicalLength } from '../units/tape-canonical.ts'
import { DEEPER } from './outline.ts'
import type { Block, Entry, Line, Token, Tree } from './tree.ts'
import { tapeOptionsIn } from './units-line.ts'
import { wordIn } from './vocabulary.ts'

/** Replaces a stretch of the text. */
export interface Edit {
  readonly span: Span
  readonly text: string
}

/** The column (from 0) in which an indented line's value starts: fixed, so that no line moves another. */
const VALUE_COLUMN = 14

/** A stretch of a file, by offsets. */
interface Stretch {
  readonly start: number
  readonly end: number
}

/**
 * What brings a file into the canonical form, or only the lines that a stretch of it touches: one edit for
 * each line that is not in it. Only marks and blanks and the case of the language's own words change,
 * never a digit or a name; each line is written from itself alone; a line that cannot be read stays as
 * it is; line ends stay.
 */
export function formatEdits(tree: Tree, stretch: Stretch = WHOLE): readonly Edit[] {
  const options = tapeOptionsIn(tree)
  const lines = within(tree.lines, stretch, ({ span }) => span.start)
  const reached = { start: lines[0]?.span.start ?? 0, end: stretch.end }
  const entries = soundEntries(within(tree.blocks, reached, ({ line }) => line.span.start))
  const edits: Edit[] = []
  for (const line of lines) {
    const entry = entries.get(line.number)
    const text = entry === undefined ? wordless(line) : written(entry, options)
    const typed = tree.text.slice(line.span.start, line.span.end)
    if (text !== null && text !== typed) edits.push({ span: line.span, text })
  }
  return edits
}

const WHOLE: Stretch = { start: 0, end: Number.MAX_SAFE_INTEGER }

/** The things that a stretch touches, things in order: halved for, so that one line costs little. */
function within<T>(
  things: readonly T[],
  { start, end }: Stretch,
  startOf: (thing: T) => number,
): readonly T[] {
  const first = Math.max(0, lastBefore(things, start, startOf))
  return things.slice(first, lastBefore(things, end, startOf) + 1)
}

/** The whole text of a tree in the canonical form. */
export function format(tree: Tree): string {
  const parts: string[] = []
  let at = 0
  for (const edit of formatEdits(tree)) {
    parts.push(tree.text.slice(at, edit.span.start), edit.text)
    at = edit.span.end
  }
  return parts.join('') + tree.text.slice(at)
}

/** The entries that may be written anew, by the number of their line. */
function soundEntries(blocks: readonly Block[]): ReadonlyMap<number, Entry> {
  const found = new Map<number, Entry>()
  const waiting: Entry[] = blocks.filter(isUnderstood)
  for (let entry = waiting.pop(); entry !== undefined; entry = waiting.pop()) {
    if (!entry.broken && !entry.line.broken) found.set(entry.line.number, entry)
    for (const below of entry.under) waiting.push(below)
  }
  return found
}

/** Below an unreadable line in column one nothing is moved: what it opens is not known. */
function isUnderstood(block: Block): boolean {
  return wordIn('file', block.word) !== null
}

/** A line without a word: blank lines lose their blanks, comments keep their depth. Null: leave it. */
function wordless(line: Line): string | null {
  if (line.head !== null || line.broken) return null
  const bom = line.tokens[0]?.text.startsWith('\ufeff') === true ? '\ufeff' : ''
  const { comment } = line
  if (comment === null) return bom
  const text = line.tokens[line.tokens.length - 1]!.text
  return `${bom}${' '.repeat(depthOf(line))}${commentText(text)}`
}

function depthOf(line: Line): number {
  return line.indent === 0 ? 0 : line.indent < DEEPER ? 2 : 4
}

function commentText(text: string): string {
  return text.trimEnd()
}

function written(entry: Entry, options: TapeOptions): string {
  const { tokens } = entry.line
  const bom = tokens[0]?.text.startsWith('\ufeff') === true ? '\ufeff' : ''
  const depth = indentOf(entry)
  const head = `${' '.repeat(depth)}${entry.word}`
  const value = contentOf(entry, options)
  const gap = depth === 0 ? 1 : Math.max(1, VALUE_COLUMN - head.length)
  const body = value === '' ? head : `${head}${' '.repeat(gap)}${value}`
  const comment = tokens.find((token) => token.kind === 'comment')
  return `${bom}${body}${comment === undefined ? '' : `  ${commentText(comment.text)}`}`
}

/** 0 for lines of column one; 4 for lines that belong to the line above; else 2. */
function indentOf(entry: Entry): number {
  const { line, word } = entry
  const known = wordIn('room', word)
  if (wordIn('file', word) !== null && (known === null || line.indent === 0)) return 0
  const under = known?.word.under
  if (under === undefined) return 2
  if (known?.word.takes === 'text') return line.indent >= DEEPER ? 4 : 2
  return entry.phrases.some((phrase) => phrase.form === 'in WALL') ? 2 : 4
}

function contentOf(entry: Entry, options: TapeOptions): string {
  const { line, wordSpan } = entry
  const tokens = line.tokens.filter(
    (token) =>
      token.span.start >= wordSpan.end && token.kind !== 'blank' && token.kind !== 'comment',
  )
  const places = placesOf(entry)
  let text = ''
  let before: Token | null = null
  for (const token of tokens) {
    const glued =
      before === null ||
      token.kind === 'comma' ||
      isDoubt(token, before) ||
      isGluedName(token, before, places)
    text += `${glued ? '' : ' '}${canonicalToken(token, places, options)}`
    before = token
  }
  return text
}

/** A `?` after a reading stands close to it; alone it stands for the reading. */
function isDoubt(token: Token, before: Token): boolean {
  return token.kind === 'asked' && before.kind === 'figure'
}

/** What a name was typed without a blank between stays so: with one it would be another name. */
function isGluedName(token: Token, before: Token, { names }: Places): boolean {
  const both = { start: before.span.start, end: token.span.end }
  return (
    before.span.end === token.span.start &&
    names.some((name) => both.start >= name.start && both.end <= name.end)
  )
}

/** Where names and lengths start in a line, so that each token is written as what it is. */
interface Places {
  readonly names: readonly Span[]
  readonly lengths: readonly Span[]
}

function placesOf(entry: Entry): Places {
  const measures = entry.phrases.flatMap((phrase) => phrase.measures)
  return {
    names: entry.phrases.flatMap((phrase) => phrase.names.map((name) => name.span)),
    lengths: measures
      .filter(({ figure }) => figure.kind === 'length' || figure.kind === 'size')
      .map((measure) => measure.span),
  }
}

function isIn(token: Token, spans: readonly Span[]): boolean {
  return spans.some((span) => token.span.start >= span.start && token.span.end <= span.end)
}

function canonicalToken(token: Token, places: Places, options: TapeOptions): string {
  if (token.kind === 'text') return token.text
  if (token.kind === 'quoted') return `"${token.text.slice(1, -1)}"`
  if (isIn(token, places.names)) return token.text
  if (token.kind !== 'figure') return token.kind === 'by' ? 'x' : token.text.toLowerCase()
  if (isIn(token, places.lengths)) return canonicalLength(token.text, options)
  return glued(token.text)
}

/** A percent or degree sign stands right after its figure. */
function glued(figure: string): string {
  const sign = figure.at(-1)
  if (sign !== '%' && sign !== '°' && sign !== 'º') return figure
  return `${figure.slice(0, -1).trimEnd()}${sign === '%' ? '%' : '°'}`
}
