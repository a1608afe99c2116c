import type { Problem, Stretch } from '../../server/src/layout/problem.ts'

/** One way to joint a stretch, and the breaches that it has whatever lies beside it. */
export interface Choice {
  readonly joints: readonly number[]
  readonly breaches: number
}

/** Aligned joints are no plan at all: this outweighs all breaches of a small floor. */
const NO_PLAN = 1_000_000

/**
 * The ways to joint each stretch that matter, for planks of one length and no posts: start pieces on a
 * grid, and each one at which something just fits. What decides a breach is where the joints lie modulo
 * the plank, against the ends of stretches, doorways, narrow parts and contacts, and a stagger off
 * another stretch's joints. So of all plans with the fewest breaches there is one in which each
 * stretch's joints lie at one of those places or whole staggers off one: the start pieces tried here
 * miss none by more than a joint that would have to keep off alignment by a nanometre.
 */
export function choicesOf(problem: Problem, step: number): readonly (readonly Choice[])[] {
  const tight = tightPlaces(problem)
  return problem.stretches.map((stretch) =>
    startPieces(stretch, problem, step, tight).map((start) => choiceOf(stretch, start, problem)),
  )
}

/** Only these on the grid, for whoever tries them one by one. */
export function choicesOnGrid(problem: Problem, step: number): readonly (readonly Choice[])[] {
  return problem.stretches.map((stretch) =>
    startPieces(stretch, problem, step, new Set()).map((start) =>
      choiceOf(stretch, start, problem),
    ),
  )
}

/**
 * Those of the choices that a plan with fewer breaches than `ours` can have: what one stretch has more
 * than it must, the others cannot make up for. Null where the least that each must have comes to `ours`.
 */
export function choicesForFewer(
  choices: readonly (readonly Choice[])[],
  ours: number,
): readonly (readonly Choice[])[] | null {
  const least = choices.map((each) => Math.min(...each.map(({ breaches }) => breaches)))
  const left = ours - 1 - least.reduce((sum, each) => sum + each, 0)
  if (left < 0) return null
  return choices.map((each, i) => each.filter(({ breaches }) => breaches <= least[i]! + left))
}

/** No chain of staggers that hang on one another is longer than this in a floor of a few courses. */
const LONGEST_CHAIN = 6

/** u modulo the plank where a joint just fits something, and whole staggers off it. */
function tightPlaces({ stretches, contacts, rules, courses }: Problem): ReadonlySet<number> {
  const plank = rules.lengths[0]!.length
  const chain = Math.min(LONGEST_CHAIN, courses.length)
  const fixed = [
    ...stretches.flatMap(({ from, to, doorways, bands }) => [
      from,
      to,
      from + rules.shortestEnd,
      to - rules.shortestEnd,
      ...doorways.flatMap((zone) => [zone.from, zone.to]),
      ...bands.flatMap((band) => [band.from, band.to]),
    ]),
    ...contacts.flatMap((contact) => [contact.from, contact.to]),
  ]
  const places = new Set<number>()
  for (const u of fixed) {
    for (let m = -chain; m <= chain; m += 1) places.add(modulo(u + m * rules.stagger, plank))
  }
  return places
}

function modulo(value: number, by: number): number {
  return ((value % by) + by) % by
}

function startPieces(
  { from, to }: Stretch,
  { rules }: Problem,
  step: number,
  tight: ReadonlySet<number>,
): readonly number[] {
  const plank = rules.lengths[0]!.length
  const length = to - from
  const starts = new Set(length <= plank ? [length] : [])
  for (let start = step; start <= plank; start += step) if (start < length) starts.add(start)
  for (const place of tight) {
    const start = modulo(place - from, plank) || plank
    if (start < length) starts.add(start)
  }
  return [...starts]
}

function choiceOf(stretch: Stretch, start: number, { rules }: Problem): Choice {
  const plank = rules.lengths[0]!.length
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
}

/** What two choices of stretches that touch cost together, row by row of the first. */
type Table = Int32Array

/** Breaches between two jointed stretches along one contact; aligned joints are no plan. */
export function breachesBetween(
  below: Choice,
  above: Choice,
  { from, to }: Problem['contacts'][number],
  stagger: number,
): number {
  let count = 0
  for (const u of below.joints) {
    for (const w of above.joints) {
      const [first, last] = u < w ? [u, w] : [w, u]
      if (u === w && from <= u && u <= to) count += NO_PLAN
      else if (from < first && last < to && last - first < stagger) count += 1
    }
  }
  return count
}

/**
 * The fewest breaches that any plan of a small problem can have with these choices. Breaches are of one
 * stretch or of two that touch, so it is exact to go through the stretches course by course and keep,
 * for every combination of choices of those that later ones still touch, the fewest breaches so far.
 * Cost: the choices to the power of one more than the stretches that are kept at once.
 */
