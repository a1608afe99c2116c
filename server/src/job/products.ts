import { once } from '../facts/once.ts'
import type { Block, Entry, Name } from '../language/tree.ts'
import type { Binding } from './binding.ts'
import type { Product } from './job.ts'
import { directory, type Named } from './names.ts'
import { type BlocksKept, boundAgain, itself, noting } from './notes.ts'
import { nameOf } from './phrases.ts'
import { productOf } from './product.ts'

/** The products of a job: all that are declared, by name, and those whose facts are all there. */
export interface BoundProducts {
  readonly declared: ReadonlyMap<string, Named>
  readonly products: readonly Product[]
}

/** Products of earlier runs. */
export type ProductsKept = BlocksKept<Binding, Product | null>

/** Binds all products. What one of them lacks holds nothing up unless a floor is laid with it. */
export function bindProducts(
  blocks: readonly Block[],
  binding: Binding,
  kept?: ProductsKept,
): BoundProducts {
  const named = blocks.flatMap((block) =>
    block.word === 'product' && block.name !== null ? [{ block, name: block.name }] : [],
  )
  const declared = directory('product', named, binding)
  const laid = laidProducts(blocks)
  const products = [...declared].flatMap(([key, { block, name }]) => {
    const isUsed = laid === null || laid.has(key)
    const before = { given: [isUsed], now: binding }
    return (
      boundAgain(kept, block, before, (notes) =>
        productOf(block, name, isUsed, noting(notes, binding, itself)),
      ) ?? []
    )
  })
  return { declared, products }
}

const layLines = once((block: Block): readonly Entry[] =>
  block.word === 'floor' ? block.under.filter(({ word }) => word === 'lay') : [],
)

/** Keys of the products that floors are laid with; null while no floor is. */
function laidProducts(blocks: readonly Block[]): ReadonlySet<string> | null {
  const lays = blocks.flatMap(layLines)
  const names: readonly (Name | null)[] = lays.map((line) => nameOf(line, 'PRODUCT'))
  return lays.length === 0 ? null : new Set(names.flatMap((name) => name?.key ?? []))
}
