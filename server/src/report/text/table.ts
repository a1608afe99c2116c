import { visible } from '../visible.ts'

/** Which side a column's cells stand on. */
export type Side = 'left' | 'right'

/**
 * Rows of cells as lines with aligned columns, two blanks between them. Widths count characters as
 * people see them (code points), and cells show what no eye can see.
 */
export function table(
  rows: readonly (readonly string[])[],
  sides: readonly Side[],
  indent = '  ',
): readonly string[] {
  const cells = rows.map((row) => row.map(visible))
  const widths = sides.map((_, column) =>
    cells.reduce((most, row) => Math.max(most, lengthOf(row[column] ?? '')), 0),
  )
  return cells.map((row) =>
    trimEnd(
      indent + row.map((cell, column) => pad(cell, widths[column]!, sides[column]!)).join('  '),
    ),
  )
}

function pad(cell: string, width: number, side: Side): string {
  const blanks = ' '.repeat(width - lengthOf(cell))
  return side === 'left' ? cell + blanks : blanks + cell
}

function lengthOf(text: string): number {
  return [...text].length
}

function trimEnd(line: string): string {
  let end = line.length
  while (end > 0 && line[end - 1] === ' ') end--
  return line.slice(0, end)
}
