import type { Derivation } from '../facts/derivation.ts'
import type { Ratio } from '../units/ratio.ts'

/**
 * The quantities of a job, each with where it came from. Quantities of a floor stand under the floor;
 * what is bought (spoil, spares, boxes) is counted once for a product over all its floors.
 */
export interface Takeoff {
  readonly floors: readonly FloorTakeoff[]
  readonly products: readonly ProductTakeoff[]
  readonly complete: boolean
  /** Why the totals are not ready, in sentences; empty when they are. */
  readonly incompleteBecause: readonly string[]
}

export interface FloorTakeoff {
  readonly floor: string
  readonly product: string
  readonly quantities: readonly Quantity[]
}

export interface ProductTakeoff {
  readonly product: string
  readonly quantities: readonly Quantity[]
}

export type QuantityUnit = 'sq ft' | 'sq m' | 'planks' | 'boxes' | 'ft' | 'm' | '%' | 'pieces'

export interface Quantity {
  /** Stable, in plain words: 'floor area', 'planks', 'boxes'. */
  readonly key: string
  readonly label: string
  /** The room it belongs to; null for the whole floor or product. */
  readonly room: string | null
  /** Exact; null while something it needs is missing. */
  readonly value: Ratio | null
  readonly unit: QuantityUnit
  /** The value as people read it, with its unit; what is missing, where there is no value. */
  readonly printed: string
  readonly complete: boolean
  readonly derivation: Derivation
}
