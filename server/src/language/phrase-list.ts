import type { Parted, Read } from './content.ts'
import { diagnose } from './diagnose.ts'
import type { Item } from './grammar.ts'
import { type Match, matchForms } from './match.ts'
import { readMeasure } from './measures.ts'
import { isTaken, nameFrom, sayStrayComma } from './name-list.ts'
import { sayError, shown, spanOf } from './reading.ts'
import type { Measure, Phrase } from './tree.ts'
import { sayUnfinished } from './unfinished.ts'

/** Reads a line of phrases: each is held against the forms of the line's word. */
export function readPhrases(parted: Parted, isSound: boolean): Read {
  const read: Phrase[] = []
  const met: string[] = []
  let whole = isSound
  sayStrayComma(parted)
  for (const items of parted.phrases) {
    const match = matchForms(items, parted.entered.forms)
    const phrase = match === null ? null : readMatch(match, items, parted)
    const isTwice = match !== null && met.includes(match.form.text) && !mayRepeat(match, parted)
    if (match === null && items.length > 0) diagnose(items, parted)
    if (isTwice) sayTwice(match, items, parted)
    else if (phrase !== null) read.push(phrase)
    if (match !== null) met.push(match.form.text)
    whole &&= phrase !== null && !isTwice
  }
  return { phrases: read, whole: hasNeeded(met, whole, parted) && whole }
}

function mayRepeat(match: Match, parted: Parted): boolean {
  return parted.entered.word.many?.includes(match.form.text) ?? false
}

function sayTwice(match: Match, items: readonly Item[], parted: Parted): void {
  const { word } = parted.entered.word
  const place = placeOf(items, parted)
  const typed = shown(parted.reading.text.slice(place.start, place.end))
  const again =
    match.form.text === 'LENGTH' ? ' A reading taken again has a line of its own below: again.' : ''
  const said = `A ${word} line says this once, and "${typed}" is the second.${again}`
  sayError(parted.reading, 'phrase-twice', place, said)
}

function placeOf(items: readonly Item[], { rest }: Parted) {
  return { start: rest.base + items[0]!.start, end: rest.base + items[items.length - 1]!.end }
}

/** The phrase with its figures read, or null when one of them is refused. */
function readMatch(match: Match, items: readonly Item[], parted: Parted): Phrase | null {
  const { rest, reading } = parted
  const measures: Measure[] = []
  for (const { item, wanted } of match.figures) {
    const measure = readMeasure(item, wanted, rest.base, reading)
    if (measure !== null) measures.push(measure)
  }
  if (measures.length < match.figures.length) return null
  const names = match.names.map((name) => nameFrom(name, rest.base, reading))
  if (match.form.text === 'called NAME' && isTaken(names[0]!, reading)) return null
  const { start, end } = placeOf(items, parted)
  const span = spanOf(reading, start, end)
  return { span, form: match.form.text, measures, names, choices: match.choices }
}

function hasNeeded(met: readonly string[], whole: boolean, parted: Parted): boolean {
  const { entered, rest, reading } = parted
  const { needs } = entered.word
  if (needs === undefined || needs.some((form) => met.includes(form))) return true
  if (whole) sayUnfinished(entered, rest, reading)
  return false
}
