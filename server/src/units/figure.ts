import { BLANKS, DASHES, FOOT_MARKS, INCH_MARKS, SLASHES, VULGAR } from './signs.ts'

/**
 * Where a figure ends: everything that looks like one reading, right or wrong, is one figure, so that
 * a slip inside it gets one message (`12' 4`, `12,4 m`, `12' 41/2"`). Digits of any script are taken
 * here and refused by name later. Linear: no two blank runs stand side by side in the pattern.
 */
const BLANK = `[${BLANKS}]`
const ENDS = `(?![\\p{L}\\p{Nd}_])`
const AMOUNT =
  `(?:\\p{Nd}+(?:[${SLASHES}]\\p{Nd}*)+|\\p{Nd}+(?:[.,]\\p{Nd}+)*(?:\\.(?!\\.))?|\\.\\p{Nd}+)[${VULGAR}]*` +
  `|[${VULGAR}]+(?:[${SLASHES}]\\p{Nd}*)*`
const RUN = `(?:${AMOUNT})(?:(?:${BLANK}+|[${DASHES}])(?:${AMOUNT}))*`
const FOOT = `${BLANK}*(?:[${FOOT_MARKS}](?![${FOOT_MARKS}])|(?:ft|feet|foot)${ENDS})`
const INCH = `${BLANK}*(?:[${FOOT_MARKS}]{2}|[${INCH_MARKS}]|(?:inches|inch|in)${ENDS})`
const METRIC = `${BLANK}*(?:mm|cm|m)${ENDS}`
const OTHER = `${BLANK}*(?:%|[°º]|degrees?${ENDS})`
/** A bare number ends before a letter only where that is the `x` of a size. */
const BARE_ENDS = `(?!(?![xX×]${BLANK}*[\\p{Nd}.${VULGAR}])[\\p{L}\\p{Nd}_])`
const MARK = `(?:${INCH}|${FOOT}|${METRIC})`
const AFTER_FEET = `(?:${BLANK}*(?:[${DASHES}]${BLANK}*)?(?:${RUN})(?:${MARK}|${BARE_ENDS}))?`
const AFTER_INCHES = `(?:${BLANK}*(?:${RUN})${FOOT})?`

const FIGURE = new RegExp(
  `[${DASHES}]?(?:${RUN})(?:${INCH}${AFTER_INCHES}|${FOOT}${AFTER_FEET}|${METRIC}|${OTHER}|${BARE_ENDS})`,
  'iuy',
)

/** The offset just past the figure that starts at `offset`, or `offset` when none does. */
export function endOfFigure(text: string, offset: number): number {
  FIGURE.lastIndex = offset
  return FIGURE.test(text) ? FIGURE.lastIndex : offset
}

/** What kind of figure a text is, by its marks alone. `bare` has none. */
export type FigureKind = 'length' | 'bare' | 'percent' | 'angle' | 'date'

const LENGTH_MARK = new RegExp(`[${FOOT_MARKS}${INCH_MARKS}]|[a-z]`, 'iu')

export function kindOfFigure(text: string): FigureKind {
  if (/^[0-9]{4}-[0-9]{2}-[0-9]{2}$/.test(text)) return 'date'
  if (text.endsWith('%')) return 'percent'
  if (/(?:[°º]|degrees?)$/iu.test(text)) return 'angle'
  return LENGTH_MARK.test(text) ? 'length' : 'bare'
}
