import type { Diagnostic } from 'vscode-languageserver-protocol'
import type { TextDocument } from 'vscode-languageserver-textdocument'
import { editBetween } from './text-edited.ts'

/** What an editor was last sent for a file, and the text that it held then. */
export interface SentDiagnostics {
  readonly diagnostics: readonly Diagnostic[]
  readonly text: string | null
}

/** Whether the same is said in the same order: an editor moves what it shows as the text moves. */
export function isSameSaid({ diagnostics }: SentDiagnostics, now: readonly Diagnostic[]): boolean {
  return (
    diagnostics.length === now.length &&
    diagnostics.every(({ code, message, severity }, i) => {
      const other = now[i]!
      return code === other.code && message === other.message && severity === other.severity
    })
  )
}

/**
 * Whether the editor shows just that already: the same at the same places, with no edit in or beside any
 * of them, for there each editor moves its marks in its own way.
 */
export function isShown(
  sent: SentDiagnostics,
  now: readonly Diagnostic[],
  document: TextDocument | undefined,
): boolean {
  if (!isSameSaid(sent, now) || !sent.diagnostics.every((one, i) => isSamePlace(one, now[i]!)))
    return false
  if (document === undefined || sent.text === null)
    return document === undefined && sent.text === null
  const { start, end, longer } = editBetween(sent.text, document.getText())
  const last = end + longer
  return now.every(({ range }) => {
    return document.offsetAt(range.end) < start || document.offsetAt(range.start) > last
  })
}

function isSamePlace({ range: a, relatedInformation: x }: Diagnostic, b: Diagnostic): boolean {
  return (
    a.start.line === b.range.start.line &&
    a.start.character === b.range.start.character &&
    a.end.line === b.range.end.line &&
    a.end.character === b.range.end.character &&
    JSON.stringify(x) === JSON.stringify(b.relatedInformation)
  )
}
