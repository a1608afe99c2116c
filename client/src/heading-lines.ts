/** The lines (from 1) of a page's third-level headings, which on the reference page are the codes. */
export function headingLines(page: string): ReadonlyMap<string, number> {
  const lines = new Map<string, number>()
  page.split('\n').forEach((line, index) => {
    if (line.startsWith('### ')) lines.set(line.slice('### '.length).trim(), index + 1)
  })
  return lines
}
