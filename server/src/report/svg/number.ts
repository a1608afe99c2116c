import type { Nm } from '../../units/length.ts'

const NM_PER_HUNDREDTH_OF_MM = 10_000

/**
 * A length in millimetres with at most two decimals, made from whole numbers only so that every
 * machine writes the same digits; halves go away from zero.
 */
export function mm(length: Nm): string {
  const hundredths = Math.trunc(
    (Math.abs(length) + NM_PER_HUNDREDTH_OF_MM / 2) / NM_PER_HUNDREDTH_OF_MM,
  )
  const sign = length < 0 && hundredths > 0 ? '-' : ''
  const whole = Math.trunc(hundredths / 100)
  const rest = hundredths % 100
  if (rest === 0) return `${sign}${whole}`
  const digits = rest % 10 === 0 ? `${rest / 10}` : `${rest}`.padStart(2, '0')
  return `${sign}${whole}.${digits}`
}

/** A number of millionths with its zeros cut off: the entries of a turn. */
export function millionths(value: number): string {
  const size = Math.abs(value)
  const whole = Math.trunc(size / 1_000_000)
  const rest = `${size % 1_000_000}`.padStart(6, '0')
  let last = rest.length
  while (last > 0 && rest[last - 1] === '0') last -= 1
  const sign = value < 0 ? '-' : ''
  return last === 0 ? `${sign}${whole}` : `${sign}${whole}.${rest.slice(0, last)}`
}
