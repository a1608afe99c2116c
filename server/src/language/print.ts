import type { Tree } from './tree.ts'

/** The text of a tree, byte for byte as it was read. */
export function print(tree: Tree): string {
  return tree.lines.map(printLine).join('')
}

function printLine(line: Tree['lines'][number]): string {
  return line.tokens.map((token) => token.text).join('') + line.ending
}
