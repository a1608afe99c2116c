import { env, window, workspace } from 'vscode'
import { floorEditor } from '../editors.ts'
import { pastedReadings } from '../readings.ts'
import type { Command } from './command.ts'

const NO_LIST =
  'No readings were put in: copy a plain list of lengths, and stand in a room that has "?" in it.'

/** Fills a meter's list, off the clipboard, into the readings that are still to be taken. */
export const PASTE_READINGS: Command = {
  id: 'floorscribe.pasteReadings',
  run: async ({ lifeline }) => {
    const editor = floorEditor()
    if (editor === undefined) return
    const { document, selection } = editor
    const text = await env.clipboard.readText()
    const pasted = await pastedReadings(lifeline.client, document, selection.active, text)
    if (pasted !== null && 'edit' in pasted) await workspace.applyEdit(pasted.edit)
    const said = pasted === null ? NO_LIST : 'edit' in pasted ? pasted.said : pasted.refused
    window.showInformationMessage(said)
  },
}
