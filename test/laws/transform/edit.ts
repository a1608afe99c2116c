import { parse } from '../../../server/src/language/parse.ts'
import type { Block, Entry, Measure, Tree } from '../../../server/src/language/tree.ts'

/** A stretch of a text, and what shall stand there instead. */
export interface Edit {
  readonly span: { readonly start: number; readonly end: number }
  readonly text: string
}

/** The text with all edits done; they may come in any order and must not overlap. */
export function edited(text: string, edits: Iterable<Edit>): string {
  const inOrder = [...edits].sort((a, b) => a.span.start - b.span.start || a.span.end - b.span.end)
  let done = ''
  let at = 0
  for (const { span, text: instead } of inOrder) {
    if (span.start < at) throw new RangeError(`two edits overlap at ${span.start}`)
    done += text.slice(at, span.start) + instead
    at = span.end
  }
  return done + text.slice(at)
}

export function treeOf(text: string): Tree {
  return parse('text.floor', text)
}

/** Every line with a meaning in written order: blocks, their lines, and what stands under those. */
export function entriesOf({ blocks }: Tree): readonly Entry[] {
  const below = (entry: Entry): readonly Entry[] => [entry, ...entry.under.flatMap(below)]
  return blocks.flatMap(below)
}

export function measuresOf(entry: Entry): readonly Measure[] {
  return entry.phrases.flatMap((phrase) => phrase.measures)
}

/** Where a measure's figure stands, without the doubts around it. */
export function figureSpan({ text }: Tree, { figure, span }: Measure): Edit['span'] {
  const start = text.indexOf(figure.text, span.start)
  return { start, end: start + figure.text.length }
}

/** A block or line with all lines below it, up to and with its last line's end. */
export function wholeOf({ text, lines }: Tree, entry: Entry): Edit['span'] {
  const last = lastLine(entry)
  const line = lines[last - 1]!
  return {
    start: entry.line.span.start,
    end: Math.min(text.length, line.span.end + line.ending.length),
  }
}

function lastLine(entry: Entry): number {
  return entry.under.reduce((last, each) => Math.max(last, lastLine(each)), entry.line.number)
}

/** The text of a block or line with all below it, always ended by a line end. */
export function textOf(tree: Tree, entry: Entry): string {
  const { start, end } = wholeOf(tree, entry)
  const text = tree.text.slice(start, end)
  return /[\r\n]$/.test(text) ? text : `${text}\n`
}

export function blocksNamed({ blocks }: Tree, word: string): readonly Block[] {
  return blocks.filter((block) => block.word === word)
}

/** Blocks that open something: the file's own lines left out. */
export const OPENERS: readonly string[] = ['job', 'room', 'product', 'floor', 'prices']
