import { LiveSpan } from './live-span.ts'

/** A stretch of one file's text, in UTF-16 code units: `start` is inside, `end` is just past it. */
export interface Span {
  readonly file: string
  readonly start: number
  readonly end: number
}

/** The least span that covers both; both must lie in one file, and move together where they move. */
export function cover(a: Span, b: Span): Span {
  const live = a instanceof LiveSpan ? a.with(b) : null
  return live ?? { file: a.file, start: Math.min(a.start, b.start), end: Math.max(a.end, b.end) }
}
