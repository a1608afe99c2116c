import { expect, test } from 'vitest'
import { acos, atan2, cos, sin } from '../../server/src/units/functions.ts'
import { acosFixed, atan2Fixed, cosFixed, fixed, sinFixed, ulpsApart } from './high-precision.ts'

/** A fixed sequence of numbers in [0, 1), so that every run tries the same arguments. */
function* sequence(count: number): Generator<number> {
  let state = 20_270_412
  for (let i = 0; i < count; i++) {
    state = (state * 1_103_515_245 + 12_345) % 2_147_483_648
    yield state / 2_147_483_648
  }
}

/** The worst distance from the truth, in ulps. */
const worst = (
  values: Iterable<number>,
  f: (x: number) => number,
  truth: (x: bigint) => bigint,
): number => {
  let most = 0
  for (const x of values) most = Math.max(most, ulpsApart(f(x), truth(fixed(x))))
  return most
}

const turns = [...sequence(400)].map((u) => (u - 0.5) * 14)
const hard = [1e-9, 0.5, Math.PI / 4, Math.PI / 2, Math.PI, 2 * Math.PI, 355, 22, 710, 999_999.5]

test('sine and cosine are within 1 ulp, near their zeros too', () => {
  expect(worst([...turns, ...hard], sin, sinFixed)).toBeLessThanOrEqual(0.51)
  expect(worst([...turns, ...hard], cos, cosFixed)).toBeLessThanOrEqual(0.51)
})

test('the arc cosine is within 1 ulp up to its ends', () => {
  const values = [...sequence(200)].map((u) => 2 * u - 1)
  const ends = [0.999_999_999, -0.999_999_999, 1 - 2 ** -53, 0.5, -0.5, 1e-12]
  expect(worst([...values, ...ends], acos, acosFixed)).toBeLessThanOrEqual(0.51)
  expect([acos(1), acos(-1), acos(0), acos(7)]).toEqual([0, Math.PI, Math.PI / 2, 0])
})

test('atan2 is within 1 ulp in all four quarters', () => {
  const draws = [...sequence(600)]
  let most = 0
  for (let i = 0; i + 1 < draws.length; i += 2) {
    const [y, x] = [(draws[i]! - 0.5) * 1e10, (draws[i + 1]! - 0.5) * 1e10]
    most = Math.max(most, ulpsApart(atan2(y, x), atan2Fixed(fixed(y), fixed(x))))
  }
  expect(most).toBeLessThanOrEqual(0.51)
})

test('atan2 on the axes and for the null vector', () => {
  expect([atan2(0, 1), atan2(1, 0), atan2(0, -1), atan2(-1, 0), atan2(0, 0)]).toEqual([
    0,
    Math.PI / 2,
    Math.PI,
    -Math.PI / 2,
    0,
  ])
  expect(Object.is(atan2(-0, 1), 0)).toBe(true)
})

test('an angle past a million radians is refused', () => {
  expect(() => sin(1_000_001)).toThrow('an angle of more than a million')
  expect(sin(1_000_000)).toBeCloseTo(-0.349_993_502_17, 11)
  expect(() => cos(Number.NaN)).toThrow(RangeError)
})
