import { NM_PER_CM, NM_PER_INCH, NM_PER_M, NM_PER_MM, type Nm, type UnitStyle } from './length.ts'
import { wholeNumber } from './number.ts'
import { ratio } from './ratio.ts'
import { roundRatio } from './round.ts'

/** Fractions a tape shows; 1/64 in is the finest that is printed. */
export type Denominator = 1 | 2 | 4 | 8 | 16 | 32 | 64

/**
 * A length for people, in the canonical notation of a style. A length that lies on the grid of the
 * tape (1/64 in, or 0.1 mm) is printed exactly; any other is rounded half to even, to 1/16 in unless
 * told otherwise, or to whole millimetres. Negative lengths carry a minus.
 */
export function printLength(nm: Nm, style: UnitStyle, denominator: Denominator = 16): string {
  if (nm < 0) {
    const text = printLength(-nm, style, denominator)
    return /[1-9]/.test(text) ? `-${text}` : text
  }
  if (style === 'feet-inches') return printFeet(sixtyFourths(nm, denominator))
  if (style === 'inches') return `${printInches(sixtyFourths(nm, denominator))}"`
  const tenth = NM_PER_MM / 10
  const seen = nm % tenth === 0 ? nm : steps(nm, NM_PER_MM) * NM_PER_MM
  return printExact(seen, style)
}

/** A length to the last nanometre, as a decimal with its unit: `3759.7 mm`, `3.7597 m`. */
export function printExact(nm: Nm, style: 'mm' | 'cm' | 'm'): string {
  const [unit, places] =
    style === 'mm' ? [NM_PER_MM, 6] : style === 'cm' ? [NM_PER_CM, 7] : [NM_PER_M, 9]
  const sign = nm < 0 ? '-' : ''
  const size = Math.abs(nm)
  const rest = `${size % unit}`.padStart(places, '0').replace(/0+$/, '')
  return `${sign}${Math.floor(size / unit)}${rest === '' ? '' : `.${rest}`} ${style}`
}

/** The length in 1/64 in: exact when it lies on that grid, else rounded to 1/denominator in. */
function sixtyFourths(nm: Nm, denominator: Denominator): number {
  const finest = NM_PER_INCH / 64
  if (nm % finest === 0) return nm / finest
  return steps(nm, NM_PER_INCH / denominator) * (64 / denominator)
}

function steps(nm: Nm, step: Nm): number {
  return wholeNumber(roundRatio(ratio(nm, step), 'half to even'))
}

function printFeet(n: number): string {
  const feet = Math.floor(n / 768)
  const inches = printInches(n % 768)
  if (feet === 0) return `${inches}"`
  return `${feet}' ${/^[0-9]+\//.test(inches) ? `0 ${inches}` : inches}"`
}

function printInches(n: number): string {
  const whole = Math.floor(n / 64)
  const part = n % 64
  if (part === 0) return `${whole}`
  let over = part
  let under = 64
  while (over % 2 === 0) {
    over /= 2
    under /= 2
  }
  return whole === 0 ? `${over}/${under}` : `${whole} ${over}/${under}`
}
