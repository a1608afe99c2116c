import type { IToken } from 'chevrotain'
import type { Rest } from './content.ts'
import { endOfToken } from './grammar.ts'
import { type Reading, sayError, shown } from './reading.ts'

interface Place {
  readonly start: number
  readonly end: number
}

/** The tokens that phrases are made of: without blanks and comments, and with a message without what no phrase can hold. `isOpen`: a quote was left open. */
export function soundTokens(
  rest: Rest,
  reading: Reading,
): { readonly tokens: readonly IToken[]; readonly whole: boolean; readonly isOpen: boolean } {
  const tokens: IToken[] = []
  let whole = true
  let isOpen = false
  for (const token of rest.tokens) {
    const kind = token.tokenType.name
    const place = { start: rest.base + token.startOffset, end: rest.base + endOfToken(token) }
    if (kind === 'blank' || kind === 'comment') continue
    if (kind === 'stuck hash') sayStuckHash(token, place, reading)
    else if (kind === 'open quote') {
      // The inch mark of a figure that cannot be read, which is said of the figure.
      isOpen = !isMarkOf(tokens.at(-1), token)
      if (isOpen) sayOpenQuote(token, place, reading)
    } else tokens.push(token)
    whole &&= kind !== 'stuck hash' && kind !== 'open quote'
  }
  return { tokens, whole, isOpen }
}

function isMarkOf(before: IToken | undefined, mark: IToken): boolean {
  return (
    before?.tokenType.name === 'word' &&
    endOfToken(before) === mark.startOffset &&
    /^[0-9]/.test(before.image)
  )
}

function sayStuckHash(token: IToken, place: Place, reading: Reading): void {
  const after = token.image.slice(1)
  const rule = 'A comment has a blank on each side of its #.'
  const isNumber = /^[0-9]+$/.test(after)
  const said = isNumber ? `${rule} A name may hold the plain number: ${after}.` : rule
  const repair = isNumber
    ? { ...place, title: `Write ${after}`, text: after }
    : { ...place, title: 'Put a blank on each side of the #', text: ` # ${after}` }
  sayError(reading, 'comment-without-blank', place, said, repair)
}

function sayOpenQuote(token: IToken, place: Place, reading: Reading): void {
  const after = shown(token.image.slice(1).trim())
  const said = `The quote before ${after === '' ? 'the end of the line' : after} is not closed. A quoted name has a " on each side; an inch mark follows its number.`
  sayError(reading, 'quote-not-closed', place, said)
}
