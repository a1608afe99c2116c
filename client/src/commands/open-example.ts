import { Uri, window, workspace } from 'vscode'
import { ownText } from '../own-files.ts'
import type { Command } from './command.ts'

/** Opens a copy of the job that comes along, with its plan beside it: nothing can be spoiled in it. */
export const OPEN_EXAMPLE: Command = {
  id: 'floorscribe.openExample',
  run: async ({ context, ownRoom, plan }) => {
    const file = Uri.joinPath(context.extensionUri, 'client/walkthrough/example.floor')
    const content = await ownText(file)
    const document = await workspace.openTextDocument({ language: 'floor', content })
    ownRoom.except(document.uri)
    await window.showTextDocument(document)
    plan.show(document.uri)
  },
}
