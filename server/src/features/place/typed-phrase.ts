import type { IToken } from 'chevrotain'
import type { Form } from '../../language/forms.ts'
import { endOfToken, type Item, parsePhrases, type RawPhrase } from '../../language/grammar.ts'
import { matchForms } from '../../language/match.ts'
import { tokenize } from '../../language/tokens.ts'
import type { Entered } from '../../language/vocabulary.ts'

/** The rest of a line after its first word: where it starts in the file, and its text. */
export interface RestOfLine {
  readonly start: number
  readonly text: string
}

/** The phrase that a cursor stands in, as far as it is typed before the cursor. */
export interface TypedPhrase {
  /** What stands in it before the cursor; offsets count from the start of the file. */
  readonly items: readonly Item[]
  /** The cursor touches the last of them: it may still be being typed. */
  readonly isTouched: boolean
  /** Which phrase of the line it is, from 0. */
  readonly index: number
  /** The forms that the other phrases of the line fit. */
  readonly met: readonly string[]
  /** The form that the phrase fits, what stands behind the cursor included; null for none. */
  readonly form: Form | null
}

/** What is typed of the phrase at a cursor; null where the cursor stands in a comment. */
export function typedPhrase(
  entered: Entered,
  rest: RestOfLine,
  offset: number,
): TypedPhrase | null {
  const cursor = offset - rest.start
  const before = soundTokens(tokenize(rest.text.slice(0, cursor), 'phrases'))
  if (before === null) return null
  const phrases = phrasesOf(before)
  const items = phrases[phrases.length - 1]!.map((item) => moved(item, rest.start))
  const index = phrases.length - 1
  const last = items[items.length - 1]
  const forms = phrasesOf(soundTokens(tokenize(rest.text, 'phrases')) ?? []).map(
    (phrase) => matchForms(phrase, entered.forms)?.form ?? null,
  )
  return {
    items,
    isTouched: last?.end === offset,
    index,
    met: forms.flatMap((form, i) => (form === null || i === index ? [] : [form.text])),
    form: forms[index] ?? null,
  }
}

function phrasesOf(tokens: readonly IToken[]): readonly RawPhrase[] {
  const phrases = parsePhrases(tokens.filter(({ tokenType }) => tokenType.name !== 'open quote'))
  const last = tokens[tokens.length - 1]
  if (last?.tokenType.name !== 'open quote') return phrases
  // A quoted name that is still being typed.
  const open: Item = {
    kind: 'quoted',
    text: last.image.slice(1),
    start: last.startOffset,
    end: endOfToken(last),
  }
  return phrases.map((items, i) => (i === phrases.length - 1 ? [...items, open] : items))
}

/** Without blanks; null where a comment stands among them. */
function soundTokens(tokens: readonly IToken[]): readonly IToken[] | null {
  const kinds = tokens.map(({ tokenType }) => tokenType.name)
  if (kinds.includes('comment')) return null
  return tokens.filter(({ tokenType }) => !['blank', 'stuck hash'].includes(tokenType.name))
}

function moved(item: Item, by: number): Item {
  return { ...item, start: item.start + by, end: item.end + by }
}
