import type { IToken } from 'chevrotain'
import { message } from '../facts/message.ts'
import { diagnose } from './diagnose.ts'
import { exampleOf } from './examples.ts'
import { endOfToken, type Item, parsePhrases, type RawPhrase } from './grammar.ts'
import { lengthOfName, type Match, matchForms } from './match.ts'
import { readMeasure } from './measures.ts'
import { nameOf } from './name.ts'
import { type Reading, sayError, shown, spanOf } from './reading.ts'
import type { Measure, Name, Phrase } from './tree.ts'
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

/** Reads the rest of a line as its word takes it. Whatever cannot be read is said and left out. */
export function readContent(entered: Entered, rest: Rest, reading: Reading): Content {
  const takes = entered.word.takes
  if (takes === 'text') return textContent(rest)
  const sound = soundTokens(rest, reading)
  const raw = parsePhrases(sound.tokens)
  const empty = raw.length === 1 && raw[0]!.length === 0
  const read =
    takes === 'phrases'
      ? phraseList(empty ? [] : raw, entered, rest, reading)
      : nameList(empty ? [] : raw, entered, rest, reading)
  const whole = read.whole && sound.whole
  const end = rest.base
  return { phrases: read.phrases, text: '', textStart: end, textEnd: end, whole }
}

function textContent(rest: Rest): Content {
  const token = rest.tokens.find((found) => found.tokenType.name === 'text')
  const start = rest.base + (token?.startOffset ?? 0)
  const text = token?.image ?? ''
  return { phrases: [], text, textStart: start, textEnd: start + text.length, whole: true }
}

interface Read {
  readonly phrases: readonly Phrase[]
  readonly whole: boolean
}

/** Leaves out blanks and comments, and with a message what no phrase can hold. */
function soundTokens(rest: Rest, reading: Reading) {
  const tokens: IToken[] = []
  let whole = true
  for (const token of rest.tokens) {
    const kind = token.tokenType.name
    if (kind === 'blank' || kind === 'comment') continue
    if (kind === 'stuck hash' || kind === 'open quote') {
      whole = false
      const place = { start: rest.base + token.startOffset, end: rest.base + endOfToken(token) }
      if (kind === 'stuck hash') sayStuckHash(token, place, reading)
      else sayOpenQuote(token, place, reading)
    } else tokens.push(token)
  }
  return { tokens, whole }
}

type Place = { readonly start: number; readonly end: number }

function sayStuckHash(token: IToken, place: Place, reading: Reading): void {
  const after = token.image.slice(1)
  const apart = ` # ${after}`
  const named = /^[0-9]+$/.test(after) ? ` A name may hold the plain number: ${after}.` : ''
  sayError(
    reading,
    'comment-without-blank',
    place,
    `A comment has a blank on each side of its #.${named}`,
    named === ''
      ? { ...place, title: 'Put a blank on each side of #', text: apart }
      : { ...place, title: `Write ${after}`, text: after },
  )
}

function sayOpenQuote(token: IToken, place: Place, reading: Reading): void {
  const said = `The quote before ${shown(token.image.slice(1).trim()) || 'the line end'} is not closed. A quoted name has a " on each side; an inch mark stands after its number.`
  sayError(reading, 'quote-not-closed', place, said)
}

function nameList(raw: readonly RawPhrase[], entered: Entered, rest: Rest, reading: Reading): Read {
  const { word, takes } = entered.word
  if (raw.length === 0) {
    const said = `${word} needs a name: ${word} ${exampleOf(word)}.`
    sayError(reading, 'name-missing', { start: rest.base, end: rest.base }, said)
    return { phrases: [], whole: false }
  }
  if (takes === 'name' && raw.length > 1) {
    const start = rest.base + (raw[0]![0]?.start ?? 0)
    const said = `${word} takes one name, and a name holds no comma.`
    sayError(reading, 'name-with-comma', { start, end: endOf(raw, rest) }, said)
    return { phrases: [], whole: false }
  }
  const phrases: Phrase[] = []
  for (const items of raw) {
    const phrase = namePhrase(items, rest, reading)
    if (phrase !== null) phrases.push(phrase)
  }
  return { phrases, whole: phrases.length === raw.length }
}

