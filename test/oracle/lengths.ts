import { plus, type Ratio, ratio, round, times, ZERO } from './ratio.ts'

/** Whole nanometres. */
export type Nm = bigint

export const INCH = 25_400_000n
export const FOOT = 12n * INCH
const MILLIMETRE = 1_000_000n

const UNITS: readonly (readonly [RegExp, bigint])[] = [
  [/^(?:'|ft|foot|feet)$/i, FOOT],
  [/^(?:"|in|inch|inches)$/i, INCH],
  [/^mm$/i, MILLIMETRE],
  [/^cm$/i, 10n * MILLIMETRE],
  [/^m$/i, 1000n * MILLIMETRE],
]

const NUMBER = String.raw`\d+(?:\.\d+)?(?:(?: |-)\d+/\d+)?|\d+/\d+`
const UNIT = String.raw`('|"|(?:feet|foot|ft|inches|inch|in|mm|cm|m)\b)`
const PART = new RegExp(`^(${NUMBER})(?: ?${UNIT}(?: |-|(?=\\d)|$)| |$)`, 'i')
const GLYPHS: readonly (readonly [string, string])[] = [
  ['½', '1/2'],
  ['¼', '1/4'],
  ['¾', '3/4'],
  ['⅛', '1/8'],
  ['⅜', '3/8'],
  ['⅝', '5/8'],
  ['⅞', '7/8'],
]

/** Typographic marks, primes and fraction signs as they stand on a keyboard. */
export function plainMarks(text: string): string {
  const straight = text
    .replace(/[\u2032\u2019\u2018\u02b9]/g, "'")
    .replace(/''|[\u2033\u201d\u201c\u02ba]/g, '"')
    .replace(/\u2044/g, '/')
    .replace(/[\t\u00a0\u202f\u2009]/g, ' ')
  return GLYPHS.reduce((said, [glyph, written]) => said.replaceAll(glyph, ` ${written}`), straight)
    .replace(/ +/g, ' ')
    .trim()
}

/** A length as written, such as `12' 4 1/2"`, or null. `bare` is what a number alone counts. */
export function readLength(text: string, bare: bigint | null = null): Nm | null {
  let rest = plainMarks(text)
  let length = ZERO
  let last: bigint | null = null
  if (rest === '') return null
  while (rest !== '') {
    const part = PART.exec(rest)
    if (part === null) return null
    const unit: bigint | null = part[2] === undefined ? bareAfter(last, bare) : unitOf(part[2])
    if (unit === null || (last !== null && !(last === FOOT && unit === INCH))) return null
    length = plus(length, times(readNumber(part[1] ?? ''), ratio(unit)))
    last = unit
    rest = rest.slice(part[0].length)
  }
  return length.d === 1n ? round(length) : null
}

/** A number without a unit is what the file's units line says, and after feet only inches. */
function bareAfter(last: bigint | null, bare: bigint | null): bigint | null {
  return last === null || (last === FOOT && bare === INCH) ? bare : null
}

export function unitOf(mark: string): bigint | null {
  return UNITS.find(([written]) => written.test(mark))?.[1] ?? null
}

/** `4`, `4.5`, `1/2`, `4 1/2` or `4-1/2`. */
export function readNumber(text: string): Ratio {
  const [, whole = '0', decimals = '', upper = '0', lower = '1'] =
    /^(?:(\d+)(?:\.(\d+))?)?(?:(?:^|[ -])(\d+)\/(\d+))?$/.exec(text.trim()) ?? []
  const decimal = ratio(BigInt(whole + decimals), 10n ** BigInt(decimals.length))
  return plus(decimal, ratio(BigInt(upper), BigInt(lower)))
}
