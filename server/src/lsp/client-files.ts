import { LARGEST_TEXT } from '../host/host.ts'
import { type TextRead, textOf } from '../host/read-text.ts'
import type { FileSent, ReadFile } from './custom.ts'

export type AskClient = (file: ReadFile) => Promise<FileSent>

/** A file that only the client can read: one on a server, say, or seen from a browser. */
export async function fromClient(path: string, uri: string, ask: AskClient): Promise<TextRead> {
  const sent = await ask({ uri, limit: LARGEST_TEXT }).catch(() => null)
  if (sent === null) return { kind: 'refused', reason: `"${path}" could not be read.`, place: null }
  if ('refused' in sent) return { kind: 'refused', reason: oneLine(sent.refused), place: null }
  return textOf(path, checked(bytesOf(sent.text)))
}

function checked(bytes: Uint8Array) {
  return bytes.length > LARGEST_TEXT
    ? ({ kind: 'too big', limit: LARGEST_TEXT } as const)
    : ({ kind: 'read', bytes } as const)
}

function bytesOf(base64: string): Uint8Array {
  return Uint8Array.from(atob(base64), (character) => character.charCodeAt(0))
}

/** A reason is a sentence within a message, whatever the client made of it. */
function oneLine(reason: string): string {
  return reason.replace(/[\r\n]+/g, ' ').slice(0, 400)
}
