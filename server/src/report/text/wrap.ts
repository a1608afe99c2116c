/** Words in lines of at most `width` characters: the first begins with `first`, the rest with `hang`. */
export function wrap(
  text: string,
  width: number,
  { first = '', hang = '' }: { readonly first?: string; readonly hang?: string } = {},
): readonly string[] {
  const lines: string[] = []
  let line = first
  let empty = true
  for (const word of text.split(' ')) {
    if (!empty && line.length + 1 + word.length > width) {
      lines.push(line)
      line = hang
      empty = true
    }
    line = empty ? line + word : `${line} ${word}`
    empty = false
  }
  return [...lines, line]
}