function endOf(raw: readonly RawPhrase[], rest: Rest): number {
  return rest.base + Math.max(...raw.map((items) => items[items.length - 1]?.end ?? 0))
}

function namePhrase(items: RawPhrase, rest: Rest, reading: Reading): Phrase | null {
  if (items.length === 0) {
    sayEmptyPhrase(rest, reading)
    return null
  }
  if (lengthOfName(items, 0) !== items.length) {
    sayNeedsQuotes(items, rest, reading)
    return null
  }
  const name = nameFrom(items, rest.base, reading)
  return { span: name.span, form: 'NAME', measures: [], names: [name], choices: [] }
}

function sayEmptyPhrase(rest: Rest, reading: Reading): void {
  const comma = rest.tokens.find((token) => token.tokenType.name === 'comma')!
  const place = { start: rest.base + comma.startOffset, end: rest.base + endOfToken(comma) }
  sayError(
    reading,
    'comma-astray',
    place,
    'Nothing stands on one side of a comma. Leave the comma out, or write what is missing.',
  )
}

function sayNeedsQuotes(items: RawPhrase, rest: Rest, reading: Reading): void {
  const start = rest.base + items[0]!.start
  const end = rest.base + items[items.length - 1]!.end
  const typed = reading.text.slice(start, end)
  const quoted = `"${typed.replace(/["\u201c\u201d]/g, '')}"`
  sayError(
    reading,
    'name-needs-quotes',
    { start, end },
    `A name that starts with a number or holds to, of, and, about or within stands in quotes: ${shown(quoted)}.`,
    { start, end, title: `Write ${shown(quoted)}`, text: quoted },
  )
}

/** The name that a row of items is: as typed, without its quotes. */
export function nameFrom(items: readonly Item[], base: number, reading: Reading): Name {
  const start = base + items[0]!.start
  const end = base + items[items.length - 1]!.end
  const text = items.some((item) => item.kind === 'quoted')
    ? items.map((item) => textOf(item, base, reading)).join(' ')
    : reading.text.slice(start, end)
  return nameOf(text, spanOf(reading, start, end))
}

function textOf(item: Item, base: number, reading: Reading): string {
  return item.kind === 'measure'
    ? reading.text.slice(base + item.start, base + item.end)
    : item.text
}

function phraseList(
  raw: readonly RawPhrase[],
  entered: Entered,
  rest: Rest,
  reading: Reading,
): Read {
  const phrases: Phrase[] = []
  const met: Match[] = []
  let whole = true
  for (const items of raw) {
    const match = items.length === 0 ? null : matchForms(items, entered.forms)
    if (match !== null) met.push(match)
    const phrase = match === null ? null : phraseFrom(match, items, rest, reading)
    if (items.length === 0) sayEmptyPhrase(rest, reading)
    else if (match === null) diagnose(items, entered, rest.base, reading)
    if (phrase === null) whole = false
    else phrases.push(phrase)
  }
  const complete = hasNeeded(met, whole, entered, rest, reading)
  return { phrases, whole: whole && complete }
}

function phraseFrom(match: Match, items: RawPhrase, rest: Rest, reading: Reading): Phrase | null {
  const measures: Measure[] = []
  for (const { item, wanted } of match.figures) {
    const measure = readMeasure(item, wanted, rest.base, reading)
    if (measure !== null) measures.push(measure)
  }
  if (measures.length < match.figures.length) return null
  const start = rest.base + items[0]!.start
  const end = rest.base + items[items.length - 1]!.end
  return {
    span: spanOf(reading, start, end),
    form: match.form.text,
    measures,
    names: match.names.map((name) => nameFrom(name, rest.base, reading)),
    choices: match.choices,
  }
}

/** A line whose main phrase is still to come is unfinished, not wrong. */
function hasNeeded(
  met: readonly Match[],
  whole: boolean,
  entered: Entered,
  rest: Rest,
  reading: Reading,
): boolean {
  const { needs, word } = entered.word
  if (needs === undefined || met.some((match) => match.form.text === needs)) return true
  if (!whole) return false
  const asked = needs === 'LENGTH' ? ', or ? while it is still to be taken' : ''
  const said = `${word} still needs ${exampleOf(needs)}${asked}.`
  const span = spanOf(reading, rest.base, rest.base)
  reading.say(message('incomplete', 'line-unfinished', span, said))
  return false
}
