import type { Parted, Read } from './content.ts'
import { endOfToken, type Item } from './grammar.ts'
import { lengthOfName } from './match.ts'
import { nameOf } from './name.ts'
import { type Reading, sayError, shown, spanOf } from './reading.ts'
import type { Name, Phrase } from './tree.ts'

/** Names that mean something everywhere, so nothing else can be called so. */
const TAKEN: readonly string[] = [
  'left',
  'right',
  'middle',
  'outside',
  'stair',
  'north',
  'north-east',
  'east',
  'south-east',
  'south',
  'south-west',
  'west',
  'north-west',
]

/** Reads a line that takes one name, or a list of names parted by commas. */
export function readNames(parted: Parted, isSound: boolean): Read {
  const { entered, phrases, rest, reading } = parted
  const { word, takes } = entered.word
  if (phrases.length === 0) {
    const said = `${word} needs a name: words, then words or numbers, such as ${word} bedroom 2.`
    const place = { start: rest.base - word.length, end: rest.base }
    if (isSound) sayError(reading, 'name-missing', place, said)
    return { phrases: [], whole: false }
  }
  if (takes === 'name' && phrases.flat().length > 0 && phrases.length > 1) {
    const said = `${word} takes one name, and a name holds no comma.`
    sayError(reading, 'name-with-comma', placeOf(phrases.flat(), rest.base), said)
    return { phrases: [], whole: false }
  }
  sayStrayComma(parted)
  const read = phrases.map((items) => namePhrase(items, parted)).filter((phrase) => phrase !== null)
  return { phrases: read, whole: read.length === phrases.length }
}

function placeOf(items: readonly Item[], base: number) {
  return { start: base + items[0]!.start, end: base + items[items.length - 1]!.end }
}

function namePhrase(items: readonly Item[], parted: Parted): Phrase | null {
  const { entered, rest, reading } = parted
  if (items.length === 0) return null
  if (lengthOfName(items, 0) !== items.length) sayNeedsQuotes(items, parted)
  else {
    const name = nameFrom(items, rest.base, reading)
    const gives = entered.word.word === 'room' || entered.word.word === 'corner'
    if (gives && isTaken(name, reading)) return null
    return { span: name.span, form: 'NAME', measures: [], names: [name], choices: [] }
  }
  return null
}

/** Says it when a name that is given is one of the language's own; sides and ways keep their meaning. */
export function isTaken(name: Name, reading: Reading): boolean {
  if (!TAKEN.includes(name.key)) return false
  const said = `${name.text} has a meaning of its own everywhere and cannot be a name. A second word makes it one: ${name.text} room.`
  sayError(reading, 'name-taken', name.span, said)
  return true
}

/** A comma with nothing before it or after it: once for a line, however many there are. */
export function sayStrayComma({ phrases, rest, reading }: Parted): void {
  const empty = phrases.findIndex((items) => items.length === 0)
  if (empty < 0) return
  const commas = rest.tokens.filter((token) => token.tokenType.name === 'comma')
  const comma = commas[Math.max(0, empty - 1)]!
  const place = { start: rest.base + comma.startOffset, end: rest.base + endOfToken(comma) }
  const said =
    'Nothing stands on one side of a comma. Leave the comma out, or write what is missing.'
  sayError(reading, 'comma-astray', place, said)
}

function sayNeedsQuotes(items: readonly Item[], { rest, reading }: Parted): void {
  const place = placeOf(items, rest.base)
  const quoted = `"${reading.text.slice(place.start, place.end).replace(/["\u201c\u201d]/g, '')}"`
  const said = `A name that starts with a number or holds to, of, and, about or within stands in quotes: ${shown(quoted)}.`
  const repair = { ...place, title: `Write ${shown(quoted)}`, text: quoted }
  sayError(reading, 'name-needs-quotes', place, said, repair)
}

/** The name that a row of items is: as typed, without its quotes. */
export function nameFrom(items: readonly Item[], base: number, reading: Reading): Name {
  const { start, end } = placeOf(items, base)
  const text = items.some((item) => item.kind === 'quoted')
    ? items.map((item) => textOf(item, base, reading)).join(' ')
    : reading.text.slice(start, end)
  return nameOf(text, spanOf(reading, start, end))
}

function textOf(item: Item, base: number, reading: Reading): string {
  const isTyped = item.kind === 'measure'
  return isTyped ? reading.text.slice(base + item.start, base + item.end) : item.text
}
