import type { IToken } from 'chevrotain'
import type { Nm } from '../units/length.ts'
import { readDecimal } from '../units/number.ts'
import type { Ratio } from '../units/ratio.ts'
import { readLength } from '../units/tape.ts'
import { type Refusal, refuseNumber } from '../units/tape-refusals.ts'
import type { FigureWanted } from './forms.ts'
import { endOfToken, type RawMeasure } from './grammar.ts'
import type { MeasureItem } from './match.ts'
import { type Reading, sayError, shown, spanOf } from './reading.ts'
import type { Figure, Measure } from './tree.ts'

/** Reads the figure of a measure as the form wants it. Null when it is refused; that is said. */
export function readMeasure(
  item: MeasureItem,
  wanted: FigureWanted,
  base: number,
  reading: Reading,
): Measure | null {
  const figure = readFigure(item.measure, wanted, base, reading)
  const within = item.measure.within
  const worth = within === null ? null : lengthOf(within, base, reading)
  if (figure === null || (within !== null && worth === null)) return null
  return {
    span: spanOf(reading, base + item.start, base + item.end),
    figure,
    about: item.measure.about !== null,
    within: worth,
    doubtful: item.measure.doubt !== null,
  }
}

function readFigure(
  measure: RawMeasure,
  wanted: FigureWanted,
  base: number,
  reading: Reading,
): Figure | null {
  const { first } = measure
  const text = first.image
  if (first.tokenType.name === 'asked') return { kind: 'asked', text: '?' }
  switch (wanted) {
    case 'LENGTH': {
      const nm = lengthOf(first, base, reading)
      return nm === null ? null : { kind: 'length', nm, text }
    }
    case 'SIZE':
      return sizeOf(first, measure.by!, base, reading)
    case 'COUNT': {
      const value = numberOf(first, text, base, reading)
      if (value === null || value.d === 1n) return value && { kind: 'number', value, text }
      return notWhole(first, value, base, reading)
    }
    case 'NUMBER': {
      const value = numberOf(first, text, base, reading)
      return value && { kind: 'number', value, text }
    }
    case 'PERCENT': {
      const value = numberOf(first, text.slice(0, -1).trimEnd(), base, reading)
      return value && { kind: 'percent', value, text }
    }
    case 'ANGLE': {
      const degrees = numberOf(first, text.replace(/[^0-9]+$/, ''), base, reading)
      return degrees && { kind: 'angle', degrees, text }
    }
    case 'DATE':
      return dateOf(first, base, reading)
  }
}

function placeOf(token: IToken, base: number) {
  return { start: base + token.startOffset, end: base + endOfToken(token) }
}

function lengthOf(token: IToken, base: number, reading: Reading): Nm | null {
  const { nm, refusal } = readLength(token.image, reading.tape)
  return refusal === null ? nm : refuse(token, refusal, base, reading)
}

function refuse(token: IToken, { code, text, fix }: Refusal, base: number, reading: Reading): null {
  const place = placeOf(token, base)
  const repair = fix === null ? null : { ...place, title: `Write ${shown(fix)}`, text: fix }
  sayError(reading, code, place, text, repair)
  return null
}

function sizeOf(first: IToken, second: IToken, base: number, reading: Reading): Figure | null {
  const a = lengthOf(first, base, reading)
  const b = lengthOf(second, base, reading)
  if (a === null || b === null) return null
  const text = reading.text.slice(base + first.startOffset, base + endOfToken(second))
  return { kind: 'size', nm: [a, b], text }
}

function numberOf(token: IToken, text: string, base: number, reading: Reading): Ratio | null {
  const refusal = refuseNumber(text)
  if (refusal !== null) return refuse(token, refusal, base, reading)
  const value = readDecimal(text)
  if (value !== null) return value
  const said = `${shown(text)} is no number that can be read here. A number has the digits 0 to 9, no comma and at most one point: 1250 or 12.5.`
  sayError(reading, 'number-unreadable', placeOf(token, base), said)
  return null
}

function notWhole(token: IToken, value: Ratio, base: number, reading: Reading): null {
  const below = value.n / value.d
  const said = `${token.image} is not a whole number, and this is counted in whole ones. ${below} or ${below + 1n}?`
  sayError(reading, 'number-not-whole', placeOf(token, base), said)
  return null
}

const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31]

/** How many days a month has (ISO 8601: every fourth year is a leap year, of full hundreds every fourth). */
function daysOf(year: bigint, month: bigint): number | undefined {
  const isLeap = year % 4n === 0n && (year % 100n !== 0n || year % 400n === 0n)
  return isLeap && month === 2n ? 29 : DAYS.find((_, index) => BigInt(index + 1) === month)
}

/** Dates are text and are never reckoned with; a day that no calendar has is a slip all the same. */
function dateOf(token: IToken, base: number, reading: Reading): Figure | null {
  const [year, month, day] = token.image.split('-').map((part) => readDecimal(part)!.n)
  const days = daysOf(year!, month!)
  if (days !== undefined && day! >= 1n && day! <= BigInt(days)) {
    return { kind: 'date', text: token.image }
  }
  const said = `${token.image} is no day of the calendar. A date is written year, month, day: 2027-04-12.`
  sayError(reading, 'date-unreadable', placeOf(token, base), said)
  return null
}
