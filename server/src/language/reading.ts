import { type Anchor, LiveSpan } from '../facts/live-span.ts'
import { type Message, message } from '../facts/message.ts'
import type { Span } from '../facts/span.ts'
import type { TapeOptions } from '../units/tape.ts'

/** What every step of reading one file carries along. */
export interface Reading {
  readonly file: string
  readonly text: string
  readonly tape: TapeOptions
  /** For a text that is a stretch of a file: where it lies in it. Null for a whole file. */
  readonly anchor: Anchor | null
  /** Takes a message; false while the lines of an unreadable block are read in silence. */
  readonly say: (message: Message) => void
  /** So much is said already that nothing more is kept: what it takes to say more is spared. */
  readonly isFull: () => boolean
}

export function spanOf(reading: Reading, start: number, end: number): Span {
  const { anchor, file } = reading
  return anchor === null ? { file, start, end } : new LiveSpan(anchor, start, end)
}

/** The text of a stretch for a message: in one line, and not longer than can be taken in. */
export function shown(text: string): string {
  return text.length > 60 ? `${text.slice(0, 60)}…` : text
}

/** Says an error about a stretch of the text, with one repair where it is sure. */
export function sayError(
  reading: Reading,
  code: string,
  place: { readonly start: number; readonly end: number },
  text: string,
  repair: Repair | null = null,
): void {
  const span = spanOf(reading, place.start, place.end)
  const fixes = repair === null ? [] : [fixOf(reading, repair)]
  reading.say(message('error', code, span, text, { fixes }))
}

/** Replaces a stretch by a text. */
export interface Repair {
  readonly title: string
  readonly start: number
  readonly end: number
  readonly text: string
}

export function fixOf(reading: Reading, repair: Repair) {
  const span = spanOf(reading, repair.start, repair.end)
  return { title: repair.title, edits: [{ span, text: repair.text }] }
}
