import { expect, test } from 'vitest'
import {
  cosineOfDegrees,
  sineOfDegrees,
  toDegrees,
  withinFullTurn,
} from '../../server/src/units/angle.ts'
import { ratio } from '../../server/src/units/ratio.ts'

test('whole quarter turns are exact, however often turned', () => {
  for (const turns of [-3, -1, 0, 1, 5]) {
    const at = (degrees: number) => ratio(degrees + 360 * turns)
    expect([0, 90, 180, 270].map((d) => sineOfDegrees(at(d)))).toEqual([0, 1, 0, -1])
    expect([0, 90, 180, 270].map((d) => cosineOfDegrees(at(d)))).toEqual([1, 0, -1, 0])
  }
})

test('30, 45 and 60 degrees', () => {
  expect(sineOfDegrees(ratio(30))).toBe(0.5)
  expect(cosineOfDegrees(ratio(60))).toBe(0.5)
  expect(sineOfDegrees(ratio(45))).toBe(Math.SQRT1_2)
  expect(cosineOfDegrees(ratio(-315))).toBe(Math.SQRT1_2)
  expect(sineOfDegrees(ratio(-30))).toBe(-0.5)
})

test('half degrees, to either side', () => {
  // From tables: cos 60.5° = 0.492424, sin 30.5° = 0.507538, sin 0.5° = 0.008727.
  expect(cosineOfDegrees(ratio(121, 2))).toBeCloseTo(0.492_423_560_103, 12)
  expect(sineOfDegrees(ratio(61, 2))).toBeCloseTo(0.507_538_362_961, 12)
  expect(sineOfDegrees(ratio(-1, 2))).toBeCloseTo(-0.008_726_535_498, 12)
  expect(cosineOfDegrees(ratio(359, 2))).toBeCloseTo(-0.999_961_923_064, 12)
})

test('an angle of thirty digits is as good as a short one', () => {
  const tiny = ratio(1n, 10n ** 30n)
  expect(sineOfDegrees({ n: 90n * 10n ** 30n + 1n, d: 10n ** 30n })).toBe(1)
  expect(sineOfDegrees(tiny)).toBe(0)
})

test('a full turn is taken off exactly', () => {
  expect(withinFullTurn(ratio(-1, 2))).toEqual(ratio(719, 2))
  expect(withinFullTurn(ratio(360))).toEqual(ratio(0))
})

test('radians to degrees', () => {
  expect(toDegrees(Math.PI)).toBe(180)
})
