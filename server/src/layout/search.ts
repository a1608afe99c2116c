import { inOneGo, type Sliced } from '../facts/slices.ts'
import { boundOf } from './bound.ts'
import type { Field, Pattern, Trial } from './laying.ts'
import { layOnce } from './pass.ts'
import type { Plan } from './plan.ts'
import type { PlankRules, Problem } from './problem.ts'
import { withFewerBreaches } from './repair.ts'
import { compareScores, type Score, scoreOf } from './score.ts'
import { ownStarts } from './starts.ts'
import { stockLimits } from './stock.ts'
import { type Place, placesOf } from './stretches.ts'

/** A search for a good plan that can be advanced step by step: each step lays the floor once through. */
export interface Search {
  readonly field: Field
  readonly bound: Plan['bound']
  readonly tried: number
  readonly best: { readonly trial: Trial; readonly score: Score } | null
}

/**
 * The ways of laying that are tried first, each from nothing: of all pairs of a beginning and a
 * habit tried on sixty made-up floors, these together lost no box. Then the best so far, its avoidable
 * breaches repaired, is laid again by each habit of `AGAIN`.
 */
const FIRST: readonly Pattern[] = [
  pattern([1, 1], 0.8, 1),
  pattern([2, 5], 0.7, 0.1),
  pattern([1, 2], 0.8, 0.05),
  pattern([3, 4], 1, 0.1),
  pattern([1, 2], 0.9, 0.3),
  pattern([2, 5], 0.5, 1),
]

const AGAIN: readonly Pattern[] = [
  pattern([1, 1], 0.8, 0.05),
  pattern([1, 1], 0.9, 0.3),
  pattern([1, 1], 0.7, 0.3),
  pattern([1, 1], 1, 0.1),
  pattern([1, 1], 0.5, 1),
  pattern([1, 1], 0.8, 0.6),
]

function pattern(begin: Pattern['begin'], keep: number, calm: number): Pattern {
  const first = begin[0] === begin[1] ? 'a whole plank' : `${begin[0]}/${begin[1]} of a plank`
  return { words: `begun with ${first}`, begin, keep, calm }
}

export function begin(problem: Problem): Search {
  const { rules } = problem
  const places = placesOf(problem)
  const orders = [...problem.courses].sort((a, b) => a.order - b.order)
  const byCourse = Map.groupBy(places, (place) => place.course)
  const laying = orders.flatMap((course) => {
    const there = byCourse.get(course)
    return there === undefined ? [] : [there]
  })
  return {
    field: {
      rules,
      places,
      laying,
      limits: stockLimits(rules, leastRests(places, rules)),
      starts: places.map((place) => ownStarts(place, rules)),
    },
    bound: boundOf(places, rules),
    tried: 0,
    best: null,
  }
}

/** The least rests that can serve anywhere on this floor: shorter or narrower ones are scrap. */
function leastRests(places: readonly Place[], rules: PlankRules) {
  const longest = rules.lengths.reduce((most, each) => Math.max(most, each.length), 0)
  const shortest = places.reduce((least, place) => Math.min(least, place.length), longest)
  const bands = places.flatMap((place) => place.bands)
  return {
    shortest: Math.min(rules.shortestEnd, shortest),
    narrowest: bands.reduce((least, band) => Math.min(least, band.high - band.low), rules.width),
    shortestLoose: shortest < longest ? shortest : null,
  }
}

/** The search `steps` patterns on. */
export function advance(search: Search, steps: number): Search {
  return inOneGo(advancing(search, steps))
}

/** The same, pausing within a pattern and after each. */
export function* advancing(search: Search, steps: number): Sliced<Search> {
  let now = search
  for (let step = 0; step < steps && !isDone(now); step += 1) {
    now = yield* tryNext(now)
    yield
  }
  return now
}

/** Whether nothing is left to try. */
export function isDone(search: Search): boolean {
  return search.tried >= firstOf(search) + (hasSeveral(search) ? 2 : AGAIN.length)
}

/** With several lengths a run begins with what suits: beginnings matter little, a pass costs much. */
function firstOf(search: Search): number {
  return hasSeveral(search) ? 2 : FIRST.length
}

function hasSeveral({ field }: Search): boolean {
  return field.rules.lengths.length > 1
}

function* tryNext(search: Search): Sliced<Search> {
  const { field, tried, best } = search
  const first = firstOf(search)
  if (tried < first) return withTrial(search, yield* layOnce(field, FIRST[tried]!, null))
  const { jointings } = best!.trial
  const guide = tried === first ? yield* withFewerBreaches(field, jointings) : jointings
  const trial = yield* layOnce(field, AGAIN[tried - first]!, guide)
  return withTrial(search, { ...trial, pattern: best!.trial.pattern })
}

function withTrial(search: Search, trial: Trial): Search {
  const { field } = search
  const score = scoreOf(field.places, trial.jointings, field.rules, trial.used)
  const better = search.best === null || compareScores(score, search.best.score) < 0
  return { ...search, tried: search.tried + 1, best: better ? { trial, score } : search.best }
}
