import { printDecimal } from '../units/decimal.ts'
import { NM_PER_FOOT, NM_PER_M, type Nm, type UnitStyle } from '../units/length.ts'
import { type Ratio, ratio } from '../units/ratio.ts'
import type { QuantityUnit } from './takeoff.ts'

/** The units that a job's areas and runs of trim are counted in: feet for feet and inches, else metres. */
export interface Measures {
  readonly area: 'sq ft' | 'sq m'
  readonly run: 'ft' | 'm'
  /** Nanometres in one unit of `run`. */
  readonly nm: Nm
}

export function measuresOf(style: UnitStyle): Measures {
  return style === 'feet-inches' || style === 'inches'
    ? { area: 'sq ft', run: 'ft', nm: NM_PER_FOOT }
    : { area: 'sq m', run: 'm', nm: NM_PER_M }
}

/** Half of a doubled area in square nanometres, as an exact ratio of the job's unit of area. */
export function areaOf(doubled: bigint, measures: Measures): Ratio {
  const side = BigInt(measures.nm)
  return ratio(doubled, 2n * side * side)
}

export function runOf(nm: bigint, measures: Measures): Ratio {
  return ratio(nm, BigInt(measures.nm))
}

/** One of a thing that is counted. */
const ONE_OF: ReadonlyMap<QuantityUnit, string> = new Map([
  ['planks', 'plank'],
  ['boxes', 'box'],
  ['pieces', 'piece'],
])

/** A value with its unit as people read it: areas, runs and percentages to a tenth, counts whole. */
export function printAmount(value: Ratio, unit: QuantityUnit): string {
  const one = ONE_OF.get(unit)
  if (one === undefined) return `${printDecimal(value, 1)} ${unit}`
  return `${printDecimal(value, 0)} ${value.n === value.d ? one : unit}`
}
