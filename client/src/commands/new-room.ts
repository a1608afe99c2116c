import { window } from 'vscode'
import {
  FEWEST_WALLS,
  MOST_WALLS,
  roomSkeleton,
} from '../../../server/src/features/room-skeleton.ts'
import { text } from '../../../server/src/features/writing/insert.ts'
import { floorEditor } from '../editors.ts'
import { snippet, withoutLineEnd } from '../insert.ts'
import { roomPlace } from '../room-place.ts'
import type { Command } from './command.ts'

/** Puts a room below the block that the cursor is in; the tab key walks through its readings. */
export const NEW_ROOM: Command = {
  id: 'floorscribe.newRoom',
  run: async () => {
    const editor = floorEditor()
    if (editor === undefined) return
    const walls = await askWalls()
    const room = walls === undefined ? null : roomSkeleton(walls)
    if (room === null) return
    const { document } = editor
    const { line, before, after } = roomPlace(
      document.getText().split(/\r\n|\r|\n/),
      editor.selection.active.line,
    )
    const shown = await window.showTextDocument(document, { viewColumn: editor.viewColumn ?? 1 })
    const insert = [text(before), ...withoutLineEnd(room), text(after)]
    await shown.insertSnippet(snippet(insert), document.lineAt(line).range.end, KEPT)
  },
}

/** The blanks of the line that it is put behind are none of its own. */
const KEPT = { undoStopBefore: true, undoStopAfter: true, keepWhitespace: true }

async function askWalls(): Promise<number | undefined> {
  const typed = await window.showInputBox({
    title: 'A new room',
    prompt: 'How many walls has it? Go round to the right and count.',
    value: '4',
    validateInput: (value) => (wallsIn(value) === null ? SAYS : null),
  })
  return typed === undefined ? undefined : (wallsIn(typed) ?? undefined)
}

const SAYS = `A number from ${FEWEST_WALLS} to ${MOST_WALLS}.`

function wallsIn(typed: string): number | null {
  const walls = /^\s*\d{1,3}\s*$/.test(typed) ? Number(typed) : 0
  return walls >= FEWEST_WALLS && walls <= MOST_WALLS ? walls : null
}
