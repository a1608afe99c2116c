/**
 * The characters that tape notation is made of, as the insides of regular expression classes: what
 * keyboards, phones and word processors put for the same sign. All are one UTF-16 unit long.
 */

/** Blanks: tab, space, no-break, the narrow and wide ones. */
export const BLANKS = '\\t \\u00a0\\u1680\\u2000-\\u200a\\u202f\\u205f\\u3000'
/** Foot marks: straight, typographic, prime. Two of them in a row are an inch mark. */
export const FOOT_MARKS = "'\\u2018\\u2019\\u2032\\u02b9\\u02bc\\uff07"
export const INCH_MARKS = '"\\u201c\\u201d\\u2033\\u02ba\\uff02'
export const DASHES = '\\-\\u2010\\u2011\\u2013\\u2212'
/** Slash, fraction slash, division slash. */
export const SLASHES = '/\\u2044\\u2215'

const NAMED_FRACTIONS: ReadonlyMap<string, readonly [number, number]> = new Map([
  ['½', [1, 2]],
  ['¼', [1, 4]],
  ['¾', [3, 4]],
  ['⅛', [1, 8]],
  ['⅜', [3, 8]],
  ['⅝', [5, 8]],
  ['⅞', [7, 8]],
  ['⅓', [1, 3]],
  ['⅔', [2, 3]],
  ['⅕', [1, 5]],
  ['⅖', [2, 5]],
  ['⅗', [3, 5]],
  ['⅘', [4, 5]],
  ['⅙', [1, 6]],
  ['⅚', [5, 6]],
  ['⅐', [1, 7]],
  ['⅑', [1, 9]],
  ['⅒', [1, 10]],
])

/** The fractions that are one character. */
export const VULGAR = [...NAMED_FRACTIONS.keys()].join('')

/** Numerator and denominator of a one-character fraction, or null. */
export function vulgarFraction(sign: string): readonly [number, number] | null {
  return NAMED_FRACTIONS.get(sign) ?? null
}

/** What an input method of East Asian scripts puts for a plain sign: as wide as two. */
export const FULL_WIDTH = '\\uff01-\\uff5e'

const ONE_FULL_WIDTH = new RegExp(`[${FULL_WIDTH}]`, 'g')
const TO_PLAIN = 0xfee0

/** A text with plain signs in place of those of full width. */
export function plainSigns(text: string): string {
  return text.replace(ONE_FULL_WIDTH, (sign) => String.fromCharCode(sign.charCodeAt(0) - TO_PLAIN))
}
