import { lastBefore } from '../../facts/last-before.ts'
import type { Line, Tree } from '../../language/tree.ts'

/** The line that an offset stands in, its line end included. Halves the lines: a file may have a million. */
export function lineAt(tree: Tree, offset: number): Line {
  return tree.lines[lastBefore(tree.lines, offset, ({ span }) => span.start)] ?? tree.lines[0]!
}

export { lastBefore }
