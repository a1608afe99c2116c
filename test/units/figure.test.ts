import { describe, expect, test } from 'vitest'
import { endOfFigure, kindOfFigure } from '../../server/src/units/figure.ts'

/** The figure that starts where the bar stands. */
const figureIn = (marked: string): string => {
  const at = marked.indexOf('|')
  const text = marked.replace('|', '')
  return text.slice(at, endOfFigure(text, at))
}

describe('one reading, right or wrong, is one figure', () => {
  test.each([
    [`|12' 4 1/2", left`, `12' 4 1/2"`],
    [`from |1' 2" to left`, `1' 2"`],
    [`|12'4-1/2" wall`, `12'4-1/2"`],
    [`|12' - 4-1/2"`, `12' - 4-1/2"`],
    [`|12 ' 4 1/2 " x`, `12 ' 4 1/2 "`],
    [`|12' 4½"`, `12' 4½"`],
    [`|½ "`, `½ "`],
    [`|½/2"`, `½/2"`],
    [`|4'' wide`, `4''`],
    [`|12 ft 4 in wide`, `12 ft 4 in`],
    [`|12 feet 4 inches`, `12 feet 4 inches`],
    [`|12 foot 4 inch`, `12 foot 4 inch`],
    [`|148 1/2"`, `148 1/2"`],
    [`|3.76 m, x`, `3.76 m`],
    [`|3760mm`, `3760mm`],
    [`|376 cm`, `376 cm`],
    [`|6 3/4" x 47 7/8"`, `6 3/4"`],
    [`|6x4`, '6'],
    [`|6 x 4`, '6'],
    [`|6×.5`, '6'],
    [`|6x½`, '6'],
    [`|10 planks`, '10'],
    [`|3 %`, '3 %'],
    [`|7% more`, '7%'],
    [`|45° turn`, '45°'],
    [`|45 degrees`, '45 degrees'],
    [`|1 degree`, '1 degree'],
    [`|2027-04-12 x`, '2027-04-12'],
    // Slips inside a reading stay in it, so that they get one message.
    [`|12' 4`, `12' 4`],
    [`|12' 41/2"`, `12' 41/2"`],
    [`|12" 4'`, `12" 4'`],
    [`|12,4 m`, '12,4 m'],
    [`|1.234,5 m`, '1.234,5 m'],
    [`|7/16/2"`, `7/16/2"`],
    [`|7/"`, `7/"`],
    [`|5." x`, `5."`],
    [`|.5"`, `.5"`],
    [`|12-4 x 2`, '12-4'],
    [`|-4"`, `-4"`],
    [`|−4"`, `−4"`],
    [`|١٢' ٤"`, `١٢' ٤"`],
  ])('%s: %s', (marked, figure) => {
    expect(figureIn(marked)).toBe(figure)
  })

  test.each([
    ['an entry ends at a comma with a blank', `|12' 4", 3"`, `12' 4"`],
    ['two points are not part of a number', '|12..4', '12'],
    ['a word after feet is not theirs', `|12' 4 planks`, `12' 4`],
    ['two marks of feet are inches', `|12''' x`, `12''`],
  ])('%s', (_, marked, figure) => {
    expect(figureIn(marked)).toBe(figure)
  })

  test.each([
    `|wall`,
    `|x4`,
    `|"`,
    `|'`,
    `|`,
    `|,4`,
    `|4th`,
    `|4_`,
    `|3meters`,
    `|6x`,
    `|6xy`,
    `|6é`,
  ])('%s starts none', (marked) => {
    expect(figureIn(marked)).toBe('')
  })
})

test.each([
  [`12' 4"`, 'length'],
  ['12 ft', 'length'],
  ['3.76 M', 'length'],
  [`4”`, 'length'],
  ['12', 'bare'],
  ['12-4', 'bare'],
  ['4 ½', 'bare'],
  ['7 %', 'percent'],
  ['45°', 'angle'],
  ['45 º', 'angle'],
  ['45 degrees', 'angle'],
  ['1 Degree', 'angle'],
  ['2027-04-12', 'date'],
  ['12027-04-12', 'bare'],
  ['2027-04-123', 'bare'],
  ['2027-4-12', 'bare'],
  ['2027-04-1', 'bare'],
  ['2-04-12', 'bare'],
])('%s is of the kind %s', (text, kind) => {
  expect(kindOfFigure(text)).toBe(kind)
})
