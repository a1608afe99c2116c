/**
 * An exact ratio of whole numbers, always in lowest terms with a positive denominator. Quantities
 * bought, areas and money are ratios until they are rounded once, by `round.ts`.
 */
export interface Ratio {
  readonly n: bigint
  readonly d: bigint
}

function gcd(a: bigint, b: bigint): bigint {
  let x = a < 0n ? -a : a
  let y = b < 0n ? -b : b
  while (y !== 0n) [x, y] = [y, x % y]
  return x
}

/** n / d in lowest terms. Throws a RangeError when d is 0: callers check what users typed before. */
export function ratio(n: bigint | number, d: bigint | number = 1n): Ratio {
  let top = BigInt(n)
  let bottom = BigInt(d)
  if (bottom === 0n) throw new RangeError('a ratio with denominator 0')
  if (bottom < 0n) {
    top = -top
    bottom = -bottom
  }
  const g = gcd(top, bottom)
  return g > 1n ? { n: top / g, d: bottom / g } : { n: top, d: bottom }
}

export const ZERO: Ratio = ratio(0n)
export const ONE: Ratio = ratio(1n)

export function add(a: Ratio, b: Ratio): Ratio {
  return ratio(a.n * b.d + b.n * a.d, a.d * b.d)
}

export function subtract(a: Ratio, b: Ratio): Ratio {
  return ratio(a.n * b.d - b.n * a.d, a.d * b.d)
}

export function multiply(a: Ratio, b: Ratio): Ratio {
  return ratio(a.n * b.n, a.d * b.d)
}

/** a / b. Throws a RangeError when b is 0. */
export function divide(a: Ratio, b: Ratio): Ratio {
  return ratio(a.n * b.d, a.d * b.n)
}

/** −1, 0 or 1 as a is below, equal to or above b. */
export function compare(a: Ratio, b: Ratio): -1 | 0 | 1 {
  const left = a.n * b.d
  const right = b.n * a.d
  return left < right ? -1 : left > right ? 1 : 0
}

export function sum(parts: readonly Ratio[]): Ratio {
  return parts.reduce(add, ZERO)
}
