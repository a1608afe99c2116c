import type { Derivation } from '../../facts/derivation.ts'
import { type Source, sourceInWords } from '../../facts/source.ts'
import type { Span } from '../../facts/span.ts'
import { visible } from '../../report/visible.ts'

/** What is explained, and the explanation in order. All texts are plain: nothing in them is notation. */
export interface Hover {
  readonly span: Span
  readonly parts: readonly HoverPart[]
}

export type HoverPart =
  | { readonly kind: 'title' | 'text' | 'formula' | 'source'; readonly text: string }
  | { readonly kind: 'steps'; readonly lines: readonly Step[] }

/** One line of how a number comes about. */
export interface Step {
  /** From 0: what a line follows from stands one deeper below it. */
  readonly depth: number
  readonly text: string
  /** The reading or line that it was taken from. */
  readonly span: Span | null
}

export function title(text: string): HoverPart {
  return { kind: 'title', text: visible(text) }
}

export function text(text: string): HoverPart {
  return { kind: 'text', text: visible(text) }
}

export function formula(text: string): HoverPart {
  return { kind: 'formula', text: visible(text) }
}

export function source(source: Source): HoverPart {
  return { kind: 'source', text: sourceInWords(source) }
}

/** A sentence where there is one to say. */
export function textIf(isSaid: boolean, said: string): readonly HoverPart[] {
  return isSaid ? [text(said)] : []
}

/** More lines than these are only counted: a hover is read at a glance. */
const MOST_STEPS = 40

export function steps(lines: readonly Step[]): readonly HoverPart[] {
  if (lines.length === 0) return []
  const more = lines.length - MOST_STEPS
  const shown = lines.slice(0, more > 1 ? MOST_STEPS : lines.length)
  const rest: readonly Step[] =
    more > 1 ? [{ depth: 0, text: `and ${more} lines more`, span: null }] : []
  return [
    {
      kind: 'steps',
      lines: [...shown, ...rest].map((step) => ({ ...step, text: visible(step.text) })),
    },
  ]
}

/** A line for each of many things, made for so many only as are shown. */
export function stepsFor<T>(things: readonly T[], make: (thing: T) => Step): readonly Step[] {
  const shown = things.slice(0, MOST_STEPS - 2).map(make)
  const more = things.length - shown.length
  return more === 0 ? shown : [...shown, step(`and ${more} more`)]
}

export function step(text: string, span: Span | null = null, depth = 0): Step {
  return { depth, text, span }
}

/** A number with its formula, rule and source, and below it what it follows from, to the readings. */
export function derivationParts(derivation: Derivation): readonly HoverPart[] {
  const { label, value, inputs, rule } = derivation
  return [
    title(`${label}: ${value}`),
    ...(derivation.formula === '' ? [] : [formula(`= ${derivation.formula}`)]),
    ...textIf(rule !== '', sentence(rule)),
    source(derivation.source),
    ...steps(inputs.flatMap((input) => stepsOf(input, 0))),
  ]
}

/** Depth is bounded by the formulas of the takeoff, not by what a user writes. */
function stepsOf(
  { label, value, formula, inputs, rule, ...from }: Derivation,
  depth: number,
): Step[] {
  const head = `${label}: ${value}  [${sourceInWords(from.source)}]`
  return [
    step(head, from.span, depth),
    ...(formula === '' ? [] : [step(`= ${formula}`, null, depth + 1)]),
    ...(rule === '' ? [] : [step(rule, null, depth + 1)]),
    ...inputs.flatMap((input) => stepsOf(input, depth + 1)),
  ]
}

export function sentence(words: string): string {
  return `${words.slice(0, 1).toUpperCase()}${words.slice(1)}.`
}
