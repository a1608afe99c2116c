import { expect, test } from 'vitest'
import { toDegrees } from '../../server/src/units/angle.ts'
import { acos } from '../../server/src/units/functions.ts'

/** The angle opposite c, in degrees: cos θ = (a² + b² − c²)/2ab. */
const corner = (a: number, b: number, c: number) =>
  toDegrees(acos((a * a + b * b - c * c) / (2 * a * b)))

test('a corner tested 12 by 9 feet [computed]', () => {
  expect(corner(144, 108, 180)).toBe(90)
  expect(corner(144, 108, 179.5)).toBeCloseTo(89.6689, 4)
  expect(corner(144, 108, 180.5)).toBeCloseTo(90.332, 4)
})

test('a 3-4-5 whose diagonal is 1/8 in long: 0.2489°, 0.6257 in over 12 ft [computed]', () => {
  const long = corner(36, 48, 60.125) - 90
  expect(long).toBeCloseTo(0.2489, 4)
  expect(144 * Math.tan((long * Math.PI) / 180)).toBeCloseTo(0.6257, 3)
  expect(90 - corner(36, 48, 59.875)).toBeCloseTo(0.2484, 4)
})

test('a 6-8-10 shows the same corner half as far out [computed]', () => {
  expect(corner(72, 96, 120.125) - 90).toBeCloseTo(0.2489 / 2, 3)
})
