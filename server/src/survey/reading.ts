import type { Reading } from '../job/job.ts'

/** A length with its worth: the mean of a reading and its repeats, nanometres, not rounded. */
export interface Length {
  readonly nm: number
  /** One standard deviation. */
  readonly sigma: number
}

/**
 * The mean of a reading and those taken `again`, each weighted by 1/σ²; null while none was taken.
 * A single reading comes out as it was read.
 */
export function lengthFrom(reading: Reading | null): Length | null {
  if (reading === null) return null
  const taken = takenOf(reading)
  if (taken.length < 2) return taken[0] ?? null
  const weights = taken.map(({ sigma }) => 1 / (sigma * sigma))
  const weight = weights.reduce((sum, w) => sum + w, 0)
  const mean = taken.reduce((sum, { nm }, i) => sum + nm * weights[i]!, 0) / weight
  return { nm: mean, sigma: Math.sqrt(1 / weight) }
}

/** The readings that give a figure, the first and its repeats. No reading is worth less than 1 nm. */
export function takenOf(reading: Reading): readonly Length[] {
  return [reading, ...reading.again].flatMap(({ nm, sigma }) =>
    nm === null ? [] : [{ nm, sigma: Math.max(1, sigma) }],
  )
}

/**
 * What a difference of independent readings may come to: two standard deviations, 2·√Σσ². Beyond it
 * about one honest difference in twenty would be called wrong.
 */
export function allowedFor(sigmas: readonly number[]): number {
  return 2 * Math.sqrt(sigmas.reduce((sum, sigma) => sum + sigma * sigma, 0))
}

/** Past so many times what is allowed, a reading is no longer rough but wrong: an error, not a warning. */
export const SURELY_MISREAD = 4

/** Whether a reading and its repeats lie farther apart than two readings may. */
export function repeatsDisagree(reading: Reading): boolean {
  const spread = repeatSpread(reading)
  return spread !== null && spread.most - spread.least > spread.allowed
}

/** The least and the greatest of a reading and its repeats, and how far apart they may lie. */
export function repeatSpread(reading: Reading) {
  const taken = [...takenOf(reading)].sort((a, b) => a.nm - b.nm)
  const [least, most] = [taken[0], taken[taken.length - 1]]
  if (!least || !most) return null
  return { least: least.nm, most: most.nm, allowed: allowedFor([least.sigma, most.sigma]) }
}
