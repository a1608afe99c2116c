import { areaIn, type SquareNm } from '../units/area.ts'
import type { UnitStyle } from '../units/length.ts'
import { multiply, ratio } from '../units/ratio.ts'
import { roundRatio } from '../units/round.ts'

/** An area for people, to a tenth: square feet or square metres, as the job's lengths are printed. */
export function areaWords(area: SquareNm, style: UnitStyle): string {
  const unit = style === 'feet-inches' || style === 'inches' ? 'sq ft' : 'sq m'
  const tenths = roundRatio(multiply(areaIn(unit, area), ratio(10)), 'half to even')
  return `${tenths / 10n}.${tenths % 10n} ${unit}`
}
