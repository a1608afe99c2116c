import type { Span } from './span.ts'

/** Where a stretch of a file begins that is read by itself. It moves when the text above it grows. */
export interface Anchor {
  readonly file: string
  /** The offset of its first character, and the number of its first line. */
  at: number
  line: number
}

/**
 * A span that moves with the stretch it lies in, so that what was worked out from a stretch need not be
 * worked out again when only the text above it changed. It tells where it lies in the version of the
 * file that was read last.
 */
export class LiveSpan implements Span {
  readonly #anchor: Anchor
  readonly #from: number
  readonly #to: number

  constructor(anchor: Anchor, from: number, to: number) {
    this.#anchor = anchor
    this.#from = from
    this.#to = to
  }

  get file(): string {
    return this.#anchor.file
  }

  get start(): number {
    return this.#anchor.at + this.#from
  }

  get end(): number {
    return this.#anchor.at + this.#to
  }

  /** The least span over this one and another of its stretch; null where the other lies elsewhere. */
  with(other: Span): LiveSpan | null {
    if (!(other instanceof LiveSpan) || other.#anchor !== this.#anchor) return null
    return new LiveSpan(
      this.#anchor,
      Math.min(this.#from, other.#from),
      Math.max(this.#to, other.#to),
    )
  }

  toJSON(): Span {
    return { file: this.file, start: this.start, end: this.end }
  }
}
