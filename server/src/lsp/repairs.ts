import {
  type CodeAction,
  CodeActionKind,
  type CodeActionParams,
  CodeActionRequest,
  type Diagnostic,
} from 'vscode-languageserver-protocol'
import { type Repair, repairs as repairsFor } from '../features/repairs.ts'
import { answering, type Seen } from './answering.ts'
import type { Feature } from './feature.ts'
import { locationOf } from './locations.ts'
import { workspaceEdit } from './workspace-edit.ts'

/** What may be done about the messages at a place. */
export const repairs: Feature = {
  listen(session) {
    session.connection.onRequest(
      CodeActionRequest.type,
      answering(session, 'measured', [], actionsFor),
    )
  },
}

function actionsFor(seen: Seen, { range, context }: CodeActionParams): CodeAction[] {
  const isAsked = context.only?.every((kind) => !isWithin(CodeActionKind.QuickFix, kind)) !== true
  if (!isAsked) return []
  const stretch = { start: seen.places.offset(range.start), end: seen.places.offset(range.end) }
  const found = repairsFor(seen.view, stretch)
  const sure = found.filter(({ kind }) => kind === 'sure')
  return found.map((repair) => ({
    title: repair.title,
    kind: CodeActionKind.QuickFix,
    // The one that may be taken without looking: where there are two, neither is.
    ...(sure.length === 1 && sure[0] === repair ? { isPreferred: true } : {}),
    diagnostics: context.diagnostics.filter((one) => isOf(one, repair, seen)),
    edit: workspaceEdit(editsOf(repair, seen), seen.session),
  }))
}

function isWithin(kind: string, asked: string): boolean {
  return kind === asked || asked === '' || kind.startsWith(`${asked}.`)
}

function isOf({ code, range }: Diagnostic, { message }: Repair, { places }: Seen): boolean {
  const { start } = places.range(message.span)
  return (
    code === message.code &&
    range.start.line === start.line &&
    range.start.character === start.character
  )
}

function editsOf({ edits }: Repair, { job }: Seen) {
  return edits.flatMap(({ span, text }) => {
    const location = locationOf(job, span)
    return location === null ? [] : [{ ...location, newText: text }]
  })
}
