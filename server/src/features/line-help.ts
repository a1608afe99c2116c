import type { Span } from '../facts/span.ts'
import { exampleOn } from '../language/examples.ts'
import { compileForm, type Form } from '../language/forms.ts'
import { matchForms } from '../language/match.ts'
import { continuations } from './place/continued.ts'
import { lineScope } from './place/line-scope.ts'
import { type TypedPhrase, typedPhrase } from './place/typed-phrase.ts'
import type { View } from './view.ts'
import { formSays } from './words/form-says.ts'

/** One thing that a line may say: how it is written in the units of the file, and what it means. */
export interface LineForm {
  readonly example: string
  readonly says: string
}

/** What the line at a cursor may say. */
export interface LineHelp {
  readonly word: string
  readonly says: string
  readonly forms: readonly LineForm[]
  /** Which of the forms the cursor is in; null where what is typed is none of them, or nothing yet. */
  readonly active: number | null
  /** The line behind its word. */
  readonly span: Span
}

/** The forms of the word of the line at an offset; null before its word is typed, in text and in remarks. */
export function lineHelp(view: View, offset: number): LineHelp | null {
  const { entered, line, rest, tape } = lineScope(view, offset)
  if (entered === null || line.head === null || offset <= line.head.span.end) return null
  const { word, says, takes } = entered.word
  const typed = takes === 'text' ? null : typedPhrase(entered, rest, offset)
  if (typed === null) return null
  const forms = takes === 'phrases' ? entered.forms : [compileForm('NAME')]
  const { style } = tape
  return {
    word,
    says,
    forms: forms.map(({ text }) => ({
      example: takes === 'names' ? 'NAME, NAME' : exampleOn(word, text, style),
      says: takes === 'phrases' ? (formSays(word, text) ?? '') : '',
    })),
    active: activeIn(forms, typed),
    span: { file: view.file, start: rest.start, end: line.span.end },
  }
}

/** The first form that is begun and not on the line yet, unless the phrase stands whole round the cursor. */
function activeIn(
  forms: readonly Form[],
  { items, isTouched, met, form }: TypedPhrase,
): number | null {
  if (items.length === 0) return null
  const isBegun = (one: Form): boolean => continuations(one, items, isTouched).length > 0
  const begun = forms.find((one) => !met.includes(one.text) && isBegun(one))
  const isWhole = form !== null && (begun === undefined || matchForms(items, [form]) === null)
  const active = isWhole ? form : (begun ?? forms.find(isBegun))
  return active === undefined ? null : forms.indexOf(active)
}
