import type { Blank, Plan } from '../../server/src/layout/plan.ts'
import type { Problem, Stretch } from '../../server/src/layout/problem.ts'

/**
 * What is wrong with a plan, proved from the rules of the published layout and from nothing of the
 * planner's: each stretch covered, each blank a rectangle of its plank with the ends and edges it
 * needs, kerf and spare kept, offcuts only in later courses and not too long, no joints aligned.
 */
export function planFaults(problem: Problem, plan: Plan): readonly string[] {
  return [
    ...problem.stretches.flatMap((stretch) => stretchFaults(problem, plan, stretch)),
    ...plan.planks.flatMap(({ plank }) => plankFaults(problem, plan, plank)),
    ...pileFaults(problem, plan),
    ...alignmentFaults(problem, plan),
  ]
}

/** Breaches of a plan, counted from the contract's definitions. */
export function planBreaches(problem: Problem, plan: Plan): number {
  const { rules } = problem
  let count = 0
  for (const blank of plan.blanks) {
    const stretch = problem.stretches[blank.stretch]!
    const length = blank.to - blank.from
    if (length < lengthOf(plan, blank) && length < rules.shortestEnd) count += 1
    const narrow = stretch.bands.some(
      (band) =>
        band.high - band.low < rules.narrowestRip && band.from < blank.to && band.to > blank.from,
    )
    if (narrow) count += 1
  }
  for (const stretch of problem.stretches) {
    for (const u of jointsOf(plan, stretch)) {
      if (stretch.doorways.some((zone) => zone.from < u && u < zone.to)) count += 1
    }
  }
  for (const { below, above, from, to } of problem.contacts) {
    for (const u of jointsOf(plan, problem.stretches[below]!)) {
      for (const w of jointsOf(plan, problem.stretches[above]!)) {
        const inside = from < u && u < to && from < w && w < to
        if (inside && Math.abs(u - w) < rules.stagger) count += 1
      }
    }
  }
  return count
}

function blanksIn(plan: Plan, stretch: Stretch): readonly Blank[] {
  return plan.blanks.filter((blank) => blank.stretch === stretch.id).sort((a, b) => a.from - b.from)
}

function jointsOf(plan: Plan, stretch: Stretch): readonly number[] {
  return blanksIn(plan, stretch)
    .slice(1)
    .map((blank) => blank.from)
}

function lengthOf(plan: Plan, blank: Blank): number {
  return plan.planks.find((each) => each.plank === blank.plank)!.length
}

function stretchFaults(problem: Problem, plan: Plan, stretch: Stretch): readonly string[] {
  const faults: string[] = []
  const blanks = blanksIn(plan, stretch)
  let at = stretch.from
  for (const blank of blanks) {
    if (blank.from !== at || blank.to <= blank.from)
      faults.push(`stretch ${stretch.id}: gap at ${at}`)
    at = blank.to
    faults.push(...blankFaults(problem, plan, stretch, blank))
  }
  if (at !== stretch.to) faults.push(`stretch ${stretch.id} is not covered to its end`)
  for (const post of stretch.posts) {
    const open = jointsOf(plan, stretch).some((u) => post.from < u && u < post.to)
    if (!open) faults.push(`a post in stretch ${stretch.id} is closed in`)
  }
  return faults
}

function blankFaults(
  problem: Problem,
  plan: Plan,
  stretch: Stretch,
  blank: Blank,
): readonly string[] {
  const faults: string[] = []
  const { width } = problem.rules
  const length = lengthOf(plan, blank)
  const course = problem.courses[stretch.course - 1]!
  const under = stretch.bands.filter((band) => band.from < blank.to && band.to > blank.from)
  const low = Math.min(...under.map((band) => band.low))
  const high = Math.max(...under.map((band) => band.high))
  const [a0, a1] = blank.along
  const [c0, c1] = blank.across
  const say = (what: string) => faults.push(`blank at ${blank.from} in ${stretch.id}: ${what}`)
  if (blank.turned && problem.rules.laid !== 'either way') say('turned')
  if (a0 < 0 || a1 > length || c0 < 0 || c1 > width) say('outside its plank')
  if (a1 - a0 !== blank.to - blank.from) say('not as long as its span')
  if (c1 - c0 < high - low) say('too narrow')
  const ends = { low: c0 === 0, high: c1 === width, left: a0 === 0, right: a1 === length }
  const seen = blank.turned
    ? { low: ends.high, high: ends.low, left: ends.right, right: ends.left }
    : ends
  if (low === course.low && !seen.low) say('no low edge')
  if (high === course.high && !seen.high) say('no high edge')
  for (const [u, end] of [
    [blank.from, seen.left],
    [blank.to, seen.right],
  ] as const) {
    if (u === stretch.from || u === stretch.to) continue
    if (isParted(plan, stretch, u)) {
      if (!stretch.posts.some((post) => post.from < u && u < post.to)) say('parted without a post')
      if (end) say('a factory end glued')
    } else if (!end) say('no factory end at a joint')
  }
  return faults
}

