import { commands, Range, window } from 'vscode'
import type { ReferencePage } from '../reference-page.ts'
import type { Command } from './command.ts'

/** Opens the reference page as a page, at the message of a code where one is given. */
export const OPEN_REFERENCE: Command = {
  id: 'floorscribe.openReference',
  run: async ({ page }, code) => {
    const heading = typeof code === 'string' ? code : ''
    try {
      await commands.executeCommand('markdown.showPreview', page.uri.with({ fragment: heading }))
    } catch {
      await showText(page, heading)
    }
  },
}

/** Where the editor's own preview of pages is switched off. */
async function showText(page: ReferencePage, heading: string): Promise<void> {
  const line = ((await page.lines()).get(heading) ?? 1) - 1
  await window.showTextDocument(page.uri, { selection: new Range(line, 0, line, 0) })
}
