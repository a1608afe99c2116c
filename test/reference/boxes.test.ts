import { expect, test } from 'vitest'
import { wholeUnits } from '../../server/src/takeoff/percentage-rule.ts'
import { type Ratio, ratio } from '../../server/src/units/ratio.ts'

const hundredths = (value: number): Ratio => ratio(BigInt(value), 100n)

/**
 * Area plus percentage, in boxes. The rule is common practice, no source; the answers are computed
 * exactly. The third line comes to 12 in binary floating point (100 * 1.1 / 10 is a little over 11).
 */
test.each([
  { area: 13246, percent: 10, box: 2364, boxes: 7n },
  { area: 31875, percent: 10, box: 2080, boxes: 17n },
  { area: 10000, percent: 10, box: 1000, boxes: 11n },
  { area: 24000, percent: 0, box: 2400, boxes: 10n },
  { area: 24000, percent: 5, box: 2400, boxes: 11n },
])('$area hundredths of a sq ft at $percent % in boxes of $box: $boxes', (line) => {
  expect(wholeUnits(hundredths(line.area), ratio(line.percent), hundredths(line.box))).toBe(
    line.boxes,
  )
})
