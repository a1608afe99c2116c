import { type TextEditor, window } from 'vscode'

/** The editor of a floor text that has the focus, or else one that can be seen. */
export function floorEditor(): TextEditor | undefined {
  const active = window.activeTextEditor
  if (active?.document.languageId === 'floor') return active
  return window.visibleTextEditors.find(({ document }) => document.languageId === 'floor')
}
