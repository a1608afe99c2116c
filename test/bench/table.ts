/** Rows as a table for the terminal: the first column to the left, the others to the right. */
export function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const all = [head, ...rows]
  const widths = head.map((_, i) => Math.max(...all.map((row) => row[i]?.length ?? 0)))
  const line = (row: readonly string[]) =>
    row
      .map((cell, i) => (i === 0 ? cell.padEnd(widths[i]!) : cell.padStart(widths[i]!)))
      .join('  ')
      .trimEnd()
  const rule = widths.map((width) => '-'.repeat(width)).join('  ')
  return [line(head), rule, ...rows.map(line), ''].join('\n')
}

/** Milliseconds as people compare them. */
export function ms(time: number): string {
  return `${time < 10 ? time.toFixed(2) : time.toFixed(0)} ms`
}
