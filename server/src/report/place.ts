import type { Tree } from '../language/tree.ts'

/** Line and column of an offset, from 1, columns in UTF-16 units as editors count them. */
export function placeIn(
  tree: Tree,
  offset: number,
): { readonly line: number; readonly column: number } {
  let low = 0
  let high = tree.lines.length - 1
  while (low < high) {
    const middle = (low + high + 1) >>> 1
    if (tree.lines[middle]!.span.start <= offset) low = middle
    else high = middle - 1
  }
  const line = tree.lines[low]
  return line === undefined
    ? { line: 1, column: 1 }
    : { line: line.number, column: offset - line.span.start + 1 }
}
