import { expect, test } from 'vitest'
import {
  add,
  compare,
  divide,
  multiply,
  ONE,
  ratio,
  subtract,
  sum,
  ZERO,
} from '../../server/src/units/ratio.ts'

const third = ratio(1, 3)
const fifths = ratio(2, 5)

test('a ratio is in lowest terms, its sign above the line', () => {
  expect(ratio(6, 4)).toEqual({ n: 3n, d: 2n })
  expect(ratio(-6, 4)).toEqual({ n: -3n, d: 2n })
  expect(ratio(6, -4)).toEqual({ n: -3n, d: 2n })
  expect(ratio(-6, -4)).toEqual({ n: 3n, d: 2n })
  expect(ratio(0, -7)).toEqual({ n: 0n, d: 1n })
  expect(ratio(5)).toEqual({ n: 5n, d: 1n })
  expect([ZERO, ONE]).toEqual([ratio(0), ratio(1)])
})

test('nothing is divided by nothing', () => {
  expect(() => ratio(1, 0)).toThrow('a ratio with denominator 0')
  expect(() => divide(ONE, ZERO)).toThrow(RangeError)
})

test('1/3 and 2/5: sum 11/15, difference −1/15, product 2/15, quotient 5/6', () => {
  expect(add(third, fifths)).toEqual(ratio(11, 15))
  expect(subtract(third, fifths)).toEqual(ratio(-1, 15))
  expect(multiply(third, fifths)).toEqual(ratio(2, 15))
  expect(divide(third, fifths)).toEqual(ratio(5, 6))
  expect(sum([third, fifths, ONE])).toEqual(ratio(26, 15))
  expect(sum([])).toEqual(ZERO)
})

test('below, equal, above', () => {
  expect(compare(third, fifths)).toBe(-1)
  expect(compare(fifths, third)).toBe(1)
  expect(compare(ratio(2, 6), third)).toBe(0)
  expect(compare(ratio(-1, 2), ratio(-1, 3))).toBe(-1)
})
