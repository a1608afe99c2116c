import { nearest } from '../facts/near.ts'
import { FULL_WIDTH, plainSigns } from '../units/signs.ts'
import type { Parted } from './content.ts'
import { exampleOf, exampleOn } from './examples.ts'
import { feetApart } from './feet-apart.ts'
import type { Form, Part } from './forms.ts'
import type { Item } from './grammar.ts'
import { matchForms } from './match.ts'
import { type Reading, type Repair, sayError, shown } from './reading.ts'
import type { Entered } from './vocabulary.ts'

interface Finding {
  readonly code: string
  readonly text: string
  readonly repair: Repair | null
}

interface Odd {
  readonly items: readonly Item[]
  readonly entered: Entered
  readonly base: number
  readonly reading: Reading
}

/** Says why a phrase fits no form of its word: the likeliest slip first, else what is accepted. */
export function diagnose(items: readonly Item[], parted: Parted): void {
  const { entered, rest, reading } = parted
  const odd: Odd = { items, entered, base: rest.base, reading }
  const found = (items.length <= MOST_ITEMS ? likeliest(odd) : null) ?? unknown(odd)
  const place = { start: startOf(odd), end: endOf(odd) }
  sayError(reading, found.code, place, found.text, found.repair)
}

/** A longer phrase is no slip, and looking for one takes its square. */
const MOST_ITEMS = 40

function likeliest(odd: Odd): Finding | null {
  return (
    letterInNumber(odd) ??
    markUnknown(odd) ??
    numberWithSigns(odd) ??
    digitUnknown(odd) ??
    commaMissing(odd) ??
    nearWord(odd) ??
    needsQuotes(odd) ??
    fullWidth(odd)
  )
}

const startOf = (odd: Odd): number => odd.base + odd.items[0]!.start
const endOf = (odd: Odd): number => odd.base + odd.items[odd.items.length - 1]!.end

function typed(odd: Odd, from = 0, to = odd.items.length): string {
  const start = odd.base + odd.items[from]!.start
  return odd.reading.text.slice(start, odd.base + odd.items[to - 1]!.end)
}

/** `1O' 8"`: letters that look like digits. */
function letterInNumber(odd: Odd): Finding | null {
  const at = odd.items.findIndex(
    (item) => item.kind === 'word' && /^[OoIl]*[0-9][0-9OoIl.]*(?:'|")?$/.test(item.text),
  )
  const item = odd.items[at]
  if (item === undefined || item.kind !== 'word') return null
  const letter = /[OoIl]/.exec(item.text)?.[0]
  if (letter === undefined) return null
  const plain = item.text.replace(/[Oo]/g, '0').replace(/[Il]/g, '1')
  const next = odd.items[at + 1]
  const whole = next?.kind === 'measure' ? `${plain} ${typed(odd, at + 1, at + 2)}` : plain
  return {
    code: 'letter-in-number',
    text: `The ${letter} in ${item.text} is a letter. ${whole}?`,
    repair: {
      start: odd.base + item.start,
      end: odd.base + item.end,
      title: `Write ${plain}`,
      text: plain,
    },
  }
}

/** Signs that some keyboards and word processors put for a foot mark, for an inch mark, and for neither. */
const LIKE_FOOT = /[´`\u201a\u201b\u2035\u2039\u203a]/g
const LIKE_INCH = /[¨\u02dd\u201e\u201f\u2036\u00ab\u00bb\u301d-\u301f]/g
const LIKE_NEITHER = /[\u2034\u2037\u2057]/
const LIKE_A_MARK = new RegExp(
  `^(?:${LIKE_FOOT.source}|${LIKE_INCH.source}|${LIKE_NEITHER.source})$`,
)

/** `12´`: a sign straight behind a figure that looks like a foot or an inch mark. */
function markUnknown(odd: Odd): Finding | null {
  const item = odd.items.find(
    (found, at) => isMarkLike(found) && found.start === odd.items[at - 1]?.end,
  )
  if (item?.kind !== 'word') return null
  const whole = typed(odd)
  const meant = whole.replace(LIKE_INCH, '"').replace(LIKE_FOOT, (_, at: number) => {
    const before = whole.slice(0, at)
    return /'/.test(before) || before.search(LIKE_FOOT) >= 0 ? '"' : "'"
  })
  const isSure = !LIKE_NEITHER.test(whole)
  return {
    code: 'mark-unknown',
    text: `${item.text} is no mark of a length. A foot mark is ', an inch mark is ".${isSure ? ` ${shown(meant)}?` : ''}`,
    repair: isSure
      ? { start: startOf(odd), end: endOf(odd), title: `Write ${shown(meant)}`, text: meant }
      : null,
  }
}

