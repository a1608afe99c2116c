import { isOnTape } from './fraction-refusals.ts'
import { NM_PER_64TH, NM_PER_FOOT } from './length.ts'
import { readDecimal, wholeNumber } from './number.ts'
import { printLength } from './print.ts'
import { multiply, type Ratio, ratio } from './ratio.ts'
import { roundRatio } from './round.ts'
import type { TapeOptions } from './tape.ts'
import { amountOf } from './tape-amount.ts'
import type { Piece } from './tape-pieces.ts'
import { type Refusal, refusal } from './tape-refusals.ts'

/** A reading whose pieces are sound one by one and make no length together. */
interface Odd {
  readonly text: string
  readonly pieces: readonly Piece[]
  readonly options: TapeOptions
}

type Explain = (odd: Odd) => Refusal

/** What a shape most likely was meant to be; the first that fits speaks. */
const EXPLAINED: readonly (readonly [RegExp, Explain])[] = [
  [/\?/, unreadable],
  [/^n'-?(?:n|d|f|v|n-?f|nv)$/, inchMarkMissing],
  [/^n'-?(?:n|d|n-?f|nv)"$/, pastTwelve],
  [/^[nd](?:-?f|v)?"n'$/, feetAfterInches],
  [/^n'-?n'$/, footMarkTwice],
  [/^d'./, decimalFeet],
  [/^n(?:-?f|v)'$|^[fv]'$/, fractionOfFoot],
  [/^d-?[fv]"?$|u$/, mixed],
  [/^n-?(?:n|d|n-?f|nv)["']?$/, twoNumbers],
  [/^(?:n|d|f|v|n-?f|nv)$/, withoutUnit],
]

/** Why a reading whose pieces are sound cannot be taken as they stand together. */
export function refuseShape(text: string, pieces: readonly Piece[], options: TapeOptions): Refusal {
  const shape = pieces.map((piece) => piece.kind).join('')
  const explain = EXPLAINED.find(([pattern]) => pattern.test(shape))?.[1] ?? unreadable
  return explain({ text, pieces, options })
}

function textAt({ pieces }: Odd, index: number): string {
  return pieces.at(index)?.text ?? ''
}

/** The amounts among some of the pieces, without marks: `4 1/2`. */
function amount({ pieces }: Odd, from: number, to = pieces.length): string {
  const amounts = pieces.slice(from, to).filter((piece) => /[ndfv]/.test(piece.kind))
  return amounts.map((piece) => piece.text).join(' ')
}

function inchMarkMissing(odd: Odd): Refusal {
  const feet = textAt(odd, 0)
  const inches = amount(odd, 2)
  const fix = `${feet}' ${inches}"`
  const said =
    `The ${inches} has no mark: ${fix}, or two entries that lost their comma, ${feet}', ${inches}? ` +
    'Bare inches need "bare inches" on the units line.'
  return refusal('inch-mark-missing', said, fix)
}

function pastTwelve(odd: Odd): Refusal {
  const feet = textAt(odd, 0)
  const inches = amount(odd, 2)
  const whole = /^[0-9]+/.exec(inches)![0]
  const total = BigInt(feet) * 12n + BigInt(whole)
  const same = `${total / 12n}' ${total % 12n}${inches.slice(whole.length)}"`
  const said = `Inches after feet stay below 12, and ${odd.text} has ${whole}. ${same} is the same.`
  const slips = whole === inches ? slipsOf(feet, whole) : []
  const could = slips.length === 0 ? '' : ` A slip could be ${slips.join(' or ')}.`
  return refusal('inches-past-twelve', said + could, null, [same, ...slips])
}

/** A digit typed before the inches, or a slash lost in a fraction: `5' 14"`. */
function slipsOf(feet: string, inches: string): readonly string[] {
  const [first, second] = [inches.charAt(0), inches.charAt(1)]
  if (inches.length !== 2) return []
  const isFraction = first === '1' && isOnTape(BigInt(second))
  return [`${feet}' ${second}"`, ...(isFraction ? [`${feet}' ${first}/${second}"`] : [])]
}

function feetAfterInches(odd: Odd): Refusal {
  const first = amount(odd, 0, odd.pieces.length - 2)
  const last = textAt(odd, -2)
  const asFeet = isInches(last) ? [`${first}' ${last}"`] : []
  const otherWay = isInches(first) ? [`${last}' ${first}"`] : []
  const exchanged = asFeet.map((length) => ` Marks exchanged? ${length}.`).join('')
  const turned = otherWay.map((length) => ` The other order? ${length}.`).join('')
  const two = ` Two entries that lost their comma? ${first}", ${last}'.`
  const said = `Feet come before inches.${exchanged}${turned}${two}`
  return refusal('feet-after-inches', said, null, [...asFeet, ...otherWay])
}

/** Whether an amount can stand after feet: inches below 12. */
function isInches(amount: string): boolean {
  return BigInt(/^[0-9]+/.exec(amount)?.[0] ?? '12') < 12n
}

function footMarkTwice(odd: Odd): Refusal {
  const fix = `${textAt(odd, 0)}' ${amount(odd, 2)}"`
  return refusal('foot-mark-twice', `Two foot marks. ${fix}?`, fix)
}

function decimalFeet(odd: Odd): Refusal {
  const feet = `${textAt(odd, 0)}'`
  const said = `${feet} holds its inches already, as a decimal. Write ${feet} alone, or whole feet and inches.`
  return refusal('length-mixed', said)
}

function fractionOfFoot(odd: Odd): Refusal {
  const said = `A fraction follows inches, not feet. ${amount(odd, 0)}"? Or feet and inches: ${inFeet(odd)}.`
  return refusal('length-mixed', said)
}

/** To the nearest 1/64 in. */
function inFeet({ pieces }: Odd): string {
  const steps = roundRatio(
    multiply(amountOf(pieces), ratio(SIXTY_FOURTHS_PER_FOOT)),
    'half to even',
  )
  const feet = steps / SIXTY_FOURTHS_PER_FOOT
  const inches = printLength(wholeNumber(steps % SIXTY_FOURTHS_PER_FOOT) * NM_PER_64TH, 'inches')
  return feet === 0n ? inches : `${feet}' ${inches}`
}

const SIXTY_FOURTHS_PER_FOOT = 768n

function mixed({ text }: Odd): Refusal {
  const said = `${text} mixes two ways of writing a number. Use inches and a fraction, such as 4 1/2", or a decimal, such as 3.76 m.`
  return refusal('length-mixed', said)
}

function twoNumbers(odd: Odd): Refusal {
  const [first, second] = [textAt(odd, 0), amount(odd, 1)]
  const feet = `${first}' ${second}"`
  const said = `${odd.text} reads two ways: ${feet}, or two entries, ${first} and ${second}. Write ${feet}, or a comma between them.`
  return refusal('length-two-ways', said, null, [feet])
}

/** A number with no unit in force: both readings that the file's style makes likely. */
function withoutUnit({ text, pieces, options }: Odd): Refusal {
  const { style } = options
  const unit = style === 'feet-inches' ? 'inches' : style
  const remedy = `A bare number needs "bare ${unit}" on the units line.`
  const decimal = pieces.length === 1 && pieces[0]!.kind === 'd' ? readDecimal(text) : null
  const isDecimalFeet = style === 'feet-inches' && decimal !== null
  const both = isDecimalFeet ? decimalReadings(text) : readings(text, style)
  const about = isDecimalFeet ? ` (about ${inFeetAndInches(decimal)})` : ''
  const said = `${text} reads two ways: ${both[0]}, or ${both[1]}${about}. ${remedy}`
  return refusal('length-two-ways', said, null, both)
}

function readings(text: string, style: TapeOptions['style']): readonly [string, string] {
  if (style === 'mm' || style === 'm') return [`${text} ${style}`, `${text} cm`]
  if (style === 'cm') return [`${text} cm`, `${text} mm`]
  return [`${text}"`, /^[0-9]+$/.test(text) ? `${text}'` : `${text} cm`]
}

/** `12.4`: feet and inches with a point for the foot mark, or decimal feet. */
function decimalReadings(text: string): readonly [string, string] {
  const [feet, inches] = text.split('.') as [string, string]
  return [BigInt(inches) < 12n ? `${feet}' ${inches}"` : `${text}"`, `${text}'`]
}

function inFeetAndInches(feet: Ratio): string {
  const nm = roundRatio(multiply(feet, ratio(NM_PER_FOOT)), 'half to even')
  return printLength(wholeNumber(nm), 'feet-inches')
}

function unreadable({ text }: Odd): Refusal {
  const said = `${text} is no length that can be read. Write it such as 12' 4 1/2", 148 1/2", 12.375' or 3.76 m.`
  return refusal('length-unreadable', said)
}
