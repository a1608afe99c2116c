import type { Job, Product } from '../job/job.ts'
import type { PlankRules } from './problem.ts'

/** The rules of a product and of the job's offcut pile, as the planner takes them. */
export function plankRules(job: Job, product: Product): PlankRules {
  const { rules, spoil, spares } = product
  return {
    width: product.width,
    lengths: product.lengths,
    stagger: rules.stagger.value,
    shortestEnd: rules.shortestEnd.value,
    narrowestRip: rules.narrowestRip.value,
    kerfAlong: rules.kerfAlong.value,
    kerfAcross: rules.kerfAcross.value,
    toSpare: rules.toSpare.value,
    laid: rules.laid,
    longestRun: rules.longestRun,
    pile: { pieces: job.pile.pieces, courses: job.pile.courses },
    spoilPlanks: spoil.planks ?? 0,
    spoilPercent: spoil.percent && { n: `${spoil.percent.n}`, d: `${spoil.percent.d}` },
    sparePlanks: spares.planks,
    spareBoxes: spares.boxes,
  }
}
