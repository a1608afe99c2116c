import { commands, Range, Uri, window, workspace } from 'vscode'
import type { Command } from './command.ts'

/** Opens the reference page, at the message of a code where one is given. */
export const OPEN_REFERENCE: Command = {
  id: 'floorscribe.openReference',
  run: async ({ context }, code) => {
    const page = Uri.joinPath(context.extensionUri, 'server/LANGUAGE.md')
    const heading = typeof code === 'string' && /^[a-z-]{1,80}$/.test(code) ? code : ''
    try {
      await commands.executeCommand('markdown.showPreview', page.with({ fragment: heading }))
    } catch {
      await showText(page, heading)
    }
  },
}

/** Where the editor's own preview is switched off. */
async function showText(page: Uri, heading: string): Promise<void> {
  const document = await workspace.openTextDocument(page)
  const lines = document.getText().split('\n')
  const line = Math.max(0, lines.indexOf(`### ${heading}`))
  await window.showTextDocument(document, { selection: new Range(line, 0, line, 0) })
}
