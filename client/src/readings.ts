import { type Position, type TextDocument, WorkspaceEdit } from 'vscode'
import type { BaseLanguageClient } from 'vscode-languageclient'
import { READINGS, type Readings, type ReadingsPasted } from '../../server/src/lsp/custom.ts'
import { ask } from './server/questions.ts'

/** No meter keeps as many readings as fit into this. */
const MOST_CHARACTERS = 20_000

/** What becomes of a pasted list: an edit and a sentence about it, or why there is none. */
export type PastedReadings =
  | { readonly edit: WorkspaceEdit; readonly said: string }
  | { readonly refused: string }

/** What a pasted list changes in the room at a place; null where it is no list of readings at all. */
export async function pastedReadings(
  client: BaseLanguageClient,
  document: TextDocument,
  { line, character }: Position,
  text: string,
): Promise<PastedReadings | null> {
  if (text.length > MOST_CHARACTERS || !/\d/.test(text)) return null
  const question: Readings = { uri: document.uri.toString(), position: { line, character }, text }
  const answer = await ask<NonNullable<ReadingsPasted>>(client, READINGS, question)
  if (answer === null || 'refused' in answer) return answer
  const edit = new WorkspaceEdit()
  edit.set(document.uri, await client.protocol2CodeConverter.asTextEdits([...answer.edits]))
  return { edit, said: answer.said }
}
