import type { Message } from '../facts/message.ts'
import type { Span } from '../facts/span.ts'
import type { Compiled, Measured } from '../report/compiled.ts'

/** What only the layout had to say, and the texts that it was said of. */
export interface Late {
  readonly messages: readonly Message[]
  readonly texts: ReadonlyMap<string, string>
}

/** The messages of a counted job that its rooms alone did not call for. */
export function lateIn(counted: Compiled, measured: Measured): Late {
  const early = new Set(measured.messages.map(keyOf))
  return {
    messages: counted.messages.filter((one) => !early.has(keyOf(one))),
    texts: new Map(counted.trees.map(({ file, text }) => [file, text])),
  }
}

/**
 * What the layout said of the texts before, moved to where it stands in the texts of now: without it
 * these lines would flicker with every key until the next count. Whatever was edited is let go.
 */
export function carried({ messages, texts }: Late, measured: Measured): readonly Message[] {
  if (messages.length === 0) return []
  const now = new Map(measured.trees.map(({ file, text }) => [file, text]))
  const edits = new Map([...texts].map(([file, text]) => [file, edit(text, now.get(file) ?? '')]))
  return messages.flatMap((message) => {
    const span = moved(message.span, edits)
    const related = message.related.map((one) => ({ ...one, span: moved(one.span, edits) }))
    if (span === null) return []
    return [{ ...message, span, related: related.filter(hasSpan), fixes: [] }]
  })
}

/** The stretch in which two texts differ, in the first, and how much longer the second is. */
interface Edit {
  readonly start: number
  readonly end: number
  readonly longer: number
}

function edit(before: string, after: string): Edit {
  const shorter = Math.min(before.length, after.length)
  let start = 0
  while (start < shorter && before.charCodeAt(start) === after.charCodeAt(start)) start++
  let behind = 0
  while (behind < shorter - start && isSameFromBehind(before, after, behind)) behind++
  return { start, end: before.length - behind, longer: after.length - before.length }
}

function isSameFromBehind(a: string, b: string, behind: number): boolean {
  return a.charCodeAt(a.length - 1 - behind) === b.charCodeAt(b.length - 1 - behind)
}

function moved(span: Span, edits: ReadonlyMap<string, Edit>): Span | null {
  const edit = edits.get(span.file)
  if (edit === undefined) return null
  if (span.end <= edit.start) return span
  if (span.start < edit.end) return null
  return { file: span.file, start: span.start + edit.longer, end: span.end + edit.longer }
}

function hasSpan<T extends { readonly span: Span | null }>(one: T): one is T & { span: Span } {
  return one.span !== null
}

function keyOf({ code, text, span }: Message): string {
  return `${span.file}\n${span.start}\n${code}\n${text}`
}
