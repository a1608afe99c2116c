import type { Message } from '../../server/src/facts/message.ts'
import { bind } from '../../server/src/job/bind.ts'
import { reach } from '../../server/src/job/includes.ts'
import type { Job } from '../../server/src/job/job.ts'
import { parse } from '../../server/src/language/parse.ts'
import type { Tree } from '../../server/src/language/tree.ts'

export const ROOT = 'job.floor'

export interface Bound {
  readonly job: Job
  readonly messages: readonly Message[]
  readonly trees: readonly Tree[]
}

/** Binds a job of one text, or of several by file name. */
export function bound(texts: string | Readonly<Record<string, string>>): Bound {
  const files = typeof texts === 'string' ? { [ROOT]: texts } : texts
  const parsed = Object.entries(files).map(([file, text]) => parse(file, text))
  const { trees } = reach(parsed, ROOT)
  return { ...bind(trees, ROOT), trees }
}

/** The messages of binding, one line each, as `line weight code: text`; notes only when asked for. */
export function said(
  texts: string | Readonly<Record<string, string>>,
  { notes = false } = {},
): readonly string[] {
  const { messages, trees } = bound(texts)
  return messages
    .filter(({ weight }) => notes || weight !== 'note')
    .map(
      (message) => `${placeOf(message, trees)} ${message.weight} ${message.code}: ${message.text}`,
    )
}

function placeOf({ span }: Message, trees: readonly Tree[]): string {
  const text = trees.find(({ file }) => file === span.file)?.text ?? ''
  const line = text.slice(0, span.start).split('\n').length
  return span.file === ROOT ? `${line}` : `${span.file} ${line}`
}

/** The text after the first fix of the first message that has one. */
export function mended(text: string): string {
  const { messages } = bound(text)
  const fix = messages.find(({ fixes }) => fixes.length > 0)?.fixes[0]
  const edits = [...(fix?.edits ?? [])].sort((a, b) => b.span.start - a.span.start)
  return edits.reduce(
    (before, edit) => before.slice(0, edit.span.start) + edit.text + before.slice(edit.span.end),
    text,
  )
}

/** Four plain walls of a room, for lines that need some. */
export const WALLS = `  north       12' 4"
  east        10' 8 1/4"
  south       12' 4 1/8"
  west        10' 8 1/8"
`
/** What a job says once, so that nothing of it is a message. */
export const HEAD = `floorscribe 1
units feet-inches
tape 1/16" + 1/32" per 10', about 1/2"
walls 4 1/2" thick
`
