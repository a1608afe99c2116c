import { type Made, madeAgain, type Shelf } from '../facts/kept.ts'
import type { Message } from '../facts/message.ts'
import { once } from '../facts/once.ts'
import type { Job, Product } from '../job/job.ts'
import type { LaidFloor } from '../layout/lay.ts'
import type { Survey } from '../survey/survey.ts'
import { floorQuantities } from './floor-quantities.ts'
import { productQuantities } from './product-quantities.ts'
import type { FloorTakeoff, ProductTakeoff, Quantity, Takeoff } from './takeoff.ts'

/** Quantities of earlier runs. */
export interface TakeoffKept {
  readonly floors: Shelf<LaidFloor, Made<FloorTakeoff>>
  readonly products: Shelf<Product, Made<ProductTakeoff>>
}

/**
 * Counts what the laid floors come to. `messages` are all that was said before: an error or something
 * still to come makes every total incomplete, for nobody can tell what it would move.
 */
export function takeoff(
  job: Job,
  survey: Survey,
  laid: readonly LaidFloor[],
  messages: readonly Message[],
  kept?: TakeoffKept,
): Takeoff {
  const byProduct = Map.groupBy(laid, (floor) => floor.product.name.key)
  const used = job.products.filter((product) => byProduct.has(product.name.key))
  const counted: Takeoff = {
    floors: laid.map((floor) => floorQuantities(job, survey, floor, kept?.floors)),
    products: used.map((product) => {
      const floors = byProduct.get(product.name.key)!
      return madeAgain(kept?.products, product, floors, () => productQuantities(product, floors))
    }),
    complete: true,
    incompleteBecause: [],
  }
  const causes = causesIn(messages)
  if (causes.length > 0 || laid.length > 0) return incomplete(counted, causes)
  return incomplete(counted, ['No floor is laid: write a floor block with rooms and lay.'])
}

/** The same quantities after more was said: an error, an unmet expectation too, makes none of them final. */
export function afterMore(takeoff: Takeoff, messages: readonly Message[]): Takeoff {
  return incomplete(takeoff, causesIn(messages))
}

/** The same quantities marked once are the same when they are marked again. */
const marked = once(
  <T extends { readonly quantities: readonly Quantity[] }>(counted: T): T => ({
    ...counted,
    quantities: counted.quantities.map((quantity) => ({ ...quantity, complete: false })),
  }),
) as <T extends { readonly quantities: readonly Quantity[] }>(counted: T) => T

function causesIn(messages: readonly Message[]): readonly string[] {
  return messages
    .filter(({ weight }) => weight === 'error' || weight === 'incomplete')
    .map(({ text }) => text)
}

/** Marked incomplete for these causes; as it was where there are none. */
function incomplete(takeoff: Takeoff, causes: readonly string[]): Takeoff {
  if (causes.length === 0) return takeoff
  return {
    floors: takeoff.floors.map(marked),
    products: takeoff.products.map(marked),
    complete: false,
    incompleteBecause: [...takeoff.incompleteBecause, ...causes],
  }
}
