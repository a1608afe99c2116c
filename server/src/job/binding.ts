import type { Message } from '../facts/message.ts'
import { nearest } from '../facts/near.ts'
import type { Span } from '../facts/span.ts'
import type { Entry, Tree } from '../language/tree.ts'
import { DEFAULT_TAPE_OPTIONS, tapeOptionsIn } from '../language/units-line.ts'
import type { Nm, UnitStyle } from '../units/length.ts'
import { printLength } from '../units/print.ts'
import { samplesIn } from '../units/samples.ts'
import type { TapeOptions } from '../units/tape.ts'
import { fileName, hasUnreadInclude } from './includes.ts'
import { type MessageList, openMessageList } from './message-list.ts'

/** What every step of binding carries along: where messages go, and how places and lengths are said. */
export interface Binding extends Pick<MessageList, 'say' | 'sayOnce' | 'hush'> {
  /** "line 12", or "line 12 of hall.floor" when that is another file than the message's. */
  readonly place: (span: Span, from: Span) => string
  /** What lengths are said in. */
  readonly units: UnitStyle
  readonly length: (nm: Nm) => string
  /** A sentence whose sample lengths are written in feet and inches, as this job writes lengths. */
  readonly samples: (text: string) => string
  /** What stands at a span. */
  readonly text: (span: Span) => string
  /** How a length is read in a file. */
  readonly tape: (file: string) => TapeOptions
  /** The known name nearest to one that is not known, or null; null as well once enough were sought. */
  readonly nearest: (name: string, known: readonly string[]) => string | null
  /** The line could not be read and is wrong, not just unfinished. */
  readonly isWrong: (entry: Entry) => boolean
  /** A name that nothing has may be one of these that could not be read: a file, or a block's own name. */
  readonly mayBeUnread: (kind: 'room' | 'product') => boolean
}

/** Names are compared so often for a whole job: enough for any slip, and no text makes it slow. */
const MOST_COMPARISONS = 100_000

/** Collects messages until `messages` gives them, by file in the order read and then by place. */
export function openBinding(
  trees: readonly Tree[],
  root: string,
  units: UnitStyle,
): Binding & { readonly messages: () => readonly Message[] } {
  const order = new Map(trees.map((tree, index) => [tree.file, { tree, index }]))
  const { say, sayOnce, hush, messages: said } = openMessageList()
  let comparisons = 0
  const nearestOf = (name: string, known: readonly string[]): string | null => {
    comparisons += known.length
    return comparisons > MOST_COMPARISONS ? null : nearest(name, known)
  }
  const place = (span: Span, from: Span): string => {
    const line = `line ${lineNumber(order.get(span.file)?.tree, span.start)}`
    return span.file === from.file ? line : `${line} of ${fileName(span.file, root)}`
  }
  const text = (span: Span): string =>
    order.get(span.file)?.tree.text.slice(span.start, span.end) ?? ''
  const tapes = new Map(trees.map((tree) => [tree.file, tapeOptionsIn(tree)]))
  const tape = (file: string): TapeOptions => tapes.get(file) ?? DEFAULT_TAPE_OPTIONS
  const wrong = new Set(trees.flatMap(linesInError))
  const isWrong = (entry: Entry): boolean =>
    entry.broken && wrong.has(placeKey(entry.line.span.file, entry.line.number))
  const unread = trees.some((tree) => hasUnreadInclude(tree, root, order))
  const nameless = new Set(
    trees
      .flatMap(({ blocks }) => blocks.filter(({ name }) => name === null))
      .map(({ word }) => word),
  )
  const mayBeUnread = (kind: 'room' | 'product'): boolean => unread || nameless.has(kind)
  const rank = (message: Message): number => order.get(message.span.file)?.index ?? trees.length
  const messages = (): readonly Message[] =>
    [...said()].sort((a, b) => rank(a) - rank(b) || a.span.start - b.span.start)
  return {
    say,
    sayOnce,
    hush,
    place,
    units,
    length: (nm) => printLength(nm, units),
    samples: (said) => samplesIn(said, units),
    text,
    tape,
    nearest: nearestOf,
    isWrong,
    mayBeUnread,
    messages,
  }
}

/** The lines that the parser found an error in; a broken line without one is only half typed. */
function linesInError(tree: Tree): readonly string[] {
  return tree.messages
    .filter((message) => message.weight === 'error')
    .map((message) => placeKey(tree.file, lineNumber(tree, message.span.start)))
}

function placeKey(file: string, line: number): string {
  return `${line} ${file}`
}

/** The number of the line that holds an offset: halves the lines, for a job may have a million. */
function lineNumber(tree: Tree | undefined, offset: number): number {
  const lines = tree?.lines ?? []
  let low = 0
  let high = lines.length
  while (high - low > 1) {
    const middle = (low + high) >>> 1
    if (lines[middle]!.span.start <= offset) low = middle
    else high = middle
  }
  return lines[low]?.number ?? 1
}
