import type { FileRead } from './host.ts'
import { refusal } from './refusal.ts'
import { decodeUtf8 } from './utf8.ts'

/** A file as text, or one sentence why not. */
export type TextRead =
  /** `mark`: the file began with a byte-order mark, which is not in `text`. */
  | { readonly kind: 'text'; readonly text: string; readonly mark: boolean }
  | { readonly kind: 'refused'; readonly reason: string; readonly place: Place | null }

/** Line and column in a file, from 1. */
export interface Place {
  readonly line: number
  readonly column: number
}

/** The text in a file that was read; `name` is what the sentences call it. */
export function textOf(name: string, read: FileRead): TextRead {
  if (read.kind !== 'read') return refused(refusal(name, read))
  const decoded = decodeUtf8(read.bytes)
  switch (decoded.kind) {
    case 'text':
      return decoded
    case 'utf-16':
      return refused(`"${name}" is written in UTF-16; save it as UTF-8.`)
    case 'not utf-8': {
      const { line, column } = decoded
      const byte = decoded.byte.toString(16).toUpperCase().padStart(2, '0')
      const where = `line ${line}, column ${column}`
      return refused(
        `"${name}" is not written in UTF-8: byte ${byte} at ${where} fits no character. Save it as UTF-8.`,
        { line, column },
      )
    }
  }
}

function refused(reason: string, place: Place | null = null): TextRead {
  return { kind: 'refused', reason, place }
}
