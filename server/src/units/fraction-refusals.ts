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
  for (const [index, piece] of pieces.entries()) {
    if (piece.kind !== 'f' && piece.kind !== 'v') continue
    const refused = refuseFraction(text, piece, pieces[index + 1]?.kind)
    if (refused !== null) return refused
  }
  return null
}

/** What a tape's marks have to say is of no use for a part of a foot or of a metre. */
function refuseFraction(text: string, piece: Piece, next?: Piece['kind']): Refusal | null {
  const [over, under] = termsOf(piece)
  if (under === 0n) return noFraction(piece)
  const isOfInch = next !== "'" && next !== 'u'
  if (over >= under) return isOfInch ? tooLarge(text, piece, under) : carriedOver(piece)
  return isOfInch && !isOnTape(under) ? offTape(text, piece, ratio(over, under)) : null
}

/** Numerator and denominator as they stand, not in lowest terms; 0 below where that is no fraction. */
function termsOf(piece: Piece): readonly [bigint, bigint] {
  const vulgar = vulgarFraction(piece.text)
  if (vulgar !== null) return [BigInt(vulgar[0]), BigInt(vulgar[1])]
  const [over, under, ...more] = piece.text.split(/[^0-9]/)
  return more.length > 0 ? [0n, 0n] : [BigInt(over!), BigInt(under!)]
}

function noFraction(piece: Piece): Refusal {
  const said = `${piece.text} is no fraction. A fraction of an inch is written such as 7/16.`
  return refusal('fraction-not-on-tape', said)
}

/** The parts that a tape's inch is cut into. */
const TAPE_PARTS: ReadonlySet<bigint> = new Set([2n, 4n, 8n, 16n, 32n, 64n])

export function isOnTape(under: bigint): boolean {
  return TAPE_PARTS.has(under)
}

/** `41/2`: each place where the blank may have been lost, tried; else the fraction carried over. */
function tooLarge(text: string, piece: Piece, under: bigint): Refusal {
  const [over] = piece.text.split(/[^0-9]/) as [string]
  const splits: string[] = []
  for (let cut = 1; cut < over.length; cut += 1) {
    const fraction = over.slice(cut)
    if (isOnTape(under) && !fraction.startsWith('0') && BigInt(fraction) < under) {
      splits.push(text.replace(piece.text, `${over.slice(0, cut)} ${fraction}/${under}`))
    }
  }
  if (splits.length === 0) return carriedOver(piece)
  const said = `${piece.text} is no fraction of an inch. A blank lost? ${splits.join(', or ')}.`
  return refusal('fraction-too-large', said, splits.length === 1 ? splits[0]! : null, splits)
}

function carriedOver(piece: Piece): Refusal {
  const said = `${piece.text} is an inch or more. A fraction is less than one: its inches stand before it, such as 3 1/4".`
  return refusal('fraction-too-large', said)
}

function offTape(text: string, piece: Piece, value: Ratio): Refusal {
  const marks = `A tape has halves, quarters, eighths and so on to 64ths, and no ${piece.text}`
  if (isOnTape(value.d)) {
    const same = `${value.n}/${value.d}`
    const fix = text.replace(piece.text, same)
    return refusal('fraction-not-on-tape', `${marks}: it is ${same}. Write ${fix}.`, fix)
  }
  const around = marksAround(value).join(' and ')
  const said = `${marks}. Nearest marks ${around}; from a drawing write ${asDecimal(text, piece, value)}.`
  return refusal('fraction-not-on-tape', said)
}

/** The marks below and above: 1/32 in apart, or 1/64 in where the fraction is finer than a 64th. */
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