function isMarkLike(item: Item): boolean {
  return item.kind === 'word' && LIKE_A_MARK.test(item.text)
}

/** `1e3`, `1_000`: a phrase that begins with digits and goes on with what stands in no number. */
function numberWithSigns({ items }: Odd): Finding | null {
  const [first] = items
  if (first?.kind !== 'word' || !/^[0-9]/.test(first.text)) return null
  return {
    code: 'number-unreadable',
    text: `${shown(first.text)} is no number that can be read here. A number has the digits 0 to 9, no comma and at most one point: 1250 or 12.5.`,
    repair: null,
  }
}

/** `12²`, `Ⅻ`, `⅟`: signs for numbers that are no digits of a figure. */
function digitUnknown({ items }: Odd): Finding | null {
  const sign = items
    .flatMap((item) => (item.kind === 'word' ? [/[\p{No}\p{Nl}]/u.exec(item.text)?.[0]] : []))
    .find((found) => found !== undefined)
  if (sign === undefined) return null
  return {
    code: 'number-unreadable',
    text: `${sign} is no digit that can be read here. A number has the digits 0 to 9, and a fraction is written such as 1/2 or ½.`,
    repair: null,
  }
}

/** A place where both sides fit a form of their own. */
function commaMissing(odd: Odd): Finding | null {
  const { items, entered } = odd
  for (let at = 1; at < items.length; at += 1) {
    const left = matchForms(items.slice(0, at), entered.forms)
    if (left === null || matchForms(items.slice(at), entered.forms) === null) continue
    const last = left.form.parts[left.form.parts.length - 1]!
    return (last.kind === 'name' ? nameEnd(odd, at) : null) ?? commaAt(odd, at)
  }
  return null
}

function commaAt(odd: Odd, at: number): Finding {
  const { items, reading, base } = odd
  const feet = feetApart(items[at - 1]!, items[at]!, reading.tape)
  const after = base + (feet ?? items[at]!.start)
  const before = reading.text.slice(startOf(odd), after).trimEnd()
  const end = startOf(odd) + before.length
  return {
    code: 'comma-missing',
    text: `A comma is missing between two entries: ${shown(`${before}, ${reading.text.slice(after, endOf(odd))}`)}.`,
    repair: { start: end, end, title: 'Put the comma', text: ',' },
  }
}

/** `to bedroom 2 1/2" from left`: the number may end the name or start the reading. */
function nameEnd(odd: Odd, at: number): Finding | null {
  const apart = /^([0-9]+)[^0-9]+([0-9].*)$/.exec(typed(odd, at))
  const item = odd.items[at]!
  if (apart === null || item.kind !== 'measure' || !/^[0-9]+\s/.test(typed(odd, at, at + 1))) {
    return null
  }
  const name = typed(odd, 0, at)
  return {
    code: 'name-end-unclear',
    text: `Where does the name end? "${name} ${apart[1]}, ${apart[2]}" or "${name}, ${typed(odd, at)}"? A comma ends a name.`,
    repair: null,
  }
}

