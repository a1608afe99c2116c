import type { Ratio } from './ratio.ts'

/**
 * How a value is rounded. Bought things go up, cut lengths that must fit go down, readings and
 * computed corners go to the nearest and, midway, to the even one (NIST Handbook 44, Fundamental
 * Considerations 10.3).
 */
export type Rounding = 'up' | 'down' | 'half to even'

/** Rounds an exact ratio to a whole number. The one place where exact values lose anything. */
export function roundRatio(value: Ratio, rounding: Rounding): bigint {
  const floor = value.n >= 0n ? value.n / value.d : -((-value.n + value.d - 1n) / value.d)
  const rest = value.n - floor * value.d
  if (rest === 0n) return floor
  switch (rounding) {
    case 'down':
      return floor
    case 'up':
      return floor + 1n
    case 'half to even': {
      const twice = 2n * rest
      if (twice < value.d) return floor
      if (twice > value.d) return floor + 1n
      return floor % 2n === 0n ? floor : floor + 1n
    }
  }
}

/** Rounds a computed coordinate to whole nanometres, half to even; never gives −0. */
export function roundToNm(value: number): number {
  const floor = Math.floor(value)
  const rest = value - floor
  const up = rest > 0.5 || (rest === 0.5 && floor % 2 !== 0)
  return (up ? floor + 1 : floor) + 0
}
