import type { Message } from '../facts/message.ts'
import type { Span } from '../facts/span.ts'
import type { Nm } from '../units/length.ts'
import type { Ratio } from '../units/ratio.ts'

/**
 * The syntax tree: what was typed, line by line, without meaning. It is lossless (`print` in
 * `print.ts` gives the text back byte for byte) and parsing never fails: a line that cannot be read
 * is kept, marked `broken`, and costs nothing but itself.
 */
export interface Tree {
  readonly file: string
  readonly text: string
  /** Every line of the text in order, blank ones too. */
  readonly lines: readonly Line[]
  /** What the lines mean together: file lines and blocks in written order. */
  readonly blocks: readonly Block[]
  readonly messages: readonly Message[]
}

/** One line of text and what could be read in it. */
export interface Line {
  /** Without the line end. */
  readonly span: Span
  /** From 1. */
  readonly number: number
  /** The line end as typed: '\n', '\r\n', '\r' or '' at the end of the file. */
  readonly ending: string
  /** Blanks before the first word, in columns. */
  readonly indent: number
  /** The tokens in order, blanks and comment included: joined, they are the line. */
  readonly tokens: readonly Token[]
  /** The first word (or words, for `out of square`); null for a blank or comment line. */
  readonly head: { readonly word: string; readonly span: Span } | null
  readonly comment: Span | null
  readonly broken: boolean
}

export interface Token {
  readonly kind: string
  readonly text: string
  readonly span: Span
}

/** A block: the line in column one and the entries below it. A file line is a block of its own. */
export interface Block extends Entry {
  /** The name after the first word (`room bunk`), or null where the block has none. A broken block keeps what may be its name. */
  readonly name: Name | null
}

/** One line with a meaning, and the deeper lines that belong to it (`door` under its wall). */
export interface Entry {
  /** The vocabulary word that opens the line, lower case: 'north', 'door', 'out of square'. */
  readonly word: string
  readonly line: Line
  readonly wordSpan: Span
  /** Phrases that fit a form of the word, in written order. Unreadable ones are messages instead. */
  readonly phrases: readonly Phrase[]
  /** The rest of the line, for words that take plain text (`note`, `site`); else ''. */
  readonly text: string
  readonly textSpan: Span
  /** The line could not be read whole: it counts as present but unknown. */
  readonly broken: boolean
  readonly under: readonly Entry[]
}

/**
 * A phrase between commas, matched to one form of its word (see `words.ts`). In a line that takes a
 * name or a list of names each name is a phrase of the form 'NAME'.
 */
export interface Phrase {
  readonly span: Span
  /** The form it fits, exactly as the vocabulary writes it: 'LENGTH from left'. */
  readonly form: string
  /** Readings and other figures in it, in order. */
  readonly measures: readonly Measure[]
  /** Names in it, in order (rooms, walls, corners, products, and free names). */
  readonly names: readonly Name[]
  /** Fixed alternatives chosen in it, in order: 'east', 'up', 'tub'. */
  readonly choices: readonly string[]
}

/** A name as typed, and the key it is looked up by (case and runs of blanks do not distinguish). */
export interface Name {
  readonly text: string
  readonly key: string
  readonly span: Span
}

/** A figure with the doubts attached to it. */
export interface Measure {
  readonly span: Span
  readonly figure: Figure
  /** `about 12' 4"` */
  readonly about: boolean
  /** `within 1/4"`: what this one reading is worth. */
  readonly within: Nm | null
  /** `12' 4"?`: used, and to be taken again. */
  readonly doubtful: boolean
}

export type Figure =
  | { readonly kind: 'length'; readonly nm: Nm; readonly text: string }
  | { readonly kind: 'size'; readonly nm: readonly [Nm, Nm]; readonly text: string }
  | { readonly kind: 'number'; readonly value: Ratio; readonly text: string }
  | { readonly kind: 'percent'; readonly value: Ratio; readonly text: string }
  | { readonly kind: 'angle'; readonly degrees: Ratio; readonly text: string }
  | { readonly kind: 'date'; readonly text: string }
  /** A lone `?`: to be taken. */
  | { readonly kind: 'asked'; readonly text: '?' }
