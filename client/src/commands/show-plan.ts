import { floorEditor } from '../editors.ts'
import type { Command } from './command.ts'

/** Opens the drawing beside the text, which keeps the focus. */
export const SHOW_PLAN: Command = {
  id: 'floorscribe.showPlan',
  run: async ({ plan }) => {
    const editor = floorEditor()
    if (editor !== undefined) plan.show(editor.document.uri)
  },
}
