import { NM_PER_INCH } from './length.ts'
import { wholeNumber } from './number.ts'
import { printLength } from './print.ts'
import { multiply, type Ratio, ratio } from './ratio.ts'
import { roundRatio } from './round.ts'
import { vulgarFraction } from './signs.ts'
import type { Piece } from './tape-pieces.ts'
import { type Refusal, refusal } from './tape-refusals.ts'

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

/** The parts that a tape's inch is cut into. */
export function isOnTape(under: number): boolean {
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
  const said =
    `A tape has halves, quarters, eighths and so on to 64ths, and no ${piece.text}. ` +
    `Nearest marks ${marksAround(value).join(' and ')}; from a drawing write ${asDecimal(text, piece, value)}.`
  return refusal('fraction-not-on-tape', said)
}

/** The marks below and above: 1/32 in apart, or 1/64 in where the fraction is finer than that. */
function marksAround(value: Ratio): readonly string[] {
  const parts = value.d > 64n ? 64 : 32
  return (['down', 'up'] as const).map((way) => {
    const steps = roundRatio(multiply(value, ratio(parts)), way)
    return printLength(wholeNumber(steps) * (NM_PER_INCH / parts), 'inches')
  })
}

function asDecimal(text: string, piece: Piece, value: Ratio): string {
  const thousandths = roundRatio(multiply(value, ratio(1000n)), 'half to even')
  const decimal = `.${thousandths.toString().padStart(3, '0')}"`
  const before = text.slice(0, text.indexOf(piece.text)).trimEnd()
  if (/[0-9]$/.test(before)) return `${before}${decimal}`
  return `${before} 0${decimal}`.trimStart()
}
