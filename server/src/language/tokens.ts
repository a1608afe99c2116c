import { createToken, type IToken, Lexer, type TokenType } from 'chevrotain'
import { endOfFigure } from '../units/figure.ts'
import { BLANKS } from '../units/signs.ts'

/**
 * The tokens of one line after its first word. Two modes: `phrases` for lines that are read, `text`
 * for lines that are carried as they stand. Every character is in some token, so a line is never lost.
 */
const QUOTES = '"\\u201c\\u201d'

const sticky = (source: string): RegExp => new RegExp(source, 'y')

function endOf(rule: RegExp, text: string, offset: number): number {
  rule.lastIndex = offset
  return rule.test(text) ? rule.lastIndex : offset
}

/** A pattern given by where it ends, as Chevrotain takes it. */
function upTo(end: (text: string, offset: number, before: readonly IToken[]) => number) {
  return {
    line_breaks: false,
    pattern: (text: string, offset: number, before: IToken[]): [string] | null => {
      const stop = end(text, offset, before)
      return stop > offset ? [text.slice(offset, stop)] : null
    },
  }
}

const COMMENT = sticky(`#(?=[${BLANKS}]|$)[^]*`)

/** A comment's # has a blank on each side, or the line's end. */
function endOfComment(text: string, offset: number, before: readonly IToken[]): number {
  const last = before[before.length - 1]
  return last === undefined || last.tokenType === Blank ? endOf(COMMENT, text, offset) : offset
}

const BY = sticky(`[xX×](?=[${BLANKS}0-9.]|$)`)

/** `x` is "by" only straight after a figure, so that it may stand in a name. */
function endOfBy(text: string, offset: number, before: readonly IToken[]): number {
  const last = before[before.length - 1]
  const figure = last?.tokenType === Blank ? before[before.length - 2] : last
  return figure?.tokenType === Figure ? endOf(BY, text, offset) : offset
}

const WORD = sticky(`[^${BLANKS},?+#${QUOTES}][^${BLANKS},?${QUOTES}]*`)
const OPENS_COMMENT = new RegExp(`[${BLANKS}]#(?=[${BLANKS}]|$)`, 'g')
const ONE_BLANK = new RegExp(`[${BLANKS}]`)

/** Text ends where a comment opens, or at the line's end; the blanks before that are not in it. */
function endOfText(text: string, offset: number): number {
  OPENS_COMMENT.lastIndex = offset
  let end = OPENS_COMMENT.exec(text)?.index ?? text.length
  while (end > offset && ONE_BLANK.test(text.charAt(end - 1))) end -= 1
  return end
}

export const Blank = createToken({ name: 'blank', pattern: new RegExp(`[${BLANKS}]+`) })
export const Comment = createToken({ name: 'comment', ...upTo(endOfComment) })
export const Figure = createToken({ name: 'figure', ...upTo(endOfFigure) })
export const By = createToken({ name: 'by', ...upTo(endOfBy) })
export const Word = createToken({
  name: 'word',
  ...upTo((text, offset) => endOf(WORD, text, offset)),
})
export const About = createToken({ name: 'about', pattern: /about/i, longer_alt: Word })
export const Within = createToken({ name: 'within', pattern: /within/i, longer_alt: Word })
export const Comma = createToken({ name: 'comma', pattern: ',' })
export const Plus = createToken({ name: 'plus', pattern: '+' })
export const Asked = createToken({ name: 'asked', pattern: '?' })
export const Quoted = createToken({
  name: 'quoted',
  pattern: new RegExp(`[${QUOTES}][^${QUOTES}]*[${QUOTES}]`),
  line_breaks: false,
})
/** A quote that is not closed, and a # that has no blank on each side. */
export const OpenQuote = createToken({
  name: 'open quote',
  pattern: new RegExp(`[${QUOTES}][^]*`),
  line_breaks: false,
})
export const StuckHash = createToken({
  name: 'stuck hash',
  pattern: new RegExp(`#[^${BLANKS}]*`),
  line_breaks: false,
})
export const Text = createToken({
  name: 'text',
  ...upTo(endOfText),
})

export const PHRASE_TOKENS: TokenType[] = [
  Blank,
  Comma,
  Comment,
  By,
  Figure,
  About,
  Within,
  Word,
  Asked,
  Plus,
  Quoted,
  OpenQuote,
  StuckHash,
]

const lexer = new Lexer(
  { modes: { phrases: PHRASE_TOKENS, text: [Blank, Comment, Text] }, defaultMode: 'phrases' },
  { positionTracking: 'onlyOffset', skipValidations: true },
)

/** Cuts the rest of a line into tokens; offsets count from its start. */
export function tokenize(text: string, mode: 'phrases' | 'text'): readonly IToken[] {
  return lexer.tokenize(text, mode).tokens
}
