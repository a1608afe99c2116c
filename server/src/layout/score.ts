import { wholeNumber } from '../units/number.ts'
import { ratio } from '../units/ratio.ts'
import { roundRatio } from '../units/round.ts'
import { clashes, inLine, steps } from './clash.ts'
import type { Jointing } from './jointing.ts'
import type { PlankRules } from './problem.ts'
import type { Place } from './stretches.ts'

/** How good a plan is, the weightiest first: less is better in each. */
export interface Score {
  readonly breaches: number
  readonly boxes: number
  readonly slivers: number
  /** Joints that the next course but one repeats in an H or a step. */
  readonly repeats: number
  readonly hardCuts: number
  readonly planks: number
}

const BY_WEIGHT = ['breaches', 'boxes', 'slivers', 'repeats', 'hardCuts', 'planks'] as const

/** Below 0 where `a` is better than `b`. */
export function compareScores(a: Score, b: Score): number {
  for (const each of BY_WEIGHT) if (a[each] !== b[each]) return a[each] - b[each]
  return 0
}

/** Breaches of stagger, shortest end, doorway joints and narrow pieces in a jointed floor. */
export function breachesOf(
  places: readonly Place[],
  jointings: readonly Jointing[],
  rules: PlankRules,
): number {
  let count = 0
  for (const place of places) {
    const jointing = jointings[place.id]!
    count += jointing.breaches
    for (const touch of place.touches) {
      if (touch.other > place.id) count += clashes(jointing, jointings[touch.other]!, touch, rules)
    }
  }
  return count
}

/** The whole score of a floor laid with so many planks of each length. */
export function scoreOf(
  places: readonly Place[],
  jointings: readonly Jointing[],
  rules: PlankRules,
  used: readonly number[],
): Score {
  return {
    breaches: breachesOf(places, jointings, rules),
    boxes: boxesFor(rules, used),
    slivers: jointings.reduce((sum, each) => sum + each.slivers, 0),
    repeats: repeatsOf(places, jointings, rules),
    hardCuts: jointings.reduce((sum, each) => sum + each.hardCuts, 0),
    planks: used.reduce((sum, each) => sum + each, 0),
  }
}

function repeatsOf(
  places: readonly Place[],
  jointings: readonly Jointing[],
  rules: PlankRules,
): number {
  const longest = rules.lengths.reduce((most, each) => Math.max(most, each.length), 0)
  let count = 0
  for (const place of places) {
    const own = jointings[place.id]!
    if (own.joints.length === 0) continue
    const known = new Map<number, number>()
    for (const { between, other } of place.beyond) {
      if (other < place.id) continue
      const far = jointings[other]!
      // A long stretch lies over against another one beyond each of many between.
      const line = known.get(other) ?? inLine(own, far)
      known.set(other, line)
      count += line + steps(own, jointings[between]!, far, longest)
    }
  }
  return count
}

/**
 * Boxes to buy for planks used, by length as the rules list them: enough of every length, and enough
 * in all for spoil (at least 2 planks) and the spares promised. Exact: whole numbers only.
 */
export function boxesFor(rules: PlankRules, used: readonly number[]): number {
  const planks = used.reduce((sum, each) => sum + each, 0)
  const perBox = rules.lengths.reduce((sum, each) => sum + each.perBox, 0)
  const spoil = Math.max(2, rules.spoilPlanks + spoiledByPercent(rules, planks))
  const inAll = planks + spoil + rules.sparePlanks
  const byLength = used.map((count, i) => Math.ceil(count / rules.lengths[i]!.perBox))
  return Math.max(Math.ceil(inAll / perBox), ...byLength) + rules.spareBoxes
}

function spoiledByPercent(rules: PlankRules, planks: number): number {
  if (rules.spoilPercent === null) return 0
  const { n, d } = rules.spoilPercent
  return wholeNumber(roundRatio(ratio(BigInt(n) * BigInt(planks), BigInt(d) * 100n), 'up'))
}
