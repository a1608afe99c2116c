import type { Span } from '../../facts/span.ts'
import type { Compiled } from '../compiled.ts'
import { placeIn } from '../place.ts'

/** Every message with its place, lines and columns from 1. */
export function messagesJson(compiled: Compiled): readonly object[] {
  return compiled.messages.map(({ code, weight, accepted, text, span, related }) => ({
    code,
    weight,
    accepted,
    text,
    ...where(span, compiled),
    related: related.map((one) => ({ ...where(one.span, compiled), text: one.text })),
  }))
}

function where(span: Span, { trees }: Compiled) {
  const tree = trees.find((one) => one.file === span.file)
  const from = tree ? placeIn(tree, span.start) : { line: 1, column: 1 }
  const to = tree ? placeIn(tree, span.end) : { line: 1, column: 1 }
  return { file: span.file, from, to }
}
