import type { Range, TextEdit, WorkspaceEdit } from 'vscode-languageserver-protocol'
import { canonical } from './addresses.ts'
import type { Session } from './session.ts'

export interface FileEdit {
  /** As the editor writes it, or canonical. */
  readonly uri: string
  readonly range: Range
  readonly newText: string
}

/** Edits in any files as one: with the versions that they were made for, where the client takes those. */
export function workspaceEdit(
  edits: readonly FileEdit[],
  { abilities, documents }: Session,
): WorkspaceEdit {
  const byFile = Map.groupBy(edits, ({ uri }) => documents.get(canonical(uri))?.uri ?? uri)
  const textEdits = (of: readonly FileEdit[]): TextEdit[] =>
    of.map(({ range, newText }) => ({ range, newText }))
  if (!abilities.versionsEdits)
    return { changes: Object.fromEntries([...byFile].map(([uri, of]) => [uri, textEdits(of)])) }
  return {
    documentChanges: [...byFile].map(([uri, of]) => ({
      textDocument: { uri, version: documents.get(canonical(uri))?.version ?? null },
      edits: textEdits(of),
    })),
  }
}
