import { expect, test } from 'vitest'
import { readDecimal, readWhole, wholeNumber } from '../../server/src/units/number.ts'
import { ratio } from '../../server/src/units/ratio.ts'

test('a plain decimal is read exactly', () => {
  expect(readDecimal('12')).toEqual(ratio(12))
  expect(readDecimal('012.3750')).toEqual(ratio(99, 8))
  expect(readDecimal(`0.${'0'.repeat(38)}1`)).toEqual(ratio(1n, 10n ** 39n))
})

test.each(['', '-1', '+1', '1e3', '1,5', '1.', '.5', '1.2.3', ' 1', '1 ', '1x', 'x1', '٣'])(
  '%s is no plain decimal',
  (text) => {
    expect(readDecimal(text)).toBeNull()
    expect(readWhole(text)).toBeNull()
  },
)

test('at most 40 digits, both sides of the point together', () => {
  expect(readDecimal('1'.repeat(40))).not.toBeNull()
  expect(readDecimal('1'.repeat(41))).toBeNull()
  expect(readDecimal(`${'1'.repeat(20)}.${'1'.repeat(20)}`)).not.toBeNull()
  expect(readDecimal(`${'1'.repeat(20)}.${'1'.repeat(21)}`)).toBeNull()
})

test('a whole number is read up to 15 digits, zeros before it not counted', () => {
  expect(readWhole('0')).toBe(0)
  expect(readWhole('000')).toBe(0)
  expect(readWhole('007')).toBe(7)
  expect(readWhole('1020')).toBe(1020)
  expect(readWhole('999999999999999')).toBe(999_999_999_999_999)
  expect(readWhole('1000000000000000')).toBeNull()
  expect(readWhole(`${'0'.repeat(39)}5`)).toBe(5)
  expect(readWhole(`${'0'.repeat(40)}5`)).toBeNull()
  expect(readWhole('1.5')).toBeNull()
})

test('a whole number keeps its sign', () => {
  expect([-305n, -1n, 0n, 1n, 305n].map(wholeNumber)).toEqual([-305, -1, 0, 1, 305])
  expect(Object.is(wholeNumber(0n), 0)).toBe(true)
})
