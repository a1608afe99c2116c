import {
  type Diagnostic,
  type DiagnosticRelatedInformation,
  DiagnosticSeverity,
} from 'vscode-languageserver-protocol'
import type { Message, Weight } from '../facts/message.ts'
import type { Abilities } from './abilities.ts'
import type { OpenJob } from './open-job.ts'
import { locationOf, type Places } from './ranges.ts'

/** More than this is no list that anybody reads; editors grow slow on it. */
export const MOST = 1000

/** What is still to come is never red nor yellow; what was taken for granted is only hinted at. */
const SEVERITY: Readonly<Record<Weight, DiagnosticSeverity>> = {
  error: DiagnosticSeverity.Error,
  warning: DiagnosticSeverity.Warning,
  incomplete: DiagnosticSeverity.Information,
  note: DiagnosticSeverity.Hint,
}

/** A message as the editor lists it. Its text is plain: no editor reads it as anything else. */
export function diagnosticOf(
  message: Message,
  job: OpenJob,
  places: Places,
  abilities: Abilities,
): Diagnostic {
  const { code, weight, text, span } = message
  const { reference, relates } = abilities
  return {
    range: places.range(span),
    severity: SEVERITY[weight],
    source: 'floorscribe',
    code,
    message: text,
    ...(reference === null ? {} : { codeDescription: { href: `${reference}#${code}` } }),
    ...(relates ? { relatedInformation: related(message, job) } : {}),
  }
}

function related({ related }: Message, job: OpenJob): DiagnosticRelatedInformation[] {
  return related.flatMap(({ span, text }) => {
    const location = locationOf(job, span)
    return location === null ? [] : [{ location, message: text }]
  })
}
