import type { Range } from 'vscode-languageserver-protocol'

/** Keys typed into one reading of a text, and what an editor would show around it. */
export interface Keys {
  /** The change that key `i` makes: no two of fifteen in a row leave the same text. */
  change(i: number): { readonly range: Range; readonly text: string }
  readonly visible: Range
}

/** Rows of an editor's window. */
const ROWS = 60

/** The first reading of a wall to the east from the middle of the text on: its inches are typed over. */
export function keysIn(text: string): Keys {
  const lines = text.split('\n')
  const middle = Math.floor(lines.length / 2)
  const line = lines.findIndex((one, i) => i >= middle && /^ {2}east +\d+' \d/.test(one))
  const start = lines[line]!.indexOf("'") + 2
  let end = lines[line]!.indexOf('"')
  return {
    change(i) {
      const typed = `0 ${2 * (i % 15) + 1}/32`
      const range = { start: { line, character: start }, end: { line, character: end } }
      end = start + typed.length
      return { range, text: typed }
    },
    visible: {
      start: { line: Math.max(0, line - ROWS / 2), character: 0 },
      end: { line: line + ROWS / 2, character: 0 },
    },
  }
}
