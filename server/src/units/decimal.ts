import { type Ratio, ratio } from './ratio.ts'
import { type Rounding, roundRatio } from './round.ts'

/** Prints an exact ratio with a fixed number of decimals and a point; rounded once, here. */
export function printDecimal(
  value: Ratio,
  places: number,
  rounding: Rounding = 'half to even',
): string {
  const scaled = roundRatio(ratio(value.n * 10n ** BigInt(places), value.d), rounding)
  const sign = scaled < 0n ? '-' : ''
  const digits = `${scaled < 0n ? -scaled : scaled}`.padStart(places + 1, '0')
  const whole = digits.slice(0, digits.length - places)
  return places === 0 ? `${sign}${digits}` : `${sign}${whole}.${digits.slice(-places)}`
}
