import { BLANKS, DASHES, FOOT_MARKS, INCH_MARKS, SLASHES, VULGAR } from './signs.ts'

/**
 * One piece of a reading. The kinds are one letter each, so that the shape of a whole reading is a
 * short word that a pattern can be held against: `12' 4 1/2"` is n ' n f ".
 * n whole number, d decimal, f fraction, v one-character fraction, ' foot mark, " inch mark,
 * u metric unit, - dash, ? anything else.
 */
export interface Piece {
  readonly kind: 'n' | 'd' | 'f' | 'v' | "'" | '"' | 'u' | '-' | '?'
  readonly text: string
}

const RULES: readonly (readonly [Piece['kind'], RegExp])[] = [
  ['f', new RegExp(`[0-9]+(?:[${SLASHES}][0-9]*)+`, 'y')],
  ['d', /[0-9]*(?:\.[0-9]*)+/y],
  ['n', /[0-9]+/y],
  ['v', new RegExp(`[${VULGAR}]`, 'y')],
  ['"', new RegExp(`[${INCH_MARKS}]|[${FOOT_MARKS}]{2}|inches|inch|in`, 'iy')],
  ["'", new RegExp(`[${FOOT_MARKS}]|feet|foot|ft`, 'iy')],
  ['u', /mm|cm|m/iy],
  ['-', new RegExp(`[${DASHES}]`, 'y')],
]
const BLANK = new RegExp(`[${BLANKS}]+`, 'y')

/** Takes a reading apart; blanks only part the pieces. */
export function piecesOf(text: string): readonly Piece[] {
  const pieces: Piece[] = []
  let at = 0
  while (at < text.length) {
    const blank = matchAt(BLANK, text, at)
    if (blank === '') pieces.push(pieceAt(text, at))
    at += blank === '' ? pieces[pieces.length - 1]!.text.length : blank.length
  }
  return pieces
}

function pieceAt(text: string, at: number): Piece {
  for (const [kind, rule] of RULES) {
    const found = matchAt(rule, text, at)
    if (found !== '') return { kind, text: found }
  }
  return { kind: '?', text: text.charAt(at) }
}

function matchAt(rule: RegExp, text: string, at: number): string {
  rule.lastIndex = at
  return rule.exec(text)?.[0] ?? ''
}
