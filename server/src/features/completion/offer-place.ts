import type { Span } from '../../facts/span.ts'
import type { Form, NameWanted } from '../../language/forms.ts'
import type { Item } from '../../language/grammar.ts'
import type { Continued } from '../place/continued.ts'
import type { LineScope } from '../place/line-scope.ts'
import { writtenName } from '../writing/written-name.ts'
import { type Filling, MOST_CHOICES } from './form-insert.ts'
import type { NameChoice } from './name-choice.ts'
import { nameChoices } from './name-choices.ts'

/** A line of phrases that offers are made for. */
export interface OfferPlace {
  readonly scope: LineScope
  readonly word: string
}

/** Where what is typed of a part stands; at the cursor where nothing is. */
export function spanOf({ typed }: Continued, { scope }: OfferPlace): Span {
  const { file } = scope.view
  const start = typed[0]?.start ?? scope.offset
  return { file, start, end: Math.max(scope.offset, endOfWord(typed.at(-1), scope)) }
}

const IN_WORD = /[\p{L}\p{Nd}'’-]/u

/** A word is replaced to its end, where the cursor stands inside it. */
function endOfWord(last: Item | undefined, { offset, rest }: LineScope): number {
  if (last === undefined || last.kind === 'measure' || last.end !== offset) return offset
  let end = offset - rest.start
  while (end < rest.text.length && IN_WORD.test(rest.text.charAt(end))) end += 1
  return rest.start + end
}

/** The names that may stand at one place of a form. */
export function choicesFor(
  wanted: NameWanted,
  position: number,
  form: Form,
  { scope, word }: OfferPlace,
): readonly NameChoice[] {
  const { view, block, offset, said } = scope
  if (block === null) return []
  return nameChoices(wanted, { view, block, word, form: form.text, position, offset, said })
}

/** What the places behind a name are filled from: the name itself not again, but first what lies across. */
export function fillingOf(place: OfferPlace, form: Form, chosen = ''): Filling {
  const names = (wanted: NameWanted): readonly string[] =>
    across(
      choicesFor(wanted, 1, form, place).map(({ name }) => name),
      chosen,
    )
      .slice(0, MOST_CHOICES)
      .map(writtenName)
  return { style: place.scope.tape.style, names }
}

/** Walls and corners stand in their order round the room: half the way round is across. */
function across(names: readonly string[], chosen: string): readonly string[] {
  const at = names.indexOf(chosen)
  if (at < 0) return names
  const others = [...names.slice(at + 1), ...names.slice(0, at)]
  const middle = Math.floor((others.length - 1) / 2)
  return [...others.slice(middle, middle + 1), ...others.toSpliced(middle, 1)]
}
