/** Where a new room goes, and what is put around it. */
export interface RoomPlace {
  /** It is put in at the end of this line. */
  readonly line: number
  readonly before: string
  readonly after: string
}

/**
 * Below the block that the cursor's line is in, a blank line apart from it and from what follows; at
 * the start of an empty text. The room comes without a line end of its own. Lines count from 0; there
 * is always one.
 */
export function roomPlace(lines: readonly string[], cursor: number): RoomPlace {
  const next = lines.findIndex((line, number) => number > cursor && opensBlock(line))
  const end = next < 0 ? lines.length : next
  const line = lines.slice(0, end).findLastIndex((line) => line.trim() !== '')
  const after = line === end - 1 ? '\n' : ''
  return line < 0 ? { line: end - 1, before: '', after: '\n' } : { line, before: '\n\n', after }
}

/** A line in column one, remarks left out. */
function opensBlock(line: string): boolean {
  return /^[^\s#]/.test(line)
}
