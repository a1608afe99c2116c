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
  const causes = messages.filter(
    (message) => message.weight === 'error' || message.weight === 'incomplete',
  )
  const complete = causes.length === 0 && laid.length > 0
  const mark = (quantity: Quantity): Quantity => (complete ? quantity : { ...quantity, complete })
  const used = job.products.filter((product) =>
    laid.some((floor) => floor.product.name.key === product.name.key),
  )
  return {
    floors: laid.map((floor) => {
      const counted = floorQuantities(job, survey, floor)
      return { ...counted, quantities: counted.quantities.map(mark) }
    }),
    products: used.map((product) => {
      const floors = laid.filter((floor) => floor.product.name.key === product.name.key)
      const counted = productQuantities(product, floors)
      return { ...counted, quantities: counted.quantities.map(mark) }
    }),
    complete,
    incompleteBecause:
      laid.length === 0 && causes.length === 0
        ? ['No floor is laid: write a floor block with rooms and lay.']
        : causes.map((cause) => cause.text),
  }
}
