import type { Message } from '../facts/message.ts'
import type { Span } from '../facts/span.ts'
import type { Compiled, Measured } from '../report/compiled.ts'
import { editBetween, type TextEdited } from './text-edited.ts'

/** What only the layout had to say, and the texts that it was said of. */
export interface Late {
  readonly messages: readonly Message[]
  readonly texts: ReadonlyMap<string, string>
}

/** The messages of a counted job that its rooms alone did not call for; those stay the same values. */
export function lateIn(counted: Compiled, measured: Measured): Late {
  const early = new Set(measured.messages)
  const late = counted.messages.filter((one) => !early.has(one) && !one.accepted)
  return {
    messages: late.map(standing),
    texts: new Map(counted.trees.map(({ file, text }) => [file, text])),
  }
}

/** With its places as they are now: they would move on with the text, and not where it is edited. */
function standing(message: Message): Message {
  const related = message.related.map((one) => ({ ...one, span: plain(one.span) }))
  return { ...message, span: plain(message.span), related, fixes: [] }
}

function plain({ file, start, end }: Span): Span {
  return { file, start, end }
}

/**
 * What the layout said of the texts before, moved to where it stands in the texts of now: without it
 * these lines would flicker with every key until the next count. Whatever was edited is let go.
 */
export function carried({ messages, texts }: Late, measured: Measured): readonly Message[] {
  if (messages.length === 0) return []
  const now = new Map(measured.trees.map(({ file, text }) => [file, text]))
  const edits = new Map(
    [...texts].map(([file, text]) => [file, editBetween(text, now.get(file) ?? '')]),
  )
  return messages.flatMap((message) => {
    const span = moved(message.span, edits)
    const related = message.related.map((one) => ({ ...one, span: moved(one.span, edits) }))
    if (span === null) return []
    return [{ ...message, span, related: related.filter(hasSpan) }]
  })
}

function moved(span: Span, edits: ReadonlyMap<string, TextEdited>): Span | null {
  const edit = edits.get(span.file)
  if (edit === undefined) return null
  if (span.end <= edit.start) return span
  if (span.start < edit.end) return null
  return { file: span.file, start: span.start + edit.longer, end: span.end + edit.longer }
}

function hasSpan<T extends { readonly span: Span | null }>(one: T): one is T & { span: Span } {
  return one.span !== null
}
