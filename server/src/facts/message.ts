import type { Span } from './span.ts'

/**
 * How much a message weighs.
 * - `error`: what stands there cannot be used as it is; totals that need it are absent.
 * - `warning`: usable, but a practitioner would want it looked at; an `accept` line settles it.
 * - `incomplete`: nothing is wrong, something is still to come (a `?`, a hold); never shown in red.
 * - `note`: said once so that nobody has to guess (a default that was taken).
 */
export type Weight = 'error' | 'warning' | 'incomplete' | 'note'

/** Another place that bears on the message: the other reading, the first use of a name. */
export interface Related {
  readonly span: Span
  readonly text: string
}

/** One sure repair: replace each span by its text. */
export interface Fix {
  readonly title: string
  readonly edits: readonly { readonly span: Span; readonly text: string }[]
}

/**
 * What is wrong, where, and what would be accepted. `code` is stable for ever, kebab-case, made of
 * plain words (`opening-too-wide`): the reference page has a heading for each, and an `accept` line
 * names it with blanks instead of hyphens.
 */
export interface Message {
  readonly code: string
  readonly weight: Weight
  /** Whole sentences: what is wrong, then what would be accepted. One paragraph, no line ends. */
  readonly text: string
  readonly span: Span
  readonly related: readonly Related[]
  readonly fixes: readonly Fix[]
  /** True when an `accept` line of the job settles this warning. */
  readonly accepted: boolean
}

/** Builds a message; the optional parts default to none. */
export function message(
  weight: Weight,
  code: string,
  span: Span,
  text: string,
  more: { readonly related?: readonly Related[]; readonly fixes?: readonly Fix[] } = {},
): Message {
  return {
    code,
    weight,
    text,
    span,
    related: more.related ?? [],
    fixes: more.fixes ?? [],
    accepted: false,
  }
}
