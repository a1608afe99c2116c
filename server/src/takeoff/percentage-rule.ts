import { add, divide, multiply, ONE, type Ratio, ratio } from '../units/ratio.ts'
import { roundRatio } from '../units/round.ts'

/**
 * The rule of thumb that most people order by: area × (1 + allowance) ÷ what one unit covers, in whole
 * units, exactly and rounded up once. `percent` is 10 for 10 %. Common practice, no source. Throws a
 * RangeError when a unit covers nothing.
 */
export function wholeUnits(area: Ratio, percent: Ratio, unitArea: Ratio): bigint {
  const wanted = multiply(area, add(ONE, multiply(percent, ratio(1, 100))))
  return roundRatio(divide(wanted, unitArea), 'up')
}
