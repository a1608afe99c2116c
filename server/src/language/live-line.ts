import type { Anchor } from '../facts/live-span.ts'
import type { Line } from './tree.ts'

/** A line of a stretch that moves when lines above it come or go. */
export class LiveLine implements Line {
  readonly #anchor: Anchor
  /** From 0, in its stretch. */
  readonly #index: number
  readonly span: Line['span']
  readonly ending: string
  readonly indent: number
  readonly tokens: Line['tokens']
  readonly head: Line['head']
  readonly comment: Line['comment']
  readonly broken: boolean

  constructor(anchor: Anchor, line: Line) {
    this.#anchor = anchor
    this.#index = line.number - 1
    this.span = line.span
    this.ending = line.ending
    this.indent = line.indent
    this.tokens = line.tokens
    this.head = line.head
    this.comment = line.comment
    this.broken = line.broken
  }

  get number(): number {
    return this.#anchor.line + this.#index
  }
}
