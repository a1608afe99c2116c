import type { Message } from '../../facts/message.ts'
import type { Span } from '../../facts/span.ts'
import type { Compiled } from '../compiled.ts'
import { placeIn } from '../place.ts'

/** Every message with its place and its sure repairs, lines and columns from 1. */
export function messagesJson(compiled: Compiled): readonly object[] {
  const texts = (list: readonly { readonly span: Span; readonly text: string }[]) =>
    list.map(({ span, text }) => ({ ...where(span, compiled), text }))
  return compiled.messages.map(
    ({ code, weight, accepted, text, span, related, fixes }: Message) => ({
      code,
      weight,
      accepted,
      text,
      ...where(span, compiled),
      related: texts(related),
      fixes: fixes.map(({ title, edits }) => ({ title, edits: texts(edits) })),
    }),
  )
}

function where(span: Span, { trees }: Compiled) {
  const tree = trees.find((one) => one.file === span.file)
  const from = tree ? placeIn(tree, span.start) : { line: 1, column: 1 }
  const to = tree ? placeIn(tree, span.end) : { line: 1, column: 1 }
  return { file: span.file, from, to }
}
