import { readLength, type TapeOptions } from './tape.ts'
import { piecesOf } from './tape-pieces.ts'

/**
 * A reading in the canonical marks and blanks: straight marks, one blank between feet, inches and
 * fraction. Digits, notation and order stay as read, so that a slip still shows; a bare number of
 * inches gets its mark. A reading that is refused comes back as it was.
 */
export function canonicalLength(text: string, options: TapeOptions): string {
  if (readLength(text, options).refusal !== null) return text
  const pieces = piecesOf(text).filter((piece) => piece.kind !== '-')
  let written = ''
  for (const { kind, text: typed } of pieces) {
    const glued =
      written === '' || (kind === 'v' && /[0-9]$/.test(written)) || (isMark(kind) && !isWord(typed))
    written += `${glued ? '' : ' '}${canonicalPiece(kind, typed)}`
  }
  const last = pieces[pieces.length - 1]?.kind
  const bare = last !== "'" && last !== '"' && last !== 'u'
  return bare && options.bare === 'inches' ? `${written}"` : written
}

function isMark(kind: string): boolean {
  return kind === "'" || kind === '"' || kind === 'u'
}

function isWord(text: string): boolean {
  return /^[a-z]/i.test(text)
}

function canonicalPiece(kind: string, text: string): string {
  if (isMark(kind)) return isWord(text) ? text.toLowerCase() : kind
  return kind === 'f' ? text.replace(/[^0-9]/, '/') : text
}
