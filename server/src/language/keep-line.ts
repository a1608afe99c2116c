import type { IToken } from 'chevrotain'
import { endOfToken } from './grammar.ts'
import type { RawLine } from './lines.ts'
import { LiveLine } from './live-line.ts'
import { type Reading, spanOf } from './reading.ts'
import { tokenize } from './tokens.ts'
import type { Line, Token } from './tree.ts'

/** A line with its tokens, which joined are its text; `rest` is what follows the word, cut already. */
export function keepLine(
  raw: RawLine,
  mode: 'text' | 'phrases',
  broken: boolean,
  reading: Reading,
  rest?: readonly IToken[],
): Line {
  const { head } = raw
  const tokens = tokensOf(raw, mode, reading, rest)
  const last = tokens[tokens.length - 1]
  const line: Line = {
    span: spanOf(reading, raw.start, raw.end),
    number: raw.number,
    ending: raw.ending,
    indent: raw.indent,
    tokens,
    head: head && { word: head.word, span: spanOf(reading, head.start, head.end) },
    comment: last?.kind === 'comment' ? last.span : null,
    broken,
  }
  return reading.anchor === null ? line : new LiveLine(reading.anchor, line)
}

function tokensOf(
  raw: RawLine,
  mode: 'text' | 'phrases',
  reading: Reading,
  rest: readonly IToken[] | undefined,
): readonly Token[] {
  const { text } = reading
  const at = (kind: string, start: number, end: number): Token => ({
    kind,
    text: text.slice(start, end),
    span: spanOf(reading, start, end),
  })
  const body = raw.head?.start ?? firstSign(text, raw)
  const tokens: Token[] = body > raw.start ? [at('blank', raw.start, body)] : []
  if (raw.head === null && text.charAt(body) === '#')
    return [...tokens, at('comment', body, raw.end)]
  if (raw.head !== null) tokens.push(at('head', raw.head.start, raw.head.end))
  const base = raw.head?.end ?? body
  for (const token of rest ?? tokenize(text.slice(base, raw.end), mode)) {
    tokens.push(at(token.tokenType.name, base + token.startOffset, base + endOfToken(token)))
  }
  return tokens
}

function firstSign(text: string, raw: RawLine): number {
  const mark = raw.start === 0 && text.charCodeAt(0) === 0xfeff ? 1 : 0
  return raw.start + mark + raw.indent
}
