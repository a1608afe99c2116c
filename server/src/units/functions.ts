import {
  addDd,
  DD_ZERO,
  type DoubleDouble,
  dd,
  divideDd,
  multiplyDd,
  negateDd,
  squareRootDd,
  subtractDd,
} from './double-double.ts'

/**
 * Sine, cosine, arc tangent and arc cosine that give the same bits on every machine. An engine's own
 * differ in the last bit from one to the next; these use + − × ÷ and sqrt only, in double-double, and
 * are within 1 ulp of the true value. Angles in radians.
 */

/** π/2 to 160 bits, in three doubles. */
const HALF_PI: DoubleDouble = dd(1.5707963267948966, 6.123233995736766e-17)
const HALF_PI_TAIL = -1.4973849048591833e-33
const HALF_TURN: DoubleDouble = dd(2 * HALF_PI.high, 2 * HALF_PI.low)

/** π, as near as a double comes. */
export const PI = HALF_TURN.high

/** Beyond it the reduction by π/2 would lose bits; a drawing turns a few times at most. */
const LARGEST_ANGLE = 1_000_000

/** sin x, |x| ≤ 10⁶. Throws a RangeError beyond. */
export function sin(x: number): number {
  return sineAndCosine(x).sine.high
}

/** cos x, |x| ≤ 10⁶. Throws a RangeError beyond. */
export function cos(x: number): number {
  return sineAndCosine(x).cosine.high
}

/** The angle of the vector (x, y) from the x axis, in (−π, π]; 0 for the null vector. */
export function atan2(y: number, x: number): number {
  return angleOf(dd(y), dd(x)).high + 0
}

/** The angle in [0, π] whose cosine is x; x is brought into [−1, 1] first. */
export function acos(x: number): number {
  const c = dd(Math.max(-1, Math.min(1, x)))
  const one = dd(1)
  const s = squareRootDd(multiplyDd(subtractDd(one, c), addDd(one, c)))
  return angleOf(s, c).high + 0
}

const ONE_DEGREE: DoubleDouble = divideDd(HALF_TURN, dd(180))

/** The sine of at most an eighth of a turn, in degrees: |x| ≤ 45. */
export function sinDegrees(x: number): number {
  return sineSeries(multiplyDd(dd(x), ONE_DEGREE)).high
}

/** The cosine of at most an eighth of a turn, in degrees: |x| ≤ 45. */
export function cosDegrees(x: number): number {
  return cosineSeries(multiplyDd(dd(x), ONE_DEGREE)).high
}

interface SineAndCosine {
  readonly sine: DoubleDouble
  readonly cosine: DoubleDouble
}

/** Reduces to |r| ≤ π/4 and turns back by quarter turns. */
function sineAndCosine(x: number): SineAndCosine {
  if (!(Math.abs(x) <= LARGEST_ANGLE)) throw new RangeError('an angle of more than a million')
  const quarters = Math.floor(x / HALF_PI.high + 0.5)
  const back = dd(quarters)
  const near = subtractDd(dd(x), multiplyDd(back, dd(HALF_PI.high)))
  const nearer = subtractDd(near, multiplyDd(back, dd(HALF_PI.low)))
  const r = subtractDd(nearer, dd(quarters * HALF_PI_TAIL))
  return turned(quarters - 4 * Math.floor(quarters / 4), sineSeries(r), cosineSeries(r))
}

function turned(quarters: number, sine: DoubleDouble, cosine: DoubleDouble): SineAndCosine {
  switch (quarters) {
    case 0:
      return { sine, cosine }
    case 1:
      return { sine: cosine, cosine: negateDd(sine) }
    case 2:
      return { sine: negateDd(sine), cosine: negateDd(cosine) }
    default:
      return { sine: negateDd(cosine), cosine: sine }
  }
}

/** 1/n! for n up to 27: beyond, (π/4)ⁿ/n! is below 2⁻¹⁰⁶. */
const INVERSE_FACTORIALS: readonly DoubleDouble[] = inverseFactorials(27)

function inverseFactorials(last: number): DoubleDouble[] {
  const list = [dd(1)]
  for (let n = 1; n <= last; n++) list.push(divideDd(list[n - 1]!, dd(n)))
  return list
}

const sineSeries = (r: DoubleDouble) => multiplyDd(r, alternating(r, 27))
const cosineSeries = (r: DoubleDouble) => alternating(r, 26)

/** Σ (−1)ᵏ r²ᵏ/(2k + first)! where `highest` = 2k + first at the last term, by Horner's rule. */
function alternating(r: DoubleDouble, highest: number): DoubleDouble {
  const square = negateDd(multiplyDd(r, r))
  let value = DD_ZERO
  for (let n = highest; n >= 0; n -= 2) {
    value = addDd(multiplyDd(value, square), INVERSE_FACTORIALS[n]!)
  }
  return value
}

function angleOf(y: DoubleDouble, x: DoubleDouble): DoubleDouble {
  if (y.high < 0) return negateDd(angleOf(negateDd(y), x))
  if (x.high < 0) return subtractDd(HALF_TURN, angleOf(y, negateDd(x)))
  if (y.high > x.high) return subtractDd(HALF_PI, angleOf(x, y))
  return y.high === 0 ? DD_ZERO : arcTangent(divideDd(y, x))
}

/**
 * The arc tangent of t in (0, 1]. From a first guess a within 0.005, atan t = a + atan u with
 * u = (t cos a − sin a)/(cos a + t sin a); atan u ≈ u leaves u³/3, so three rounds leave nothing.
 */
function arcTangent(t: DoubleDouble): DoubleDouble {
  const guess = t.high / (1 + 0.28125 * t.high * t.high)
  if (guess < 1e-12) return t
  let angle = dd(guess)
  for (let round = 0; round < 3; round++) angle = addDd(angle, towards(t, angle))
  return angle
}

function towards(t: DoubleDouble, angle: DoubleDouble): DoubleDouble {
  const sine = sineSeries(angle)
  const cosine = cosineSeries(angle)
  const across = subtractDd(multiplyDd(t, cosine), sine)
  return divideDd(across, addDd(cosine, multiplyDd(t, sine)))
}
