/**
 * Sine, cosine and arc tangent in fixed point with 400 bits after the point, by their power series on
 * BigInt: what the doubles are held against.
 */
const BITS = 400n
const UNIT = 1n << BITS

/** A double as fixed point, exact for magnitudes above 2⁻³⁴⁰. */
export function fixed(x: number): bigint {
  const view = new DataView(new ArrayBuffer(8))
  view.setFloat64(0, x)
  const bits = view.getBigUint64(0)
  const exponent = (bits >> 52n) & 0x7ffn
  const fraction = bits & ((1n << 52n) - 1n)
  const mantissa = exponent === 0n ? fraction : fraction | (1n << 52n)
  const shift = (exponent === 0n ? 1n : exponent) - 1075n + BITS
  const size = shift >= 0n ? mantissa << shift : mantissa >> -shift
  return bits >> 63n ? -size : size
}

const times = (a: bigint, b: bigint) => (a * b) >> BITS
const over = (a: bigint, b: bigint) => (a << BITS) / b

/** Machin: π = 16 atan(1/5) − 4 atan(1/239). */
export const PI_FIXED = 16n * atanOfInverse(5n) - 4n * atanOfInverse(239n)

function atanOfInverse(n: bigint): bigint {
  let power = UNIT / n
  let sum = 0n
  for (let k = 1n; power !== 0n; k += 2n) {
    sum += k % 4n === 1n ? power / k : -power / k
    power /= n * n
  }
  return sum
}

export function sinFixed(x: bigint): bigint {
  const turned = x % (2n * PI_FIXED)
  let term = turned
  let sum = 0n
  for (let k = 1n; term !== 0n && term !== -1n; k += 2n) {
    sum += term
    term = -times(times(term, turned), turned) / ((k + 1n) * (k + 2n))
  }
  return sum
}

export const cosFixed = (x: bigint) => sinFixed(x + PI_FIXED / 2n)

/** atan2 for fixed-point y and x, x and y not both 0, by halving the angle thrice and the series. */
export function atan2Fixed(y: bigint, x: bigint): bigint {
  if (y < 0n) return -atan2Fixed(-y, x)
  if (x < 0n) return PI_FIXED - atan2Fixed(y, -x)
  if (y > x) return PI_FIXED / 2n - atan2Fixed(x, y)
  let t = over(y, x)
  for (let halved = 0; halved < 3; halved++) t = over(t, UNIT + squareRoot(UNIT + times(t, t)))
  let power = t
  let sum = 0n
  for (let k = 1n; power !== 0n && power !== -1n; k += 2n) {
    sum += k % 4n === 1n ? power / k : -power / k
    power = times(times(power, t), t)
  }
  return 8n * sum
}

export function squareRoot(x: bigint): bigint {
  const target = x << BITS
  let guess = 1n << BigInt(Math.ceil(target.toString(2).length / 2) + 1)
  for (;;) {
    const next = (guess + target / guess) >> 1n
    if (next >= guess) return guess
    guess = next
  }
}

export const acosFixed = (x: bigint) => atan2Fixed(squareRoot(UNIT - times(x, x)), x)

/** How far a double lies from a fixed-point value, in units of the double's last place. */
export function ulpsApart(value: number, truth: bigint): number {
  const size = Math.abs(value)
  const view = new DataView(new ArrayBuffer(8))
  view.setFloat64(0, size)
  view.setBigUint64(0, view.getBigUint64(0) + 1n)
  const ulp = fixed(view.getFloat64(0)) - fixed(size)
  const apart = fixed(value) - truth
  return Number(((apart < 0n ? -apart : apart) * 1000n) / ulp) / 1000
}
