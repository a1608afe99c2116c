import { EmbeddedActionsParser, type IToken } from 'chevrotain'
import {
  About,
  Asked,
  By,
  Comma,
  Figure,
  PHRASE_TOKENS,
  Plus,
  Quoted,
  Within,
  Word,
} from './tokens.ts'

/** A figure with the doubts around it, not yet read. */
export interface RawMeasure {
  readonly about: IToken | null
  readonly first: IToken
  readonly by: IToken | null
  readonly within: IToken | null
  readonly doubt: IToken | null
}

/** One thing in a phrase: a measure, or a word, a quoted name or a sign that stands for itself. */
export type Item =
  | {
      readonly kind: 'measure'
      readonly measure: RawMeasure
      readonly start: number
      readonly end: number
    }
  | {
      readonly kind: 'word' | 'quoted'
      readonly text: string
      readonly start: number
      readonly end: number
    }

export type RawPhrase = readonly Item[]

/**
 * The grammar of a line after its first word: phrases parted by commas, each a row of measures and
 * words. Every row of tokens is taken, so nothing is ever unparsed; what a row means is settled by the
 * vocabulary's forms. Two tokens of look-ahead tell `about 12'` from a word. No rule calls itself, so
 * no text is too deep.
 */
class LineParser extends EmbeddedActionsParser {
  constructor() {
    super(PHRASE_TOKENS, { recoveryEnabled: true, maxLookahead: 2 })
    this.performSelfAnalysis()
  }

  readonly phrases = this.RULE('phrases', (): RawPhrase[] => {
    const phrases = [this.SUBRULE(this.phrase)]
    this.MANY(() => {
      this.CONSUME(Comma)
      phrases.push(this.SUBRULE2(this.phrase))
    })
    return phrases
  })

  private readonly phrase = this.RULE('phrase', (): RawPhrase => {
    const items: Item[] = []
    this.MANY(() => {
      items.push(this.SUBRULE(this.item))
    })
    return items
  })

  private readonly item = this.RULE(
    'item',
    (): Item =>
      this.OR([
        { ALT: () => this.SUBRULE(this.measure) },
        { ALT: () => asWord(this.CONSUME(Word)) },
        { ALT: () => asWord(this.CONSUME(About)) },
        { ALT: () => asWord(this.CONSUME(Within)) },
        { ALT: () => asWord(this.CONSUME(By)) },
        { ALT: () => asWord(this.CONSUME(Plus)) },
        { ALT: () => asQuoted(this.CONSUME(Quoted)) },
      ]),
  )

  private readonly measure = this.RULE('measure', (): Item => {
    const about = this.OPTION(() => this.CONSUME(About)) ?? null
    const first = this.OR([{ ALT: () => this.CONSUME(Figure) }, { ALT: () => this.CONSUME(Asked) }])
    const by = this.OPTION2({
      GATE: () => this.LA(2).tokenType === Figure,
      DEF: () => {
        this.CONSUME(By)
        return this.CONSUME2(Figure)
      },
    })
    const within = this.OPTION3({
      GATE: () => this.LA(2).tokenType === Figure,
      DEF: () => {
        this.CONSUME(Within)
        return this.CONSUME3(Figure)
      },
    })
    const doubt = this.OPTION4(() => this.CONSUME2(Asked))
    const measure = { about, first, by: by ?? null, within: within ?? null, doubt: doubt ?? null }
    return this.ACTION(() => asMeasure(measure))
  })
}

function asMeasure(measure: RawMeasure): Item {
  const last = measure.doubt ?? measure.within ?? measure.by ?? measure.first
  const start = (measure.about ?? measure.first).startOffset
  return { kind: 'measure', measure, start, end: endOfToken(last) }
}

function asWord(token: IToken): Item {
  return { kind: 'word', text: token.image, start: token.startOffset, end: endOfToken(token) }
}

function asQuoted(token: IToken): Item {
  const text = token.image.slice(1, -1)
  return { kind: 'quoted', text, start: token.startOffset, end: endOfToken(token) }
}

export function endOfToken(token: IToken): number {
  return token.startOffset + token.image.length
}

/** Made once: building it costs as much as reading thousands of lines. */
const parser = new LineParser()

/** The phrases of one line from its tokens without blanks and comments. Empty phrases stay empty. */
export function parsePhrases(tokens: readonly IToken[]): readonly RawPhrase[] {
  parser.input = [...tokens]
  return parser.phrases()
}