/** A joint where neither end is a factory one: it must be at a post. */
function isParted(plan: Plan, stretch: Stretch, u: number): boolean {
  const left = plan.blanks.find((blank) => blank.stretch === stretch.id && blank.to === u)!
  const right = plan.blanks.find((blank) => blank.stretch === stretch.id && blank.from === u)!
  const end = (blank: Blank, side: 'left' | 'right') =>
    (side === 'right') !== blank.turned
      ? blank.along[1] === lengthOf(plan, blank)
      : blank.along[0] === 0
  return !end(left, 'right') && !end(right, 'left')
}

function isApart(a: readonly [number, number], b: readonly [number, number], by: number): boolean {
  return a[1] + by <= b[0] || b[1] + by <= a[0]
}

function orderOf(problem: Problem, blank: Blank): number {
  return problem.courses[blank.course - 1]!.order
}

function ofPlank(problem: Problem, plan: Plan, plank: number): readonly Blank[] {
  return plan.blanks
    .filter((blank) => blank.plank === plank)
    .sort((a, b) => orderOf(problem, a) - orderOf(problem, b))
}

function plankFaults(problem: Problem, plan: Plan, plank: number): readonly string[] {
  const faults: string[] = []
  const { kerfAlong, kerfAcross, toSpare } = problem.rules
  const blanks = ofPlank(problem, plan, plank)
  if (blanks.length === 0) faults.push(`plank ${plank} is not used`)
  for (const [index, a] of blanks.entries()) {
    for (const b of blanks.slice(index + 1)) {
      if (orderOf(problem, a) === orderOf(problem, b)) faults.push(`plank ${plank}: one course`)
      if (isApart(a.across, b.across, kerfAlong)) continue
      if (!isApart(a.along, b.along, kerfAcross + toSpare)) faults.push(`plank ${plank}: too close`)
    }
  }
  return faults
}

/** The crosscut rests that wait: from the blank that made them to their own. */
function waits(problem: Problem, plan: Plan): readonly (readonly [number, number])[] {
  return plan.planks.flatMap(({ plank }) => {
    const blanks = ofPlank(problem, plan, plank)
    return blanks.flatMap((blank, index) => {
      const before = blanks
        .slice(0, index)
        .filter((each) => !isApart(each.across, blank.across, problem.rules.kerfAlong))
        .at(-1)
      return before === undefined
        ? []
        : [[orderOf(problem, before), orderOf(problem, blank)] as const]
    })
  })
}

function pileFaults(problem: Problem, plan: Plan): readonly string[] {
  const { pile } = problem.rules
  const all = waits(problem, plan)
  const late = all.filter(([since, until]) => until - since > pile.courses)
  const crowded = problem.courses.filter(
    ({ order }) =>
      all.filter(([since, until]) => since <= order && order < until).length > pile.pieces,
  )
  return [
    ...late.map(([since, until]) => `a rest waits from ${since} to ${until}`),
    ...crowded.map(({ order }) => `too many rests wait after ${order}`),
  ]
}

function alignmentFaults(problem: Problem, plan: Plan): readonly string[] {
  return problem.contacts.flatMap(({ below, above, from, to }) => {
    const others = new Set(jointsOf(plan, problem.stretches[above]!))
    return jointsOf(plan, problem.stretches[below]!)
      .filter((u) => from <= u && u <= to && others.has(u))
      .map((u) => `joints aligned at ${u} between ${below} and ${above}`)
  })
}
