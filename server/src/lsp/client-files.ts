import { LARGEST_TEXT } from '../host/host.ts'
import { type TextRead, textOf } from '../host/read-text.ts'
import type { ReadFile } from './custom.ts'

/** What comes back is checked: any client may answer anything. */
export type AskClient = (
  file: ReadFile,
) => Promise<Partial<Record<'text' | 'refused', unknown>> | null>

/** A file that only the client can read: one on a server, say, or seen from a browser. */
export async function fromClient(path: string, uri: string, ask: AskClient): Promise<TextRead> {
  const sent = await ask({ uri, limit: LARGEST_TEXT }).catch(() => null)
  if (typeof sent?.refused === 'string') return refused(oneLine(sent.refused))
  const bytes = typeof sent?.text === 'string' ? bytesOf(sent.text) : null
  return bytes === null ? refused(`"${path}" could not be read.`) : textOf(path, checked(bytes))
}

function refused(reason: string): TextRead {
  return { kind: 'refused', reason, place: null }
}

function checked(bytes: Uint8Array) {
  return bytes.length > LARGEST_TEXT
    ? ({ kind: 'too big', limit: LARGEST_TEXT } as const)
    : ({ kind: 'read', bytes } as const)
}

/** Null where it is no base64. */
function bytesOf(base64: string): Uint8Array | null {
  try {
    return Uint8Array.from(atob(base64), (character) => character.charCodeAt(0))
  } catch {
    return null
  }
}

/** A reason is a sentence within a message, whatever the client made of it. */
function oneLine(reason: string): string {
  return reason.replace(/[\r\n]+/g, ' ').slice(0, 400)
}
