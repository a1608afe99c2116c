import type { Entry, Measure, Name, Phrase } from '../language/tree.ts'
import type { Nm } from '../units/length.ts'
import type { Ratio } from '../units/ratio.ts'

/** The first phrase of a line that fits a form, written exactly as the vocabulary writes it. */
export function phrase(entry: Entry, form: string): Phrase | null {
  return entry.phrases.find((found) => found.form === form) ?? null
}

export function phrasesOf(entry: Entry, form: string): readonly Phrase[] {
  return entry.phrases.filter((found) => found.form === form)
}

export function measureOf(entry: Entry, form: string): Measure | null {
  return phrase(entry, form)?.measures[0] ?? null
}

export function nameOf(entry: Entry, form: string): Name | null {
  return phrase(entry, form)?.names[0] ?? null
}

/** A form whose alternatives are fixed words gives the word that was chosen. */
export function choiceOf(entry: Entry, form: string): string | null {
  return phrase(entry, form)?.choices[0] ?? null
}

/** The length that a measure states, or null while it is asked (`?`) or absent. */
export function lengthIn(measure: Measure | null | undefined): Nm | null {
  return measure?.figure.kind === 'length' ? measure.figure.nm : null
}

/** The plain number or percentage that a measure states (a percentage as typed: 10 for 10 %). */
export function numberIn(measure: Measure | null | undefined): Ratio | null {
  const figure = measure?.figure
  return figure?.kind === 'number' || figure?.kind === 'percent' ? figure.value : null
}
