import {
  DocumentFormattingRequest,
  type DocumentOnTypeFormattingParams,
  DocumentOnTypeFormattingRequest,
  type DocumentRangeFormattingParams,
  DocumentRangeFormattingRequest,
  type TextEdit,
} from 'vscode-languageserver-protocol'
import { formatFile, formatRange, formatTyped } from '../features/format-lines.ts'
import type { Edit } from '../features/view.ts'
import { answering, type Seen } from './answering.ts'
import type { Feature } from './feature.ts'
import type { Places } from './places.ts'

/** Only lines that are not in the canonical form are touched, and never the one that is being typed. */
export const formatting: Feature = {
  listen(session) {
    session.connection.onRequest(
      DocumentFormattingRequest.type,
      answering(session, 'measured', [], formatted),
    )
    session.connection.onRequest(
      DocumentRangeFormattingRequest.type,
      answering(session, 'measured', [], formattedWithin),
    )
    session.connection.onRequest(
      DocumentOnTypeFormattingRequest.type,
      answering(session, 'measured', [], formattedTyped),
    )
  },
}

function formatted({ view, places }: Seen): TextEdit[] {
  return formatFile(view.tree).map((edit) => textEdit(edit, places))
}

function formattedWithin(
  { view, places }: Seen,
  { range }: DocumentRangeFormattingParams,
): TextEdit[] {
  const edits = formatRange(view.tree, places.offset(range.start), places.offset(range.end))
  return edits.map((edit) => textEdit(edit, places))
}

function formattedTyped(
  { view, places }: Seen,
  { position }: DocumentOnTypeFormattingParams,
): TextEdit[] {
  return formatTyped(view.tree, places.offset(position)).map((edit) => textEdit(edit, places))
}

export function textEdit({ span, text }: Edit, places: Places): TextEdit {
  return { range: places.range(span), newText: text }
}
