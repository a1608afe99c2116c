import type { Entry } from '../language/tree.ts'

/** The lines of a block with those below them, in written order. */
export function allLines(lines: readonly Entry[]): readonly Entry[] {
  return lines.flatMap((line) => [line, ...allLines(line.under)])
}

/** The texts of the notes among some lines and below them. */
export function notesIn(lines: readonly Entry[]): readonly string[] {
  return allLines(lines).flatMap((line) => (line.word === 'note' ? [line.text] : []))
}
