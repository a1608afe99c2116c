import { fractionRefused } from './fraction-refusals.ts'
import {
  NM_PER_CM,
  NM_PER_FOOT,
  NM_PER_INCH,
  NM_PER_M,
  NM_PER_MM,
  type Nm,
  type UnitStyle,
} from './length.ts'
import { wholeNumber } from './number.ts'
import { compare, multiply, type Ratio, ratio, sum } from './ratio.ts'
import { refuseShape } from './shape-refusals.ts'
import { amountOf } from './tape-amount.ts'
import { type Piece, piecesOf } from './tape-pieces.ts'
import { type Refusal, refusal, refuseText } from './tape-refusals.ts'

/** What a bare number is, where a file's units line says so. */
export type BareUnit = 'inches' | 'mm' | 'cm' | 'm'

export interface TapeOptions {
  /** Null: a bare number is refused. */
  readonly bare: BareUnit | null
  /** Which readings are offered for a number without a unit. */
  readonly style: UnitStyle
}

export type LengthReading =
  | { readonly nm: Nm; readonly refusal: null }
  | { readonly nm: null; readonly refusal: Refusal }

/** Longer than this is no room: 100 km. It keeps every sum within exact whole numbers. */
const LONGEST: Nm = 100_000 * NM_PER_M

const UNITS = { mm: NM_PER_MM, cm: NM_PER_CM, m: NM_PER_M, inches: NM_PER_INCH }

/** Feet and inches, inches alone, feet alone, metric: the shapes that have one meaning. */
const SHAPE = /^(?:([nd])')?(-?)(n|d|f|v|n-?f|nv)?(["u]?)$/

/**
 * Reads a length as it stands on a tape or a drawing, exactly to the nanometre. Whatever could be
 * read two ways is refused, with both readings in the refusal's text; so are lengths finer than a
 * nanometre, negative ones, and fractions that no tape has. Never rounds, never throws.
 */
export function readLength(text: string, options: TapeOptions): LengthReading {
  const early = refuseText(text)
  if (early !== null) return refused(early)
  const pieces = piecesOf(text)
  const shape = pieces.map((piece) => piece.kind).join('')
  const bad = fractionRefused(text, pieces)
  if (bad !== null) return refused(bad)
  if (!isPlain(shape, options)) return refused(refuseShape(text, pieces, options))
  const value = total(pieces, options)
  return value === null ? refused(refuseShape(text, pieces, options)) : exactly(text, value)
}

/** True for a shape with one meaning: marked, or bare where the file says what bare numbers are. */
function isPlain(shape: string, options: TapeOptions): boolean {
  const found = SHAPE.exec(shape)
  if (found === null) return false
  const [, feet, dash, amount, mark] = found
  if (amount === undefined) return feet !== undefined && dash === '' && mark === ''
  if (dash !== '' && feet === undefined) return false
  if (feet === 'd') return false
  if (mark === 'u') return feet === undefined && /^[nd]$/.test(amount)
  if (mark === '"') return true
  if (options.bare === null) return false
  return options.bare === 'inches' || (feet === undefined && /^[nd]$/.test(amount))
}

/** The length in nanometres as an exact ratio; null when its inches after feet reach 12. */
function total(pieces: readonly Piece[], options: TapeOptions): Ratio | null {
  const foot = pieces.findIndex((piece) => piece.kind === "'")
  const feet = foot < 0 ? [] : pieces.slice(0, foot)
  const rest = amountOf(pieces.slice(foot + 1))
  if (foot >= 0 && compare(rest, ratio(12n)) >= 0) return null
  const unit = unitOf(pieces, options)
  return sum([multiply(amountOf(feet), ratio(NM_PER_FOOT)), multiply(rest, ratio(unit))])
}

function unitOf(pieces: readonly Piece[], options: TapeOptions): Nm {
  const last = pieces[pieces.length - 1]!
  if (last.kind === 'u') return UNITS[last.text.toLowerCase() as 'mm' | 'cm' | 'm']
  return last.kind === '"' || last.kind === "'" ? NM_PER_INCH : UNITS[options.bare ?? 'inches']
}

function exactly(text: string, value: Ratio): LengthReading {
  if (value.d !== 1n) {
    const said = `${text} is finer than a millionth of a millimetre. Leave out some of its last digits.`
    return refused(refusal('length-too-fine', said))
  }
  if (value.n > BigInt(LONGEST)) {
    const said = `${text} is longer than 100 km, which no room is. Are digits typed twice, or is the unit wrong?`
    return refused(refusal('length-too-long', said))
  }
  return { nm: wholeNumber(value.n), refusal: null }
}

function refused(refusal: Refusal): LengthReading {
  return { nm: null, refusal }
}
