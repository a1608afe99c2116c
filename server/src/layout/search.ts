import { boundOf } from './bound.ts'
import { layOnce, type Pattern, type Floorboard, type Trial } from './pass.ts'
import type { Plan } from './plan.ts'
import type { PlankRules, Problem } from './problem.ts'
import { compareScores, type Score, scoreOf } from './score.ts'
import { ownStarts } from './starts.ts'
import { stockLimits } from './stock.ts'
import { type Place, placesOf } from './stretches.ts'

/** A search for a good plan that can be advanced step by step: each step lays the floor once through. */
export interface Search {
  readonly board: Floorboard
  readonly bound: Plan['bound']
  readonly tried: number
  readonly best: { readonly trial: Trial; readonly score: Score } | null
}

/** How runs begin, the most usual first. */
const BEGINNINGS: readonly (readonly [number, number])[] = [
  [1, 2],
  [1, 1],
  [1, 3],
  [2, 3],
  [3, 4],
  [1, 4],
  [5, 6],
  [2, 5],
]

/** What is weighed against wood: first none of the looks, then more and more of them. */
const HABITS = [
  { words: 'offcuts first', keep: 0.9, calm: 0 },
  { words: 'offcuts first, no joint twice in line', keep: 0.9, calm: 0.5 },
  { words: 'short offcuts used up, no joint twice in line', keep: 0.7, calm: 0.1 },
] as const

export const PATTERNS: readonly Pattern[] = HABITS.flatMap(({ words, keep, calm }) =>
  BEGINNINGS.map((begin) => ({
    words: `${words}; begins with ${begin[0] === begin[1] ? 'a whole plank' : `${begin[0]}/${begin[1]} of a plank`}`,
    begin,
    keep,
    calm,
  })),
)

export function begin(problem: Problem): Search {
  const { rules } = problem
  const places = placesOf(problem)
  const orders = [...problem.courses].sort((a, b) => a.order - b.order)
  const laying = orders
    .map((course) => places.filter((place) => place.course === course))
    .filter((course) => course.length > 0)
  return {
    board: {
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
  let now = search
  for (let step = 0; step < steps && now.tried < PATTERNS.length; step += 1) now = tryNext(now)
  return now
}

function tryNext(search: Search): Search {
  const { board } = search
  const trial = layOnce(board, PATTERNS[search.tried]!, null)
  const score = scoreOf(board.places, trial.jointings, board.rules, [trial.planks.length])
  const better = search.best === null || compareScores(score, search.best.score) < 0
  return { ...search, tried: search.tried + 1, best: better ? { trial, score } : search.best }
}
