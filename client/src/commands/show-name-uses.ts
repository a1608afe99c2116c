import { commands, type QuickPickItem, Range, Selection, Uri, window, workspace } from 'vscode'
import {
  type PlacesToRename,
  RENAME_PLACES,
  type RenamePlaces,
} from '../../../server/src/lsp/custom.ts'
import { floorEditor } from '../editors.ts'
import { ask } from '../server/questions.ts'
import type { Command, Tools } from './command.ts'

type Use = PlacesToRename['places'][number]

interface UseItem extends QuickPickItem {
  readonly use: Use | null
}

/** Lists every line that a rename at the cursor would change, in all jobs, before anything changes. */
export const SHOW_NAME_USES: Command = {
  id: 'floorscribe.showNameUses',
  run: async (tools) => {
    const uses = await usesAtCursor(tools)
    if (uses === null) return
    if (uses.length === 0) {
      window.showInformationMessage('There is no name at the cursor that could be changed.')
      return
    }
    const chosen = await window.showQuickPick([renaming(uses.length), ...uses.map(item)], {
      title: 'Where this name stands',
      matchOnDescription: true,
    })
    if (chosen === undefined) return
    if (chosen.use === null) await commands.executeCommand('editor.action.rename')
    else await goTo(chosen.use)
  },
}

async function usesAtCursor({ lifeline }: Tools): Promise<readonly Use[] | null> {
  const editor = floorEditor()
  if (editor === undefined) return null
  const { line, character } = editor.selection.active
  const question: RenamePlaces = {
    uri: editor.document.uri.toString(),
    position: { line, character },
  }
  const answer = await ask<PlacesToRename>(lifeline.client, RENAME_PLACES, question)
  return answer?.places ?? []
}

function renaming(count: number): UseItem {
  const places = count === 1 ? 'this one place' : `these ${count} places`
  return { label: `$(edit) Change the name in ${places}`, use: null, alwaysShow: true }
}

function item(use: Use): UseItem {
  const place = workspace.asRelativePath(Uri.parse(use.location.uri))
  const label = use.line.trim().replaceAll('$(', '\\$(')
  return { label, description: `${place}, line ${use.location.range.start.line + 1}`, use }
}

async function goTo({ location: { uri, range } }: Use): Promise<void> {
  const { start, end } = range
  const place = new Range(start.line, start.character, end.line, end.character)
  const editor = await window.showTextDocument(Uri.parse(uri))
  editor.selection = new Selection(place.start, place.end)
  editor.revealRange(place)
}
