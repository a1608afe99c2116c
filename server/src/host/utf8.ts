/** A file's text, or the place where its bytes stop being UTF-8. Lines and columns count from 1. */
export type Decoded =
  | { readonly kind: 'text'; readonly text: string; readonly mark: boolean }
  | {
      readonly kind: 'not utf-8'
      readonly line: number
      readonly column: number
      readonly byte: number
    }
  /** It announces itself by its first two bytes. */
  | { readonly kind: 'utf-16' }

/**
 * Decodes UTF-8 strictly: nothing is guessed and nothing replaced. A byte-order mark is taken off and
 * told (`mark`), so that a formatter can put it back.
 */
export function decodeUtf8(bytes: Uint8Array): Decoded {
  if (startsAsUtf16(bytes)) return { kind: 'utf-16' }
  const mark = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf
  try {
    return { kind: 'text', text: new TextDecoder('utf-8', { fatal: true }).decode(bytes), mark }
  } catch {
    return { kind: 'not utf-8', ...firstBadByte(bytes, mark ? 3 : 0) }
  }
}

function startsAsUtf16(bytes: Uint8Array): boolean {
  return (bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff)
}

function firstBadByte(bytes: Uint8Array, from: number) {
  let at = from
  for (let length = characterLength(bytes, at); length > 0; length = characterLength(bytes, at)) {
    at += length
  }
  const lines = new TextDecoder('utf-8').decode(bytes.subarray(from, at)).split(/\r\n|\r|\n/)
  return { line: lines.length, column: lines[lines.length - 1]!.length + 1, byte: bytes[at] ?? 0 }
}

/** Lead bytes up to `last`, how many bytes they open, and what the second may be (Unicode, table 3-7). */
const LEADS = [
  { last: 0x7f, length: 1, second: [0, 0] },
  { last: 0xc1, length: 0, second: [0, 0] },
  { last: 0xdf, length: 2, second: [0x80, 0xbf] },
  { last: 0xe0, length: 3, second: [0xa0, 0xbf] },
  { last: 0xec, length: 3, second: [0x80, 0xbf] },
  { last: 0xed, length: 3, second: [0x80, 0x9f] },
  { last: 0xef, length: 3, second: [0x80, 0xbf] },
  { last: 0xf0, length: 4, second: [0x90, 0xbf] },
  { last: 0xf3, length: 4, second: [0x80, 0xbf] },
  { last: 0xf4, length: 4, second: [0x80, 0x8f] },
  { last: 0xff, length: 0, second: [0, 0] },
] as const

/** Bytes of the well-formed character at `at`; 0 where none stands. */
function characterLength(bytes: Uint8Array, at: number): number {
  const lead = bytes[at]
  if (lead === undefined) return 0
  const { length, second } = LEADS.find(({ last }) => lead <= last)!
  for (let i = 1; i < length; i++) {
    const byte = bytes[at + i] ?? 0
    const [low, high] = i === 1 ? second : [0x80, 0xbf]
    if (byte < low || byte > high) return 0
  }
  return length
}
