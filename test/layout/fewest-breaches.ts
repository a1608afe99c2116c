import type { Problem, Stretch } from '../../server/src/layout/problem.ts'

/**
 * The fewest breaches that any plan of a small problem can have whose start pieces are whole steps
 * long: every combination of start pieces, course by course. For planks of one length, without posts.
 */
export function fewestBreaches(problem: Problem, step: number): number {
  const { courses, stretches } = problem
  let before: { picks: readonly number[]; breaches: number }[] = [{ picks: [], breaches: 0 }]
  let beforeIn: readonly Stretch[] = []
  for (const { course } of courses) {
    const here = stretches.filter((stretch) => stretch.course === course)
    const choices = here.map((stretch) => startPieces(stretch, problem, step))
    const pairs = pairTables(problem, beforeIn, here, step)
    before = combinations(choices.map((each) => each.length)).map((picks) => {
      const own = picks.reduce((sum, pick, i) => sum + choices[i]![pick]!.breaches, 0)
      const least = before.reduce((best, earlier) => {
        let breaches = earlier.breaches
        for (const { below, above, table } of pairs) {
          breaches += table[earlier.picks[below]!]![picks[above]!]!
        }
        return Math.min(best, breaches)
      }, Infinity)
      return { picks, breaches: own + least }
    })
    beforeIn = here
  }
  return before.reduce((best, each) => Math.min(best, each.breaches), Infinity)
}

interface Choice {
  readonly joints: readonly number[]
  readonly breaches: number
}

function startPieces(stretch: Stretch, { rules }: Problem, step: number): readonly Choice[] {
  const plank = rules.lengths[0]!.length
  const length = stretch.to - stretch.from
  const starts = length <= plank ? [length] : []
  for (let start = step; start <= plank && start < length; start += step) starts.push(start)
  return starts.map((start) => {
    const joints: number[] = []
    for (let u = stretch.from + start; u < stretch.to; u += plank) joints.push(u)
    const edges = [stretch.from, ...joints, stretch.to]
    let breaches = 0
    for (const [i, to] of edges.slice(1).entries()) {
      const from = edges[i]!
      if (to - from < plank && to - from < rules.shortestEnd) breaches += 1
      const narrow = (band: { from: number; to: number; low: number; high: number }) =>
        band.high - band.low < rules.narrowestRip && band.from < to && band.to > from
      if (stretch.bands.some(narrow)) breaches += 1
    }
    for (const u of joints) {
      if (stretch.doorways.some((zone) => zone.from < u && u < zone.to)) breaches += 1
    }
    return { joints, breaches }
  })
}

/** For each contact between two courses, what each pair of choices costs; aligned joints are no plan. */
function pairTables(
  problem: Problem,
  lower: readonly Stretch[],
  upper: readonly Stretch[],
  step: number,
) {
  return problem.contacts.flatMap((contact) => {
    const below = lower.findIndex((stretch) => stretch.id === contact.below)
    const above = upper.findIndex((stretch) => stretch.id === contact.above)
    if (below < 0 || above < 0) return []
    const { from, to } = contact
    const { stagger } = problem.rules
    const uppers = startPieces(upper[above]!, problem, step)
    const table = startPieces(lower[below]!, problem, step).map((a) =>
      uppers.map((b) => {
        let cost = 0
        for (const u of a.joints) {
          for (const w of b.joints) {
            const [first, last] = [Math.min(u, w), Math.max(u, w)]
            if (u === w && from <= u && u <= to) cost = Infinity
            else if (from < first && last < to && last - first < stagger) cost += 1
          }
        }
        return cost
      }),
    )
    return [{ below, above, table }]
  })
}

function combinations(counts: readonly number[]): readonly (readonly number[])[] {
  return counts.reduce<readonly (readonly number[])[]>(
    (sofar, count) =>
      sofar.flatMap((each) => Array.from({ length: count }, (_, pick) => [...each, pick])),
    [[]],
  )
}
