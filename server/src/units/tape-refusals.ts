import { NM_PER_FOOT, NM_PER_INCH } from './length.ts'
import { MOST_DIGITS, readDecimal, wholeNumber } from './number.ts'
import { printLength } from './print.ts'
import { multiply, type Ratio, ratio } from './ratio.ts'
import { roundRatio } from './round.ts'
import { BLANKS, DASHES, vulgarFraction } from './signs.ts'
import type { TapeOptions } from './tape.ts'
import type { Piece } from './tape-pieces.ts'

/** Why a reading is not taken, in whole sentences, and the text that is surely meant, if any. */
export interface Refusal {
  readonly code: string
  readonly text: string
  readonly fix: string | null
}

const refusal = (code: string, text: string, fix: string | null = null): Refusal => ({
  code,
  text,
  fix,
})

/** What can be refused before the reading is taken apart: its length, its digits, its signs. */
export function refuseText(text: string): Refusal | null {
  const shown = text.length > 60 ? `${text.slice(0, 60)}…` : text
  if (text.length > 200 || /[0-9]{41}/.test(text.replace(/[.,]/g, ''))) {
    return refusal(
      'number-too-long',
      `${shown} has more than ${MOST_DIGITS} digits. A length on a tape has a few.`,
    )
  }
  return foreignDigits(text) ?? negative(text) ?? comma(text) ?? point(text)
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

/** Every script's digits stand in a row of ten, so the value is the distance from the row's start. */
function digitValue(digit: string): number {
  const code = digit.codePointAt(0)!
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

function comma(text: string): Refusal | null {
  const found = /([0-9]+),([0-9]+)/.exec(text)
  if (found === null) return null
  if (/,[0-9]*,|\.[0-9]*,|,[0-9]*\./.test(text)) {
    return refusal(
      'comma-in-number',
      `${text} has commas and points that some read one way and some another. A number has no comma and at most one point: 1234.5.`,
    )
  }
  const point = text.replace(',', '.')
  if (found[2]!.length === 3 && found[1]!.length <= 3) {
    return refusal(
      'comma-in-number',
      `${text} is ${text.replace(',', '')} to some and ${point} to others. A number has no comma: write ${text.replace(',', '')} or ${point}.`,
    )
  }
  const apart = text.replace(',', ', ')
  return refusal(
    'comma-in-number',
    `A comma parts entries and never stands in a number. Write ${point}, or ${apart} if these are two entries.`,
    /(?:mm|cm|m)$/i.test(text) ? point : null,
  )
}

function point(text: string): Refusal | null {
  if (/[0-9]*\.[0-9]*\./.test(text)) {
    return refusal('point-astray', `${text} has two points. A number has at most one: 1234.5.`)
  }
  if (!/(?:^|[^0-9])\.[0-9]|[0-9]\.(?![0-9])/.test(text)) return null
  const whole = text.replace(/(^|[^0-9])\.(?=[0-9])/g, '$10.').replace(/([0-9])\.(?![0-9])/g, '$1')
  const said = `A point is easily overlooked, so it has a digit on each side. Write ${whole}.`
  return refusal('point-astray', said, whole)
}

/** Fractions that are on no tape, and those whose blank was lost. */
export function fractionRefused(text: string, pieces: readonly Piece[]): Refusal | null {
  for (const piece of pieces) {
    if (piece.kind !== 'f' && piece.kind !== 'v') continue
    const refused = piece.kind === 'v' ? vulgarRefused(text, piece) : slashRefused(text, piece)
    if (refused !== null) return refused
  }
  return null
}

function vulgarRefused(text: string, piece: Piece): Refusal | null {
  const [over, under] = vulgarFraction(piece.text)!
  return isOnTape(under) ? null : offTape(text, piece, ratio(over, under))
}

function slashRefused(text: string, piece: Piece): Refusal | null {
  const parts = piece.text.split(/[^0-9]/)
  if (parts.length !== 2 || parts[1] === '' || /^0+$/.test(parts[1]!)) {
    return refusal(
      'fraction-not-on-tape',
      `${piece.text} is no fraction. A fraction of an inch is written such as 7/16.`,
    )
  }
  const over = BigInt(parts[0]!)
  const under = BigInt(parts[1]!)
  if (over >= under) return tooLarge(text, piece, parts as [string, string])
  return under <= 64n && isOnTape(wholeNumber(under))
    ? null
    : offTape(text, piece, ratio(over, under))
}

function isOnTape(under: number): boolean {
  return under === 2 || under === 4 || under === 8 || under === 16 || under === 32 || under === 64
}

/** `41/2`: each place where the blank may have been lost, tried; else the fraction carried over. */
function tooLarge(text: string, piece: Piece, [over, under]: [string, string]): Refusal {
  const splits: string[] = []
  for (let cut = 1; cut < over.length; cut += 1) {
    const fraction = over.slice(cut)
    const proper = !fraction.startsWith('0') && BigInt(fraction) < BigInt(under)
    if (proper && /^(?:2|4|8|16|32|64)$/.test(under)) {
      splits.push(text.replace(piece.text, `${over.slice(0, cut)} ${fraction}/${under}`))
    }
  }
  if (splits.length > 0) {
    const said = `${piece.text} is no fraction of an inch. A blank lost? ${splits.join(', or ')}.`
    return refusal('fraction-too-large', said, splits.length === 1 ? splits[0]! : null)
  }
  return refusal(
    'fraction-too-large',
    `${piece.text} is an inch or more. A fraction is less than one: its inches stand before it, such as 3 1/4".`,
  )
}

function offTape(text: string, piece: Piece, value: Ratio): Refusal {
  const finest = multiply(value, ratio(32n))
  const marks = (['down', 'up'] as const).map((way) => {
    const nm = wholeNumber(roundRatio(finest, way)) * (NM_PER_INCH / 32)
    return printLength(nm, 'inches')
  })
  const thousandths = roundRatio(multiply(value, ratio(1000n)), 'half to even')
  const decimal = `.${thousandths.toString().padStart(3, '0')}`
  const before = text.slice(0, text.indexOf(piece.text)).trimEnd()
  const drawn = `${/[0-9]$/.test(before) ? before : `${before} 0`.trimStart()}${decimal}"`
  return refusal(
    'fraction-not-on-tape',
    `A tape has halves, quarters, eighths and so on to 64ths, and no ${piece.text}. ` +
      `Nearest marks ${marks[0]} and ${marks[1]}; from a drawing write ${drawn}.`,
  )
}

/** Why a reading whose pieces are sound cannot be taken as they stand together. */
export function refuseShape(text: string, pieces: readonly Piece[], options: TapeOptions): Refusal {
  const shape = pieces.map((piece) => piece.kind).join('')
  const at = (index: number): string => pieces[index]?.text ?? ''
  const inches = (from: number, to = pieces.length): string =>
    pieces
      .slice(from, to)
      .filter((piece) => /[ndfv]/.test(piece.kind))
      .map((piece) => piece.text)
      .join(' ')

  if (/^n'-?(?:n|d|f|v|n-?f|nv)$/.test(shape)) return inchMark(at(0), inches(2))
  if (/^n'-?(?:n|d|n-?f|nv)"$/.test(shape)) return pastTwelve(at(0), inches(2), text)
  if (/^[nd](?:-?f|v)?"n'$/.test(shape)) {
    const fix = `${at(pieces.length - 2)}' ${inches(0, pieces.length - 2)}"`
    const said = `Feet come before inches. Marks exchanged? ${at(0)}' ${at(pieces.length - 2)}". The other order? ${fix}.`
    return refusal('feet-after-inches', said)
  }
  if (/^n'-?n'$/.test(shape)) {
    const fix = `${at(0)}' ${inches(2)}"`
    return refusal('foot-mark-twice', `Two foot marks. ${fix}?`, fix)
  }
  if (/^d'/.test(shape) && shape.length > 2) {
    const said = `${at(0)}' holds its inches already, as a decimal. Write ${at(0)}' alone, or whole feet and inches.`
    return refusal('length-mixed', said)
  }
  if (/^n(?:-?f|v)'$|^[fv]'$/.test(shape)) {
    const feet = inches(0)
    const said = `A fraction follows inches, not feet. ${feet}"? Or feet and inches: ${halfFoot(pieces)}.`
    return refusal('length-mixed', said)
  }
  if (/^d-?[fv]"?$/.test(shape) || /u$/.test(shape)) {
    const said = `${text} mixes two ways of writing a number. Use inches and a fraction, such as 4 1/2", or a decimal, such as 3.76 m.`
    return refusal('length-mixed', said)
  }
  if (/^n-?n["']?$/.test(shape)) return twoNumbers(at(0), inches(1), text)
  if (/^(?:n|d|f|v|n-?f|nv)$/.test(shape)) return withoutUnit(text, pieces, options)
  return refusal(
    'length-unreadable',
    `${text} is no length that can be read. Write it such as 12' 4 1/2", 148 1/2", 12.375' or 3.76 m.`,
  )
}

function inchMark(feet: string, inches: string): Refusal {
  const fix = `${feet}' ${inches}"`
  return refusal(
    'inch-mark-missing',
    `The ${inches} has no mark: ${fix}, or two entries that lost their comma, ${feet}', ${inches}? Bare inches need "bare inches" on the units line.`,
    fix,
  )
}

function pastTwelve(feet: string, inches: string, text: string): Refusal {
  const whole = /^[0-9]+/.exec(inches)![0]
  const rest = inches.slice(whole.length)
  const total = BigInt(feet) * 12n + BigInt(whole)
  const same = `${total / 12n}' ${total % 12n}${rest}"`
  const slips =
    whole.length === 2 && rest === ''
      ? ` A slip could be ${feet}' ${whole[1]}"${whole[0] === '1' && isOnTape(wholeNumber(BigInt(whole[1]!))) ? ` or ${feet}' ${whole[0]}/${whole[1]}"` : ''}.`
      : ''
  return refusal(
    'inches-past-twelve',
    `Inches after feet stay below 12, and ${text} has ${whole}. ${same} is the same.${slips}`,
  )
}

function halfFoot(pieces: readonly Piece[]): string {
  const [first] = pieces
  const value = pieces.filter((piece) => piece.kind === 'f' || piece.kind === 'v')[0]!
  const [over, under] =
    value.kind === 'v' ? vulgarFraction(value.text)! : value.text.split(/[^0-9]/).map(BigInt)
  const feet = first!.kind === 'n' ? BigInt(first!.text) : 0n
  const inches = roundRatio(
    multiply(ratio(BigInt(over!), BigInt(under!)), ratio(NM_PER_FOOT)),
    'half to even',
  )
  return printLength(wholeNumber(feet) * NM_PER_FOOT + wholeNumber(inches), 'feet-inches', 64)
}

function twoNumbers(first: string, second: string, text: string): Refusal {
  const feet = `${first}' ${second}"`
  return refusal(
    'length-two-ways',
    `${text} reads two ways: ${feet}, or two entries, ${first} and ${second}. Write ${feet}, or a comma between them.`,
  )
}

/** A number with no unit in force: both readings that the file's style makes likely. */
function withoutUnit(text: string, pieces: readonly Piece[], options: TapeOptions): Refusal {
  const bare = `A bare number needs "bare ${options.style === 'feet-inches' ? 'inches' : options.style}" on the units line.`
  if (options.style === 'mm' || options.style === 'cm' || options.style === 'm') {
    const other = options.style === 'm' ? 'cm' : options.style === 'cm' ? 'mm' : 'cm'
    const said = `${text} has no unit: ${text} ${options.style}, or ${text} ${other}? ${bare}`
    return refusal('length-two-ways', said)
  }
  const number = pieces.length === 1 && pieces[0]!.kind === 'd' ? readDecimal(text) : null
  if (number === null || options.style === 'inches') {
    const feet = /^[0-9]+$/.test(text) ? `${text}'` : `${text} mm`
    return refusal('length-two-ways', `${text} has no unit: ${text}", or ${feet}? ${bare}`)
  }
  return refusal('length-two-ways', `${text} reads two ways: ${asFeet(text, number)} ${bare}`)
}

function asFeet(text: string, value: Ratio): string {
  const [feet, inches] = text.split('.') as [string, string]
  const nm = roundRatio(multiply(value, ratio(NM_PER_FOOT)), 'half to even')
  const about = nm < 10n ** 15n ? ` (about ${printLength(wholeNumber(nm), 'feet-inches')})` : ''
  const first = BigInt(inches) < 12n ? `${feet}' ${inches}", or ${text}'` : `${text}", or ${text}'`
  return `${first}${about}. Write the one you mean.`
}
