import { kindOfFigure } from '../units/figure.ts'
import type { FigureWanted, Form, Part } from './forms.ts'
import type { Item, RawMeasure } from './grammar.ts'

/** A form that a row of items fits, and what stands in its places. */
export interface Match {
  readonly form: Form
  readonly figures: readonly { readonly wanted: FigureWanted; readonly item: MeasureItem }[]
  readonly names: readonly (readonly Item[])[]
  readonly choices: readonly string[]
}

export type MeasureItem = Extract<Item, { kind: 'measure' }>

/** The first form that takes all of the items, or null. */
export function matchForms(items: readonly Item[], forms: readonly Form[]): Match | null {
  for (const form of forms) {
    const match = matchForm(items, form)
    if (match !== null) return match
  }
  return null
}

function matchForm(items: readonly Item[], form: Form): Match | null {
  const figures: { wanted: FigureWanted; item: MeasureItem }[] = []
  const names: (readonly Item[])[] = []
  const choices: string[] = []
  let at = 0
  for (const part of form.parts) {
    const taken = takePart(items, at, part)
    if (taken === 0) return null
    const item = items[at]!
    if (part.kind === 'figure') figures.push({ wanted: part.wanted, item: item as MeasureItem })
    if (part.kind === 'name') names.push(items.slice(at, at + taken))
    if (part.kind === 'choice') choices.push(optionAt(items, at, part.options)!.join(' '))
    at += isAboutBefore(part, items[at]) ? 0 : taken
  }
  return at === items.length ? { form, figures, names, choices } : null
}

/** How many items a part takes from `at` on; 0 when it does not fit there. */
function takePart(items: readonly Item[], at: number, part: Part): number {
  const item = items[at]
  if (item === undefined) return 0
  switch (part.kind) {
    case 'words':
      return isWords(items, at, part.words) || isAboutBefore(part, item) ? part.words.length : 0
    case 'choice':
      return optionAt(items, at, part.options)?.length ?? 0
    case 'figure':
      return item.kind === 'measure' && suits(item.measure, part.wanted) ? 1 : 0
    case 'name':
      return lengthOfName(items, at)
  }
}

/** `about` is part of the measure, not a word before it: the form `about LENGTH` asks for it. */
function isAboutBefore(part: Part, item: Item | undefined): boolean {
  const asks = part.kind === 'words' && part.words[0] === 'about'
  return asks && item?.kind === 'measure' && item.measure.about !== null
}

function isWords(items: readonly Item[], at: number, words: readonly string[]): boolean {
  return words.every((word, index) => wordAt(items[at + index]) === word)
}

function optionAt(
  items: readonly Item[],
  at: number,
  options: readonly (readonly string[])[],
): readonly string[] | null {
  let longest: readonly string[] | null = null
  for (const option of options) {
    if (option.length > (longest?.length ?? 0) && isWords(items, at, option)) longest = option
  }
  return longest
}

function wordAt(item: Item | undefined): string | null {
  return item?.kind === 'word' ? item.text.toLowerCase() : null
}

/** By its marks alone: whether the figure can be read is settled later, with a message of its own. */
export function suits(measure: RawMeasure, wanted: FigureWanted): boolean {
  if ((measure.by !== null) !== (wanted === 'SIZE')) return false
  if (measure.first.tokenType.name === 'asked') return true
  const kind = kindOfFigure(measure.first.image)
  switch (wanted) {
    case 'LENGTH':
    case 'SIZE':
      return kind === 'length' || kind === 'bare'
    case 'NUMBER':
    case 'COUNT':
      return kind === 'bare'
    case 'PERCENT':
      return kind === 'percent'
    case 'ANGLE':
      return kind === 'angle'
    case 'DATE':
      return kind === 'date'
  }
}

/** Words that part a phrase and so stand in a name only between quotes. */
export const PARTING: readonly string[] = ['to', 'of', 'about', 'and', 'within', '+']

/** A name: a word or a quoted one, then words and plain numbers, up to a parting word. */
export function lengthOfName(items: readonly Item[], at: number): number {
  let end = at
  while (end < items.length && isInName(items[end]!, end === at)) end += 1
  return end - at
}

function isInName(item: Item, first: boolean): boolean {
  if (item.kind !== 'measure') {
    return item.kind === 'quoted'
      ? item.text.trim() !== ''
      : !PARTING.includes(item.text.toLowerCase())
  }
  const { first: figure, about, by, within, doubt } = item.measure
  const plain = about === null && by === null && within === null && doubt === null
  return (
    !first && plain && figure.tokenType.name === 'figure' && kindOfFigure(figure.image) === 'bare'
  )
}
