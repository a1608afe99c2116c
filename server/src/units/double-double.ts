/**
 * A real number held as the unrounded sum of two doubles, about 106 bits: enough that a function
 * computed in it and rounded at the end is right to the last bit but for the rarest ties. Built from
 * + − × ÷ and sqrt alone, which every engine rounds alike. Sound for magnitudes between 2⁻⁴⁰⁰ and 2⁴⁰⁰.
 *
 * Error-free sums and products: T. J. Dekker, A Floating-Point Technique for Extending the Available
 * Precision, Numerische Mathematik 18 (1971).
 */
export interface DoubleDouble {
  readonly high: number
  readonly low: number
}

export const DD_ZERO: DoubleDouble = { high: 0, low: 0 }

export const dd = (high: number, low = 0): DoubleDouble => ({ high, low })

/** a + b without error. */
export function twoSum(a: number, b: number): DoubleDouble {
  const high = a + b
  const bPart = high - a
  return { high, low: a - (high - bPart) + (b - bPart) }
}

/** Splits 53 bits into 26 and 27, so that products of the halves are exact. */
const SPLITTER = 134_217_729

/** a × b without error. */
export function twoProduct(a: number, b: number): DoubleDouble {
  const high = a * b
  const aHigh = SPLITTER * a - (SPLITTER * a - a)
  const bHigh = SPLITTER * b - (SPLITTER * b - b)
  const aLow = a - aHigh
  const bLow = b - bHigh
  return { high, low: aLow * bLow - (high - aHigh * bHigh - aLow * bHigh - aHigh * bLow) }
}

export function addDd(a: DoubleDouble, b: DoubleDouble): DoubleDouble {
  const high = twoSum(a.high, b.high)
  const low = twoSum(a.low, b.low)
  const once = twoSum(high.high, high.low + low.high)
  return twoSum(once.high, once.low + low.low)
}

export const negateDd = (a: DoubleDouble): DoubleDouble => ({ high: -a.high, low: -a.low })

export const subtractDd = (a: DoubleDouble, b: DoubleDouble): DoubleDouble => addDd(a, negateDd(b))

export function multiplyDd(a: DoubleDouble, b: DoubleDouble): DoubleDouble {
  const product = twoProduct(a.high, b.high)
  return twoSum(product.high, product.low + (a.high * b.low + a.low * b.high))
}

/** a ÷ b by two steps of long division; b is not 0. */
export function divideDd(a: DoubleDouble, b: DoubleDouble): DoubleDouble {
  const first = a.high / b.high
  const rest = subtractDd(a, multiplyDd(b, dd(first)))
  const second = rest.high / b.high
  const last = subtractDd(rest, multiplyDd(b, dd(second)))
  return addDd(twoSum(first, second), dd(last.high / b.high))
}

/** The square root of a ≥ 0: one Newton step from the double's own. */
export function squareRootDd(a: DoubleDouble): DoubleDouble {
  if (a.high <= 0) return DD_ZERO
  const near = Math.sqrt(a.high)
  const rest = subtractDd(a, twoProduct(near, near))
  return twoSum(near, rest.high / (2 * near))
}
