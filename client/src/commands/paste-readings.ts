import { env, type TextEditor, window, workspace } from 'vscode'
import type { BaseLanguageClient } from 'vscode-languageclient'
import { floorEditor } from '../editors.ts'
import { pastedReadings } from '../readings.ts'
import type { Command } from './command.ts'

const NO_LIST =
  'No readings were put in: copy a plain list of lengths, and stand in a room that has "?" in it.'
const LOCKED = 'No readings were put in: the text cannot be changed.'

/** Fills a meter's list, off the clipboard, into the readings that are still to be taken. */
export const PASTE_READINGS: Command = {
  id: 'floorscribe.pasteReadings',
  run: async ({ lifeline }) => {
    const editor = floorEditor()
    const said = editor === undefined ? NO_LIST : await filled(lifeline.client, editor)
    window.showInformationMessage(said)
  },
}

/** Fills in what is on the clipboard; what came of it, as it is told. */
async function filled(client: BaseLanguageClient, editor: TextEditor): Promise<string> {
  const text = await env.clipboard.readText()
  const pasted = await pastedReadings(client, editor.document, editor.selection.active, text)
  if (pasted === null) return NO_LIST
  if ('refused' in pasted) return pasted.refused
  return (await workspace.applyEdit(pasted.edit)) ? pasted.said : LOCKED
}
