import {
  type Diagnostic,
  type DiagnosticRelatedInformation,
  DiagnosticSeverity,
  type Location,
} from 'vscode-languageserver-protocol'
import type { Message, Weight } from '../facts/message.ts'
import type { Span } from '../facts/span.ts'
import type { Abilities } from './abilities.ts'
import type { Places } from './places.ts'

/** More than this is no list that anybody reads; editors grow slow on it. */
export const MOST = 1000

const BY_WEIGHT: readonly Weight[] = ['error', 'warning', 'incomplete', 'note']

/** As many as are listed: where there are too many, those that weigh most, each in its place. */
export function heaviest(messages: readonly Message[]): readonly Message[] {
  if (messages.length <= MOST) return messages
  const kept = new Set(
    BY_WEIGHT.flatMap((weight) => messages.filter((one) => one.weight === weight)).slice(0, MOST),
  )
  return messages.filter((one) => kept.has(one))
}

/** What is still to come is never red nor yellow; what was taken for granted is only hinted at. */
const SEVERITY: Readonly<Record<Weight, DiagnosticSeverity>> = {
  error: DiagnosticSeverity.Error,
  warning: DiagnosticSeverity.Warning,
  incomplete: DiagnosticSeverity.Information,
  note: DiagnosticSeverity.Hint,
}

/** Finds a span of any file of the job; null for one of none of its files. */
type Locate = (span: Span) => Location | null

/** A message as the editor lists it. Its text is plain: no editor reads it as anything else. */
export function diagnosticOf(
  message: Message,
  places: Places,
  locate: Locate,
  { reference, relates }: Abilities,
): Diagnostic {
  const { code, weight, text, span } = message
  return {
    range: places.range(span),
    severity: SEVERITY[weight],
    source: 'floorscribe',
    code,
    message: text,
    ...(reference === null ? {} : { codeDescription: { href: `${reference}#${code}` } }),
    ...(relates ? { relatedInformation: related(message, locate) } : {}),
  }
}

function related({ related }: Message, locate: Locate): DiagnosticRelatedInformation[] {
  return related.flatMap(({ span, text }) => {
    const location = locate(span)
    return location === null ? [] : [{ location, message: text }]
  })
}
