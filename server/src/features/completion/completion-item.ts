import type { Span } from '../../facts/span.ts'
import type { Insert } from '../writing/insert.ts'

export type CompletionKind =
  /** A word that opens a block or speaks for the file. */
  | 'block'
  /** The word of a line inside a block. */
  | 'line'
  /** A way of going on: `from left`, `cased`. */
  | 'phrase'
  | 'reading'
  | 'unit'
  | 'room'
  | 'closet'
  | 'wall'
  | 'corner'
  | 'opening'
  | 'product'
  | 'trim'
  | 'warning'
  | 'file'
  /** Several lines at once. */
  | 'skeleton'

/** One thing that may be put in at the cursor. */
export interface Completion {
  readonly label: string
  readonly kind: CompletionKind
  /** What it says, in one sentence. */
  readonly detail: string
  readonly insert: Insert
  /** What it replaces: what is typed of it. */
  readonly span: Span
  /** What typing is held against. */
  readonly filter: string
  /** The most likely one of all. */
  readonly likely: boolean
}

/** More than these are given as one types on. */
export const MOST_OFFERS = 200

export interface Completions {
  /** In the order in which they are shown. */
  readonly items: readonly Completion[]
  /** False where there are more than were given: typing on brings others. */
  readonly whole: boolean
}
