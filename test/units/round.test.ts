import { expect, test } from 'vitest'
import { printDecimal } from '../../server/src/units/decimal.ts'
import { ratio } from '../../server/src/units/ratio.ts'
import { type Rounding, roundRatio, roundToNm } from '../../server/src/units/round.ts'

const WAYS: readonly Rounding[] = ['down', 'up', 'half to even']

// Half to even: NIST Handbook 44, Fundamental Considerations 10.3. Down is toward less, up toward more.
test.each([
  [
    [7, 3],
    [2n, 3n, 2n],
  ],
  [
    [8, 3],
    [2n, 3n, 3n],
  ],
  [
    [5, 2],
    [2n, 3n, 2n],
  ],
  [
    [7, 2],
    [3n, 4n, 4n],
  ],
  [
    [6, 2],
    [3n, 3n, 3n],
  ],
  [
    [0, 9],
    [0n, 0n, 0n],
  ],
  [
    [-7, 3],
    [-3n, -2n, -2n],
  ],
  [
    [-8, 3],
    [-3n, -2n, -3n],
  ],
  [
    [-5, 2],
    [-3n, -2n, -2n],
  ],
  [
    [-7, 2],
    [-4n, -3n, -4n],
  ],
  [
    [-6, 2],
    [-3n, -3n, -3n],
  ],
] as const)('%j rounded down, up and to the nearest', ([n, d], rounded) => {
  expect(WAYS.map((way) => roundRatio(ratio(n, d), way))).toEqual(rounded)
})

test.each([
  [2.4, 2],
  [2.5, 2],
  [2.6, 3],
  [3.5, 4],
  [-2.4, -2],
  [-2.5, -2],
  [-2.6, -3],
  [-3.5, -4],
  [-0.4, 0],
  [-0.5, 0],
  [7, 7],
])('%d nm is kept as %d', (value, kept) => {
  expect(Object.is(roundToNm(value), kept)).toBe(true)
})

test.each([
  [ratio(12345, 1000), 2, '12.34'],
  [ratio(12355, 1000), 2, '12.36'],
  [ratio(1, 20), 1, '0.0'],
  [ratio(1, 200), 3, '0.005'],
  [ratio(5, 2), 0, '2'],
  [ratio(-1, 8), 3, '-0.125'],
  [ratio(-7, 2), 0, '-4'],
  [ratio(0), 2, '0.00'],
  [ratio(-1, 1000), 2, '0.00'],
  [ratio(12), 1, '12.0'],
] as const)('%o in %i decimals', (value, places, text) => {
  expect(printDecimal(value, places)).toBe(text)
})

test('a figure for a person may be rounded up or down instead', () => {
  expect(printDecimal(ratio(1, 3), 2, 'up')).toBe('0.34')
  expect(printDecimal(ratio(2, 3), 2, 'down')).toBe('0.66')
})
