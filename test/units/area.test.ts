import { expect, test } from 'vitest'
import { areaFromTwice, areaIn, areaOf } from '../../server/src/units/area.ts'
import { ratio } from '../../server/src/units/ratio.ts'

test('one square foot is 0.09290304 square metres exactly [16 CFR 500.19(a)]', () => {
  expect(areaIn('sq m', areaOf('sq ft', ratio(1)))).toEqual(ratio(9_290_304, 100_000_000))
})

test('one square inch is 6.4516 square centimetres exactly [16 CFR 500.19(a)]', () => {
  expect(areaIn('sq m', areaOf('sq in', ratio(1)))).toEqual(ratio(64_516, 100_000_000))
})

test('a square yard is 9 square feet, 0.83612736 square metres [computed]', () => {
  expect(areaIn('sq ft', areaOf('sq yd', ratio(1)))).toEqual(ratio(9))
  expect(areaIn('sq m', areaOf('sq yd', ratio(1)))).toEqual(ratio(83_612_736, 100_000_000))
})

test('the area of a ring of either orientation, from twice its signed area', () => {
  expect(areaFromTwice(-7n)).toEqual(ratio(7, 2))
  expect(areaFromTwice(7n)).toEqual(ratio(7, 2))
})
