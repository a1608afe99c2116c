import type { Source } from './source.ts'
import type { Span } from './span.ts'

/**
 * Why a number is what it is: the tree under it ends in readings, whose `span` leads to the text.
 * `value` is already printed with its unit, so every reader shows the same digits.
 */
export interface Derivation {
  readonly label: string
  readonly value: string
  /** The formula in words or signs, over the labels of the inputs; empty for a reading. */
  readonly formula: string
  readonly inputs: readonly Derivation[]
  /** Rounding or custom that shaped the value, in one sentence; empty where there is none. */
  readonly rule: string
  readonly source: Source
  /** The text it was read from, for a reading. */
  readonly span: Span | null
}
