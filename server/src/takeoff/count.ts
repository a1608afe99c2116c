import type { Message } from '../facts/message.ts'
import type { Job } from '../job/job.ts'
import type { LaidFloor } from '../layout/lay.ts'
import type { Survey } from '../survey/survey.ts'
import { floorQuantities } from './floor-quantities.ts'
import { productQuantities } from './product-quantities.ts'
import type { Quantity, Takeoff } from './takeoff.ts'

/**
 * Counts what the laid floors come to. `messages` are all that was said before: an error or something
 * still to come makes every total incomplete, for nobody can tell what it would move.
 */
export function takeoff(
  job: Job,
  survey: Survey,
  laid: readonly LaidFloor[],
  messages: readonly Message[],
): Takeoff {
  const byProduct = Map.groupBy(laid, (floor) => floor.product.name.key)
  const used = job.products.filter((product) => byProduct.has(product.name.key))
  const counted: Takeoff = {
    floors: laid.map((floor) => floorQuantities(job, survey, floor)),
    products: used.map((product) => productQuantities(product, byProduct.get(product.name.key)!)),
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

function causesIn(messages: readonly Message[]): readonly string[] {
  return messages
    .filter(({ weight }) => weight === 'error' || weight === 'incomplete')
    .map(({ text }) => text)
}

/** Marked incomplete for these causes; as it was where there are none. */
function incomplete(takeoff: Takeoff, causes: readonly string[]): Takeoff {
  if (causes.length === 0) return takeoff
  const marked = <T extends { readonly quantities: readonly Quantity[] }>(counted: T): T => ({
    ...counted,
    quantities: counted.quantities.map((quantity) => ({ ...quantity, complete: false })),
  })
  return {
    floors: takeoff.floors.map(marked),
    products: takeoff.products.map(marked),
    complete: false,
    incompleteBecause: [...takeoff.incompleteBecause, ...causes],
  }
}
