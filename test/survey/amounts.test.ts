import { describe, expect, test } from 'vitest'
import { likelyAmounts } from '../../server/src/survey/amounts.ts'
import { areaWords } from '../../server/src/survey/area-words.ts'
import { NM_PER_INCH, NM_PER_MM } from '../../server/src/units/length.ts'
import { multiply, ratio } from '../../server/src/units/ratio.ts'
import { reading } from './build.ts'

const EXCHANGED = 'two figures exchanged'
type Said = readonly (readonly [number, string])[]

const MARKS: Said = [
  [12, 'one foot'],
  [-12, 'one foot'],
  [1, 'one inch'],
  [-1, 'one inch'],
  [120, 'ten feet'],
  [-120, 'ten feet'],
  [0.5, 'half an inch'],
  [-0.5, 'half an inch'],
]

/** In inches, each worked by hand from the figures as written. */
const INCHES: readonly (readonly [string, Said])[] = [
  // 21' 4" instead of 12' 4": nine feet more.
  [`12' 4"`, [...MARKS, [108, EXCHANGED]]],
  // Alike figures exchanged are the same reading.
  [`11' 4"`, MARKS],
  // 91' for 19' and 01' for 10': the outermost figures count as figures too.
  [`19' 0"`, [...MARKS, [72 * 12, EXCHANGED]]],
  [`10' 6"`, [...MARKS, [-108, EXCHANGED]]],
  // What would leave no length is not offered: of 1" nothing but more, and half of it.
  [`1"`, MARKS.filter(([by]) => by > -1)],
  [`6"`, MARKS.filter(([by]) => by > -6)],
  // 7/61 is on no tape.
  [`12' 4 7/16"`, [...MARKS, [108, EXCHANGED]]],
]

describe('what a reading may be wrong by', () => {
  test.each(INCHES)('%s', (text, amounts) => {
    const found = (style: 'feet-inches' | 'inches') =>
      likelyAmounts(reading(text), style).map(({ nm, words }) => [nm / NM_PER_INCH, words])
    expect(found('feet-inches')).toEqual(amounts)
    expect(found('inches')).toEqual(amounts)
  })

  test('in metres', () => {
    const found = likelyAmounts(reading('13.60 m'), 'm')
    expect(found.map(({ nm, words }) => [nm / NM_PER_MM, words])).toEqual([
      [1000, 'one metre'],
      [-1000, 'one metre'],
      [100, 'ten centimetres'],
      [-100, 'ten centimetres'],
      [10, 'one centimetre'],
      [-10, 'one centimetre'],
      [10_000, 'ten metres'],
      [-10_000, 'ten metres'],
      // 31.60 m and 13.06 m; the point is no figure.
      [18_000, EXCHANGED],
      [-540, EXCHANGED],
    ])
  })

  test('of a length still to be read, no figures are exchanged', () => {
    const found = likelyAmounts({ ...reading(`12' 4"`), nm: null }, 'feet-inches')
    expect(found.map(({ words }) => words)).toEqual([
      'one foot',
      'one inch',
      'ten feet',
      'half an inch',
    ])
  })
})

test('areas are told to a tenth, a half to the even one, in the units of the job', () => {
  const squareMm = ratio(BigInt(NM_PER_MM) ** 2n)
  const squareInch = ratio(BigInt(NM_PER_INCH) ** 2n)
  expect(areaWords(multiply(ratio(1800), squareInch), 'feet-inches')).toBe('12.5 sq ft')
  expect(areaWords(multiply(ratio(1800), squareInch), 'inches')).toBe('12.5 sq ft')
  // 12.25 and 12.35 square metres.
  expect(areaWords(multiply(ratio(12_250_000), squareMm), 'm')).toBe('12.2 sq m')
  expect(areaWords(multiply(ratio(12_350_000), squareMm), 'mm')).toBe('12.4 sq m')
})
