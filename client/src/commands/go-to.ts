import { Position, Range, Selection, Uri, window } from 'vscode'
import { GO_TO } from '../../../server/src/lsp/custom.ts'
import type { Command } from './command.ts'

/** A place as the server writes it. */
interface Place {
  readonly uri: string
  readonly range: Readonly<
    Record<'start' | 'end', { readonly line: number; readonly character: number }>
  >
}

/** Goes to the place that a line of small print speaks of; it is in no list of commands. */
export const GO_TO_PLACE: Command = {
  id: GO_TO,
  run: async (_, place) => {
    if (!isPlace(place)) return
    const { start, end } = place.range
    const range = new Range(
      new Position(start.line, start.character),
      new Position(end.line, end.character),
    )
    const editor = await window.showTextDocument(Uri.parse(place.uri))
    editor.selection = new Selection(range.start, range.end)
    editor.revealRange(range)
  },
}

function isPlace(place: unknown): place is Place {
  const { uri, range } = (place ?? {}) as Partial<Place>
  return typeof uri === 'string' && isPoint(range?.start) && isPoint(range?.end)
}

function isPoint(point: unknown): boolean {
  const { line, character } = (point ?? {}) as Record<string, unknown>
  return isCount(line) && isCount(character)
}

function isCount(value: unknown): boolean {
  return Number.isInteger(value) && (value as number) >= 0
}
