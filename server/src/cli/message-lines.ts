import type { Message, Weight } from '../facts/message.ts'
import type { Span } from '../facts/span.ts'
import { placeIn } from '../report/place.ts'
import { visible } from '../report/visible.ts'
import type { Colours } from './colours.ts'
import type { JobFile } from './job-file.ts'

const TINT: { readonly [W in Weight]: (colours: Colours) => (text: string) => string } = {
  error: (colours) => colours.red,
  warning: (colours) => colours.yellow,
  incomplete: (colours) => colours.cyan,
  note: (colours) => colours.dim,
}

/**
 * One message as `file:line:column: weight code: text`, which editors and CI can read, and below it,
 * indented, the other places that bear on it. Columns count from 1 in UTF-16 units, as editors do.
 */
export function messageLines(message: Message, job: JobFile, colours: Colours): string {
  const tint = TINT[message.weight](colours)
  const where = colours.bold(`${placeText(message.span, job)}:`)
  const head = `${where} ${tint(`${message.weight} ${message.code}:`)} ${visible(message.text)}\n`
  const related = message.related.map(
    ({ span, text }) => `  ${placeText(span, job)}: ${visible(text)}\n`,
  )
  return head + related.join('')
}

function placeText(span: Span, { compiled, pathOf }: JobFile): string {
  const path = visible(pathOf(span.file))
  const tree = compiled.trees.find((tree) => tree.file === span.file)
  if (tree === undefined) return path
  const { line, column } = placeIn(tree, span.start)
  return `${path}:${line}:${column}`
}
