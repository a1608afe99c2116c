import { twiceAreaOf } from '../geometry/exact.ts'
import type { Region } from '../geometry/point.ts'
import { areaFromTwice, areaIn } from '../units/area.ts'
import { printDecimal } from '../units/decimal.ts'
import type { UnitStyle } from '../units/length.ts'

/** The area of a region to a tenth of a square foot or metre, half to even. */
export function areaText(region: Region, units: UnitStyle): string {
  const unit = units === 'feet-inches' || units === 'inches' ? 'sq ft' : 'sq m'
  return `${printDecimal(areaIn(unit, areaFromTwice(twiceAreaOf(region))), 1)} ${unit}`
}