export function fewestBreaches(problem: Problem, choices: readonly (readonly Choice[])[]): number {
  const pairs = pairTables(problem, choices)
  const lastTouched = problem.stretches.map(({ id }) =>
    Math.max(id, ...[...pairs.keys()].flatMap((key) => touching(key, id))),
  )
  let open: readonly number[] = []
  let fewest: Table = new Int32Array(1)
  for (const { id } of problem.stretches) {
    const done = open.findIndex((each) => lastTouched[each] === id)
    ;({ open, fewest } = withStretch({ open, fewest }, id, done, choices, pairs))
    for (;;) {
      const closed = open.findIndex((each) => lastTouched[each]! <= id)
      if (closed < 0) break
      ;({ open, fewest } = without({ open, fewest }, closed, choices))
    }
  }
  return fewest[0]!
}

/** Fewest breaches for every combination of choices of the open stretches, the last one running fastest. */
interface Front {
  readonly open: readonly number[]
  readonly fewest: Table
}

function touching(key: string, id: number): number[] {
  const [a, b] = key.split(' ').map(Number) as [number, number]
  return a === id ? [b] : b === id ? [a] : []
}

/** By "lower upper" of stretch ids, the lower id first. */
function pairTables(
  problem: Problem,
  choices: readonly (readonly Choice[])[],
): ReadonlyMap<string, Table> {
  const tables = new Map<string, Table>()
  for (const contact of problem.contacts) {
    const [below, above] = [choices[contact.below]!, choices[contact.above]!]
    const key = `${contact.below} ${contact.above}`
    const table = tables.get(key) ?? new Int32Array(below.length * above.length)
    tables.set(key, table)
    for (const [i, a] of below.entries()) {
      for (const [j, b] of above.entries()) {
        table[i * above.length + j]! += breachesBetween(a, b, contact, problem.rules.stagger)
      }
    }
  }
  return tables
}

/**
 * A further stretch joins the open ones; the open one at `done`, which none after it touches, leaves with
 * its best choice for each of the rest, so that no table over both is ever written.
 */
function withStretch(
  { open, fewest }: Front,
  id: number,
  done: number,
  choices: readonly (readonly Choice[])[],
  pairs: ReadonlyMap<string, Table>,
): Front {
  const sizes = open.map((each) => choices[each]!.length)
  const rest = open.filter((_, i) => i !== done)
  const own = choices[id]!
  const result = new Int32Array(own.length * size(rest, choices))
  const stride = done < 0 ? 1 : sizes.slice(done + 1).reduce((all, each) => all * each, 1)
  const span = done < 0 ? 1 : sizes[done]!
  const leaving = done < 0 ? undefined : pairs.get(`${open[done]} ${id}`)
  const others = rest.map((each) => pairs.get(`${each} ${id}`))
  const picks = new Array<number>(rest.length).fill(0)
  for (let at = 0; at * own.length < result.length; at += 1) {
    let left = at
    for (let i = rest.length - 1; i >= 0; i -= 1) {
      const count = choices[rest[i]!]!.length
      picks[i] = left % count
      left = Math.floor(left / count)
    }
    const base = Math.floor(at / stride) * stride * span + (at % stride)
    for (const [choice, { breaches }] of own.entries()) {
      let best = NO_PLAN
      for (let k = 0; k < span; k += 1) {
        const cost = fewest[base + k * stride]! + (leaving?.[k * own.length + choice] ?? 0)
        if (cost < best) best = cost
      }
      let cost = best + breaches
      for (const [i, table] of others.entries()) {
        cost += table?.[picks[i]! * own.length + choice] ?? 0
      }
      result[at * own.length + choice] = Math.min(cost, NO_PLAN)
    }
  }
  return { open: [...rest, id], fewest: result }
}

function size(open: readonly number[], choices: readonly (readonly Choice[])[]): number {
  return open.reduce((all, each) => all * choices[each]!.length, 1)
}

/** An open stretch that nothing further touches leaves with its best choice. */
function without(
  { open, fewest }: Front,
  closed: number,
  choices: readonly (readonly Choice[])[],
): Front {
  const span = choices[open[closed]!]!.length
  const stride = size(open.slice(closed + 1), choices)
  const result = new Int32Array(fewest.length / span)
  for (let at = 0; at < result.length; at += 1) {
    const base = Math.floor(at / stride) * stride * span + (at % stride)
    let best = NO_PLAN
    for (let k = 0; k < span; k += 1) best = Math.min(best, fewest[base + k * stride]!)
    result[at] = best
  }
  return { open: open.filter((_, i) => i !== closed), fewest: result }
}
