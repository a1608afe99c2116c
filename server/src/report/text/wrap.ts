/** Words in lines of at most `width` characters, each line after the first indented by `hang`. */
export function wrap(text: string, width: number, hang: string): readonly string[] {
  const lines: string[] = []
  let line = ''
  for (const word of text.split(' ')) {
    const room = width - (lines.length > 0 ? hang.length : 0)
    if (line !== '' && line.length + 1 + word.length > room) {
      lines.push(line)
      line = word
    } else line = line === '' ? word : `${line} ${word}`
  }
  return [...lines, line].map((one, index) => (index > 0 ? hang + one : one))
}
