import { type Ratio, ratio } from './ratio.ts'

/** More digits than this are no figure of a job. */
export const MOST_DIGITS = 40

/**
 * Reads a plain decimal (`12`, `12.375`) exactly. Null for anything else: no sign, no exponent, no
 * comma, no bare point, at most 40 digits, digits 0 to 9 only.
 */
export function readDecimal(text: string): Ratio | null {
  const found = /^([0-9]{1,40})(?:\.([0-9]{1,40}))?$/.exec(text)
  if (found === null) return null
  const whole = found[1]!
  const rest = found[2] ?? ''
  if (whole.length + rest.length > MOST_DIGITS) return null
  return ratio(BigInt(whole + rest), 10n ** BigInt(rest.length))
}

/** Reads a whole number of at most 15 digits, which a JavaScript number holds exactly; else null. */
export function readWhole(text: string): number | null {
  if (!/^[0-9]{1,40}$/.test(text)) return null
  const digits = text.replace(/^0+(?=[0-9])/, '')
  return digits.length > 15 ? null : wholeNumber(BigInt(digits))
}

/** A whole ratio's or bigint's value as a number. Callers keep it within the safe integers. */
export function wholeNumber(value: bigint): number {
  let sum = 0
  for (const digit of (value < 0n ? -value : value).toString()) {
    sum = sum * 10 + (digit.charCodeAt(0) - 48)
  }
  return value < 0n ? -sum : sum
}
