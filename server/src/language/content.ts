import type { IToken } from 'chevrotain'
import { refuseNumber } from '../units/tape-refusals.ts'
import { type Item, parsePhrases } from './grammar.ts'
import { readNames } from './name-list.ts'
import { readPhrases } from './phrase-list.ts'
import { type Reading, sayError } from './reading.ts'
import { soundTokens } from './sound-tokens.ts'
import type { Phrase } from './tree.ts'
import { sayUnfinished } from './unfinished.ts'
import type { Entered } from './vocabulary.ts'

/** The tokens of a line after its first word; their offsets count from `base` in the text. */
export interface Rest {
  readonly base: number
  readonly tokens: readonly IToken[]
}

/** What a line says after its first word. `whole` is false when part of it could not be read. */
export interface Content {
  readonly phrases: readonly Phrase[]
  readonly text: string
  readonly textStart: number
  readonly textEnd: number
  readonly whole: boolean
}

/** The phrases between the commas of one line, and the line they stand in. */
export interface Parted {
  readonly phrases: readonly (readonly Item[])[]
  readonly entered: Entered
  readonly rest: Rest
  readonly reading: Reading
}

/** What could be read of them. */
export interface Read {
  readonly phrases: readonly Phrase[]
  readonly whole: boolean
}

/** Reads the rest of a line as its word takes it. Whatever cannot be read is said and left out. */
export function readContent(entered: Entered, rest: Rest, reading: Reading): Content {
  const { takes } = entered.word
  if (takes === 'text') return readText(entered, rest, reading)
  const sound = soundTokens(rest, reading)
  const all = parsePhrases(sound.tokens)
  // The phrase that an open quote stands in is lost with it, and nothing more is said of it.
  const raw = sound.isOpen ? all.slice(0, -1) : all
  const isEmpty = raw.length === 1 && raw[0]!.length === 0
  const parted = { phrases: isEmpty ? [] : raw, entered, rest, reading }
  const read =
    takes === 'phrases' ? readPhrases(parted, sound.whole) : readNames(parted, sound.whole)
  const { base } = rest
  const whole = read.whole && sound.whole
  return { phrases: read.phrases, text: '', textStart: base, textEnd: base, whole }
}

function readText(entered: Entered, rest: Rest, reading: Reading): Content {
  const token = rest.tokens.find((found) => found.tokenType.name === 'text')
  const start = rest.base + (token?.startOffset ?? 0)
  const text = token?.image ?? ''
  const { needs, home } = entered.word
  const isThere = needs === undefined || text !== ''
  if (!isThere) sayUnfinished(entered, rest, reading)
  const whole = isThere && !(home === 'prices' && sayComma(text, start, reading))
  return { phrases: [], text, textStart: start, textEnd: start + text.length, whole }
}

/** A comma in a figure: in a price the difference is a thousandfold. */
const COMMA = /[0-9],[0-9]/

/** Says it, and gives true, when a figure of a price book's line holds a comma. */
function sayComma(text: string, textStart: number, reading: Reading): boolean {
  const comma = text.search(COMMA)
  if (comma < 0) return false
  let [from, to] = [comma, comma + 3]
  while (from > 0 && /[0-9.]/.test(text.charAt(from - 1))) from -= 1
  while (to < text.length && /[0-9.,]/.test(text.charAt(to))) to += 1
  const refused = refuseNumber(text.slice(from, to))
  if (refused === null) return false
  const place = { start: textStart + from, end: textStart + to }
  sayError(reading, refused.code, place, refused.text)
  return true
}
