import { type TextDocument, type TextEditor, type Uri, window, workspace } from 'vscode'

/** The editor of a floor text that has the focus, or else one that can be seen. */
export function floorEditor(): TextEditor | undefined {
  const active = window.activeTextEditor
  if (active?.document.languageId === 'floor') return active
  return window.visibleTextEditors.find(({ document }) => document.languageId === 'floor')
}

/** Whether a text is a job, and no part that jobs include. */
export function isJob(document: TextDocument): boolean {
  return document.languageId === 'floor' && /^job[^\S\n]/im.test(document.getText())
}

export function isSame(one: Uri, other: Uri | undefined): boolean {
  return one.toString() === other?.toString()
}

/** Opens a file without showing it, if it is there. */
export async function canOpen(file: Uri): Promise<boolean> {
  try {
    await workspace.openTextDocument(file)
    return true
  } catch {
    return false
  }
}
