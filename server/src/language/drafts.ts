import type { Content } from './content.ts'
import { keepLine } from './keep-line.ts'
import type { RawLine } from './lines.ts'
import { nameOf } from './name.ts'
import { type Reading, spanOf } from './reading.ts'
import type { Entry, Line, Name } from './tree.ts'
import { wordIn } from './vocabulary.ts'
import type { Home } from './words.ts'

/** An entry while lines may still be added under it. */
export interface Draft extends Entry {
  readonly under: Draft[]
  broken: boolean
}

/** A block while it is being filled. */
export interface DraftBlock extends Draft {
  readonly name: Name | null
  /** What kind of lines it holds; null below a file line. */
  readonly home: Home | null
  /** Opened by an unreadable line: what stands below is kept and nothing more is said about it. */
  readonly silent: boolean
}

/** An entry for a line that was read. */
export function draftOf(
  raw: RawLine,
  line: Line,
  read: { readonly word: string; readonly content: Content },
  reading: Reading,
): Draft {
  const { word, content } = read
  return {
    word,
    line,
    wordSpan: spanOf(reading, raw.head!.start, raw.head!.end),
    phrases: content.phrases,
    text: content.text,
    textSpan: spanOf(reading, content.textStart, content.textEnd),
    broken: !content.whole,
    under: [],
  }
}

/** An entry for a line that was not: it keeps its word and its text. */
export function brokenDraft(raw: RawLine, word: string, reading: Reading): Draft {
  const line = keepLine(raw, 'text', true, reading)
  const start = raw.head?.start ?? raw.start
  const end = raw.head?.end ?? raw.start
  return {
    word,
    line,
    wordSpan: spanOf(reading, start, end),
    phrases: [],
    text: restText(line),
    textSpan: spanOf(reading, end, raw.end),
    broken: true,
    under: [],
  }
}

/** A block for an unreadable line in column one, with what may be its name. */
export function brokenBlock(
  raw: RawLine,
  word: string,
  home: Home | null,
  reading: Reading,
): DraftBlock {
  const draft = brokenDraft(raw, word, reading)
  const name = draft.text === '' ? null : nameOf(draft.text, draft.textSpan)
  return { ...draft, name, home, silent: true }
}

function restText(line: Line): string {
  return line.tokens
    .filter((token) => token.kind === 'text')
    .map((token) => token.text)
    .join(' ')
}

/** A line whose word is not known: it may be anything, a wall too. */
export function isUnknown(draft: Draft): boolean {
  return draft.broken && wordIn('room', draft.word) === null
}