/** One word mistyped: its nearest of the words that the forms hold makes the phrase fit. */
function nearWord(odd: Odd): Finding | null {
  const known = wordsIn(odd.entered.forms)
  for (const [at, item] of odd.items.entries()) {
    if (item.kind !== 'word') continue
    const near = nearest(item.text, known)
    if (near === null || near === item.text.toLowerCase()) continue
    const mended = odd.items.map((other, index) => (index === at ? { ...item, text: near } : other))
    const match = matchForms(mended, odd.entered.forms)
    if (match === null) continue
    const place = { start: odd.base + item.start, end: odd.base + item.end }
    return {
      code: 'word-mistyped',
      text: `"${item.text}" is no word of a ${odd.entered.word.word} line. Is ${near} meant?${alsoFrom(odd, match.form)}`,
      repair: { ...place, title: `Write ${near}`, text: near },
    }
  }
  return null
}

/** What else a line takes that starts like the form meant: a reading with its roles, or a word. */
function alsoFrom({ entered, reading }: Odd, meant: Form): string {
  const kind = meant.parts[0]!.kind
  const others = entered.forms.filter((form) => form !== meant && form.parts[0]!.kind === kind)
  const shortest = others
    .filter((form) => form.parts.length > 1)
    .map((form) => exampleOf(form.text, reading.tape.style))
  return shortest.length === 0 ? '' : ` (Also: ${shortest.join('; ')}.)`
}

function wordsIn(forms: readonly Form[]): readonly string[] {
  const words = forms.flatMap((form) =>
    form.parts.flatMap((part) =>
      part.kind === 'words' ? part.words : part.kind === 'choice' ? part.options.flat() : [],
    ),
  )
  return [...new Set(words)]
}

/** `called place to sit`: a name that holds a parting word. */
function needsQuotes(odd: Odd): Finding | null {
  for (let at = 1; at < odd.items.length; at += 1) {
    const rest = odd.items.slice(at)
    if (rest.some((item) => item.kind === 'measure')) continue
    const name: Item = { kind: 'quoted', text: 'name', start: rest[0]!.start, end: rest[0]!.end }
    const match = matchForms([...odd.items.slice(0, at), name], odd.entered.forms)
    if (match === null || match.names.length === 0) continue
    const quoted = `"${typed(odd, at).replace(/["\u201c\u201d]/g, '')}"`
    return {
      code: 'name-needs-quotes',
      text: `A name that holds to, of, and, about or within stands in quotes: ${shown(`${typed(odd, 0, at)} ${quoted}`)}.`,
      repair: {
        start: odd.base + rest[0]!.start,
        end: endOf(odd),
        title: `Write ${shown(quoted)}`,
        text: quoted,
      },
    }
  }
  return null
}

const A_FULL_WIDTH = new RegExp(`[${FULL_WIDTH}]`)

/** `12' 4"，called bay`: a comma or another sign as an input method of another script puts it. */
function fullWidth(odd: Odd): Finding | null {
  const whole = typed(odd)
  const sign = A_FULL_WIDTH.exec(whole)?.[0]
  if (sign === undefined) return null
  const plain = plainSigns(whole)
  return {
    code: 'mark-unknown',
    text: `${sign} is a sign of full width. Written plainly: ${shown(plain)}.`,
    repair: { start: startOf(odd), end: endOf(odd), title: `Write ${shown(plain)}`, text: plain },
  }
}

function unknown(odd: Odd): Finding {
  return {
    code: 'phrase-unknown',
    text: `"${shown(typed(odd))}" is not understood here. ${whatItTakes(odd)}.`,
    repair: null,
  }
}

/** What the line takes that begins as the phrase does; all that it takes where nothing does. */
function whatItTakes({ items, entered, reading }: Odd): string {
  const { word } = entered.word
  const [first] = items
  if (entered.forms.length === 0) return `${word} stands alone on its line`
  const alike = entered.forms.filter(({ parts }) => beginsAlike(first!, parts[0]!))
  const forms = alike.length > 0 ? alike : entered.forms
  const begun = first!.kind === 'measure' ? 'a figure' : 'a word'
  const where = forms.length < entered.forms.length ? `, beginning with ${begun}` : ''
  const examples = forms.map((form) => exampleOn(word, form.text, reading.tape.style))
  return `${word} takes${where}: ${examples.join('; ')}`
}

function beginsAlike(item: Item, part: Part): boolean {
  return (item.kind === 'measure') === (part.kind === 'figure')
}
