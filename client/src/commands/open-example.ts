import { commands, Uri, window, workspace } from 'vscode'
import type { Command } from './command.ts'

/** Opens the job that comes along, to look at, with its plan beside it. */
export const OPEN_EXAMPLE: Command = {
  id: 'floorscribe.openExample',
  run: async ({ context }) => {
    const uri = Uri.joinPath(context.extensionUri, 'examples/upper-floor.floor')
    await window.showTextDocument(await workspace.openTextDocument(uri))
    await commands.executeCommand('floorscribe.showPlan')
  },
}
