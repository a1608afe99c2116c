import { NM_PER_INCH, NM_PER_MM, type Nm, type UnitStyle } from './length.ts'

/** What is cut to fit is never cut too long: down to 1/16 in, or to the millimetre. */
export function downToMark(size: Nm, units: UnitStyle): Nm {
  const mark = units === 'feet-inches' || units === 'inches' ? NM_PER_INCH / 16 : NM_PER_MM
  return Math.floor(size / mark) * mark
}
