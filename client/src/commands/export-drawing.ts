import { commands, Uri, window, workspace } from 'vscode'
import { DRAWING, type Drawing, type DrawingOf } from '../../../server/src/lsp/custom.ts'
import { floorEditor } from '../editors.ts'
import { calledName, fileName } from '../places.ts'
import { saveWhole } from '../save-whole.ts'
import { ask } from '../server/questions.ts'
import type { Command } from './command.ts'

const OPEN = 'Open'

/** Saves the plan as a drawing for paper. Nothing is written while there is nothing to draw. */
export const EXPORT_DRAWING: Command = {
  id: 'floorscribe.exportDrawing',
  run: async ({ lifeline, plan }) => {
    const uri = plan.inFront ?? floorEditor()?.document.uri
    if (uri === undefined) return
    const question: DrawingOf = { uri: uri.toString() }
    const drawing = await ask<Drawing>(lifeline.client, DRAWING, question)
    const svg = drawing?.svg ?? null
    if (svg === null) {
      window.showInformationMessage(
        'There is nothing to draw yet: no room of this job has a shape.',
      )
      return
    }
    const place = await window.showSaveDialog({
      title: 'Save the drawing',
      filters: { Drawing: ['svg'] },
      ...defaultPlace(uri),
    })
    if (place === undefined) return
    if (await saveWhole(place, new TextEncoder().encode(svg))) tellSaved(place)
  },
}

/** The command is done meanwhile: a message may stand for as long as nobody answers it. */
async function tellSaved(place: Uri): Promise<void> {
  const said = `The drawing is saved as ${calledName(place)}.`
  const chosen = await window.showInformationMessage(said, OPEN)
  if (chosen === OPEN) await commands.executeCommand('vscode.open', place)
}

/** Beside the job, or in the first folder where the job lies nowhere yet. */
function defaultPlace(uri: Uri): { readonly defaultUri?: Uri } {
  const name = fileName(calledName(uri), 'svg')
  if (uri.scheme !== 'untitled') return { defaultUri: Uri.joinPath(uri, '..', name) }
  const [folder] = workspace.workspaceFolders ?? []
  return folder === undefined ? {} : { defaultUri: Uri.joinPath(folder.uri, name) }
}
