import type { Tree } from '../../language/tree.ts'

/** How a file ends its lines, by its first. */
export function endingOf({ lines }: Tree): string {
  const ending = lines[0]?.ending ?? ''
  return ending === '' ? '\n' : ending
}
