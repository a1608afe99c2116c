import {
  DocumentFormattingRequest,
  type DocumentRangeFormattingParams,
  DocumentRangeFormattingRequest,
  type TextEdit,
} from 'vscode-languageserver-protocol'
import type { Edit } from '../features/view.ts'
import { formatEdits } from '../language/format.ts'
import { answering, type Seen } from './answering.ts'
import type { Feature } from './feature.ts'
import type { Places } from './ranges.ts'

/** One edit for each line that is not in the canonical form: all others keep their marks and folds. */
export const formatting: Feature = {
  offers: { documentFormattingProvider: true, documentRangeFormattingProvider: true },
  listen(session) {
    session.connection.onRequest(
      DocumentFormattingRequest.type,
      answering(session, 'measured', [], formatted),
    )
    session.connection.onRequest(
      DocumentRangeFormattingRequest.type,
      answering(session, 'measured', [], formattedWithin),
    )
  },
}

function formatted({ view, places }: Seen): TextEdit[] {
  return formatEdits(view.tree).map((edit) => textEdit(edit, places))
}

function formattedWithin(
  { view, places }: Seen,
  { range }: DocumentRangeFormattingParams,
): TextEdit[] {
  const [start, end] = [places.offset(range.start), places.offset(range.end)]
  return formatEdits(view.tree)
    .filter(({ span }) => span.start <= end && start <= span.end)
    .map((edit) => textEdit(edit, places))
}

export function textEdit({ span, text }: Edit, places: Places): TextEdit {
  return { range: places.range(span), newText: text }
}
