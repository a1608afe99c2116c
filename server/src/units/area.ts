import { NM_PER_FOOT, NM_PER_INCH, NM_PER_M } from './length.ts'
import { divide, multiply, type Ratio, ratio } from './ratio.ts'

/** An area in square nanometres, exact. */
export type SquareNm = Ratio

const square = (nm: number): Ratio => ratio(BigInt(nm) * BigInt(nm))

/** What an area may be stated in, in square nanometres (16 CFR 500.19(a): the inch is 25.4 mm). */
export const SQUARE_NM = {
  'sq in': square(NM_PER_INCH),
  'sq ft': square(NM_PER_FOOT),
  'sq yd': square(3 * NM_PER_FOOT),
  'sq m': square(NM_PER_M),
} as const

export type AreaUnit = keyof typeof SQUARE_NM

/** The area of a ring from twice its signed area, as `geometry` gives it. */
export function areaFromTwice(twice: bigint): SquareNm {
  return ratio(twice < 0n ? -twice : twice, 2n)
}

/** An area in the unit asked for, exact. */
export function areaIn(unit: AreaUnit, area: SquareNm): Ratio {
  return divide(area, SQUARE_NM[unit])
}

/** So many of a unit as an area. */
export function areaOf(unit: AreaUnit, count: Ratio): SquareNm {
  return multiply(count, SQUARE_NM[unit])
}
