/** The column (from 0) in which the formatter starts what follows the word of an indented line. */
const VALUE_COLUMN = 14

/** The word of an indented line with the blanks around it, as the formatter writes them. */
export function lineStart(indent: number, word: string): string {
  const head = `${' '.repeat(indent)}${word}`
  return `${head}${' '.repeat(Math.max(1, VALUE_COLUMN - head.length))}`
}
