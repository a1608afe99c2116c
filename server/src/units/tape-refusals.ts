import { MOST_DIGITS } from './number.ts'
import { BLANKS, DASHES } from './signs.ts'

/** Why a reading is not taken, in whole sentences, and the text that is surely meant, if any. */
export interface Refusal {
  readonly code: string
  readonly text: string
  readonly fix: string | null
  /** The readings that it may be, where one of them is meant and nobody but the writer knows which. */
  readonly readings: readonly string[]
}

export function refusal(
  code: string,
  text: string,
  fix: string | null = null,
  readings: readonly string[] = [],
): Refusal {
  return { code, text, fix, readings }
}

/** Longer than any figure, blanks and marks included: it is not looked at further. */
const LONGEST_TEXT = 200

/** What can be refused before a reading is taken apart: its length, its digits, its signs. */
export function refuseText(text: string): Refusal | null {
  return tooLong(text) ?? foreignDigits(text) ?? negative(text) ?? comma(text) ?? point(text)
}

/** The same for a number that is no length. */
export function refuseNumber(text: string): Refusal | null {
  return tooLong(text) ?? foreignDigits(text) ?? negativeNumber(text) ?? comma(text) ?? point(text)
}

function tooLong(text: string): Refusal | null {
  const digits = text.replace(/[.,]/g, '')
  if (text.length <= LONGEST_TEXT && !/[0-9]{41}/.test(digits)) return null
  const shown = text.length > 60 ? `${text.slice(0, 60)}…` : text
  const said = `${shown} is too long for a figure, which has at most ${MOST_DIGITS} digits.`
  return refusal('number-too-long', said)
}

/** Digits of other scripts look alike and are easily mistaken: named, and written plainly. */
function foreignDigits(text: string): Refusal | null {
  if (!/(?![0-9])\p{Nd}/u.test(text)) return null
  const plain = text.replace(/\p{Nd}/gu, (digit) => `${digitValue(digit)}`)
  const name = /[\uff10-\uff19]/.test(text)
    ? 'full-width digits'
    : /[\u0660-\u0669\u06f0-\u06f9]/.test(text)
      ? 'Arabic digits'
      : 'digits of another script'
  const said = `${text} is written in ${name}. Write it with the digits 0 to 9: ${plain}.`
  return refusal('digits-not-plain', said, plain)
}

const MATHEMATICAL_ZERO = 0x1d7ce

/** Every script's digits stand in a row of ten, so the value is the distance from the row's start. */
function digitValue(digit: string): number {
  const code = digit.codePointAt(0)!
  if (code >= MATHEMATICAL_ZERO && code < MATHEMATICAL_ZERO + 50) {
    return (code - MATHEMATICAL_ZERO) % 10
  }
  let zero = code
  while (code - zero < 9 && /^\p{Nd}$/u.test(String.fromCodePoint(zero - 1))) zero -= 1
  return code - zero
}

const LEADING_DASH = new RegExp(`^[${DASHES}][${BLANKS}]*`)

function negative(text: string): Refusal | null {
  if (!LEADING_DASH.test(text)) return null
  const plain = text.replace(LEADING_DASH, '')
  return refusal(
    'length-negative',
    `A length is never less than nothing. Write ${plain}, and say which side it lies on in words, such as from left or south.`,
    plain,
  )
}

function negativeNumber(text: string): Refusal | null {
  if (!LEADING_DASH.test(text)) return null
  const plain = text.replace(LEADING_DASH, '')
  const said = `${text} is less than nothing, and no number here is. Write ${plain}, or leave it out.`
  return refusal('number-unreadable', said)
}

function comma(text: string): Refusal | null {
  const found = /(?<![0-9])([0-9]+),([0-9]+)/.exec(text)
  if (found === null) return null
  const apart = text.replace(',', ', ')
  const point = text.replace(',', '.')
  if (/[,.][0-9]*[,.]/.test(text)) return twoSeparators(text)
  if (found[2]!.length === 3 && found[1]!.length <= 3) {
    return twoValues(text, text.replace(',', ''), point)
  }
  const said = `A comma parts entries and never stands in a number. Write ${point}, or ${apart} if these are two entries.`
  return refusal('comma-in-number', said, /(?:mm|cm|m)$/i.test(text) ? point : null)
}

function twoValues(text: string, one: string, other: string): Refusal {
  const said = `${text} is ${one} to some and ${other} to others. A number has no comma: write ${one} or ${other}.`
  return refusal('comma-in-number', said, null, [one, other])
}

/** `1.234,5`: either sign may part the whole from the rest, and the other one the thousands. */
function twoSeparators(text: string): Refusal {
  const byPoint = text.replace(/,/g, '')
  const byComma = text.replace(/\./g, '').replace(',', '.')
  const isPlain = (value: string): boolean => !/[,.].*[,.]/.test(value)
  if (byPoint !== byComma && isPlain(byPoint) && isPlain(byComma)) {
    return twoValues(text, byComma, byPoint)
  }
  const said = `${text} has more than one comma or point. A number has no comma and at most one point: 1234.5.`
  return refusal('comma-in-number', said)
}

function point(text: string): Refusal | null {
  if (/\.[0-9]*\./.test(text)) {
    return refusal('point-astray', `${text} has two points. A number has at most one: 1234.5.`)
  }
  if (!/(?:^|[^0-9])\.[0-9]|[0-9]\.(?![0-9])/.test(text)) return null
  const whole = text.replace(/(^|[^0-9])\.(?=[0-9])/g, '$10.').replace(/([0-9])\.(?![0-9])/g, '$1')
  const said = `A point is easily overlooked, so it has a digit on each side. Write ${whole}.`
  return refusal('point-astray', said, whole)
}
