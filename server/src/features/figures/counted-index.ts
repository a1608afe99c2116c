import { keyOf } from '../../language/name.ts'
import type { LaidFloor } from '../../layout/lay.ts'
import type { Compiled } from '../../report/compiled.ts'
import type { Quantity } from '../../takeoff/takeoff.ts'

export interface CountedFloor {
  readonly laid: LaidFloor
  readonly quantities: readonly Quantity[]
}

export interface CountedProduct {
  readonly quantities: readonly Quantity[]
  /** The floors that it is laid in. */
  readonly floors: readonly LaidFloor[]
}

/** What a job comes to, by the keys of its floors and products; those without a count are not in it. */
export interface CountedIndex {
  readonly floors: ReadonlyMap<string, CountedFloor>
  readonly products: ReadonlyMap<string, CountedProduct>
}

const known = new WeakMap<Compiled, CountedIndex>()

/** A count looked through once by its names, however many questions are asked of it. */
export function countedIndex(compiled: Compiled): CountedIndex {
  const there = known.get(compiled)
  if (there !== undefined) return there
  const { floors, takeoff } = compiled
  const laidOf = Map.groupBy(floors, ({ product }) => product.name.key)
  const made = {
    floors: new Map(
      floors.map((laid, i) => [
        laid.floor.name.key,
        { laid, quantities: takeoff.floors[i]!.quantities },
      ]),
    ),
    products: new Map(
      takeoff.products.map(({ product, quantities }) => [
        keyOf(product),
        { quantities, floors: laidOf.get(keyOf(product)) ?? [] },
      ]),
    ),
  }
  known.set(compiled, made)
  return made
}

/** The quantity of a key that belongs to the whole floor or product. */
export function quantityOf(quantities: readonly Quantity[], key: string): Quantity | undefined {
  return quantities.find((quantity) => quantity.key === key && quantity.room === null)
}
