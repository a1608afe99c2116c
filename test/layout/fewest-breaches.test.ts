import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { plan } from '../../server/src/layout/plan.ts'
import type { Problem } from '../../server/src/layout/problem.ts'
import { effort } from '../effort.ts'
import {
  breachesBetween,
  type Choice,
  choicesForFewer,
  choicesOf,
  choicesOnGrid,
  fewestBreaches,
} from './fewest-breaches.ts'
import { type Box, floorOf, inches, plankRules, withThings } from './made-floors.ts'
import { planBreaches, planFaults } from './plan-faults.ts'
import { smallProblems } from './small-problems.ts'

/** Inches to the sixteenth, so that what just fits lies on no grid of quarter inches. */
const sixteenths = (least: number, most: number) =>
  fc.integer({ min: 16 * least, max: 16 * most }).map((count) => count / 16)

/** Short planks and wide staggers, so that breaches are hard to avoid; and a third as they are sold. */
const anyRules = fc
  .oneof(
    { weight: 2, arbitrary: fc.tuple(sixteenths(10, 20), sixteenths(3, 7), sixteenths(2, 6)) },
    { weight: 1, arbitrary: fc.tuple(sixteenths(24, 48), sixteenths(6, 9), sixteenths(6, 12)) },
  )
  .map(([length, stagger, shortest]) => ({ length, stagger, shortest }))
  .map(({ length, stagger, shortest }) =>
    plankRules({
      width: inches(4),
      lengths: [{ length: inches(length), perBox: 10 }],
      stagger: inches(stagger),
      shortestEnd: inches(shortest),
    }),
  )

/** At a wall, or anywhere: the first course may be too narrow all along. */
const anySeam = fc.oneof(fc.constant(0), sixteenths(0, 3))

const oneRoom: fc.Arbitrary<Problem> = fc
  .record({ wide: sixteenths(8, 70), deep: sixteenths(8, 30), rules: anyRules, seam: anySeam })
  .map(({ wide, deep, rules, seam }) => floorOf([[0, 0, wide, deep]], rules, seam))

/** Two rooms that meet above and below a hearth: the courses between are parted, and close a loop. */
const aboutAHearth: fc.Arbitrary<Problem> = fc
  .record({
    left: sixteenths(8, 26),
    hearth: sixteenths(4, 16),
    right: sixteenths(8, 26),
    courses: fc.integer({ min: 1, max: 3 }),
    door: sixteenths(2, 30),
    rules: anyRules,
    seam: anySeam,
  })
  .map(({ left, hearth, right, courses, door, rules, seam }) => {
    const [wide, high] = [left + hearth + right, 8 + 4 * courses]
    const boxes: Box[] = [
      [0, 0, wide, 8],
      [0, 8, left, high],
      [left + hearth, 8, wide, high],
      [0, high, wide, high + 8],
    ]
    return withThings(floorOf(boxes, rules, seam), [
      { course: 2, kind: 'doorways', from: door, to: door + 7 },
    ])
  })

/** Two rooms side by side: the courses through the doorway cross both, those beside it are parted. */
const throughADoorway: fc.Arbitrary<Problem> = fc
  .record({
    left: sixteenths(8, 30),
    wall: sixteenths(3, 8),
    right: sixteenths(8, 30),
    below: fc.integer({ min: 0, max: 2 }),
    through: fc.integer({ min: 1, max: 2 }),
    above: fc.integer({ min: 0, max: 2 }),
    rules: anyRules,
    seam: anySeam,
  })
  .map(({ left, wall, right, below, through, above, rules, seam }) => {
    const [low, high] = [4 * below, 4 * (below + through)]
    const [middle, wide, deep] = [left + wall, left + wall + right, high + 4 * above + 1]
    const boxes: Box[] = [
      [0, 0, left, deep],
      [left, low, middle, high + 1],
      [middle, 0, wide, deep],
    ]
    const doorways = Array.from({ length: through + 2 }, (_, i) => ({
      course: below + i,
      kind: 'doorways' as const,
      from: left - 2,
      to: middle + 2,
    }))
    return withThings(floorOf(boxes, rules, seam), doorways)
  })

const TIMEOUT = { timeout: effort(60_000, 3_600_000) }
const STEP = inches(1 / 4)

/** Floors of one kind, and what they came to. */
class Comparison {
  floors = 0
  #searched = 0
  #unavoidable = 0
  #ours = 0
  #fewest = 0

  /** Holds our plan of a floor against the fewest breaches that there can be. */
  add(problem: Problem): void {
    const planned = plan(problem)
    const ours = planBreaches(problem, planned)
    const choices = choicesForFewer(choicesOf(problem, STEP), ours)
    const fewest = choices === null ? ours : Math.min(ours, fewestBreaches(problem, choices))
    this.floors += 1
    if (choices !== null) this.#searched += 1
    this.#ours += ours
    this.#fewest += fewest
    if (fewest > 0) this.#unavoidable += 1
    expect(planFaults(problem, planned)).toEqual([])
    expect(ours).toBe(fewest)
  }

  told(name: string): string {
    return (
      `${name}: ${this.floors} floors, ${this.#unavoidable} of them with breaches that nothing avoids, ` +
      `${this.#searched} gone through (the others have what each stretch must have by itself); ` +
      `${this.#ours} breaches in ours, ${this.#fewest} at the fewest`
    )
  }
}

describe('no plan has fewer breaches, whatever start pieces are tried', () => {
  test.each([
    ['in one room', oneRoom, effort(50, 150), 7],
    ['round a hearth, with a doorway', aboutAHearth, effort(15, 150), 8],
    ['through a doorway, in two rooms', throughADoorway, effort(15, 150), 9],
  ] as const)('%s', TIMEOUT, (name, floors, numRuns, seed) => {
    const comparison = new Comparison()
    fc.assert(
      fc.property(floors, (problem) => comparison.add(problem)),
      { numRuns, seed },
    )
    console.info(comparison.told(name))
  })

  test.each(['realistic', 'nasty'] as const)('in rooms of %s random jobs', TIMEOUT, (mode) => {
    const comparison = new Comparison()
    for (let seed = 0; comparison.floors < effort(2, 50); seed += 1) {
      for (const problem of smallProblems(seed, mode)) comparison.add(problem)
    }
    console.info(comparison.told(`in rooms of ${mode} random jobs`))
  })
})

test('where everything is tight, joints stand where they just fit, on no grid', () => {
  const rules = plankRules({
    width: inches(4),
    lengths: [{ length: inches(10), perBox: 10 }],
    stagger: inches(5),
    shortestEnd: inches(3 + 1 / 16),
  })
  const doorway = { kind: 'doorways' as const, from: 11.0625, to: 20.125 }
  const problem = withThings(floorOf([[0, 0, 26.125, 5]], rules), [
    { ...doorway, course: 1 },
    { ...doorway, course: 2 },
  ])
  const planned = plan(problem)
  // Ends of 3 1/16" at both walls, and half a plank off them in the next course: what is left are three
  // rips of 1" and, in each course, the one joint that must stand in the doorway.
  expect(planBreaches(problem, planned)).toBe(5)
  expect(planFaults(problem, planned)).toEqual([])
})

test('the fewest breaches are those of all combinations, tried one by one', () => {
  const small = fc.oneof(oneRoom, aboutAHearth, throughADoorway)
  fc.assert(
    fc.property(small, (problem) => {
      const choices = choicesOnGrid(problem, inches(7))
      fc.pre(choices.reduce((all, each) => all * each.length, 1) < 20_000)
      const least = leastOfAll(problem, choices)
      expect(fewestBreaches(problem, choices)).toBe(least)
      const fewer = choicesForFewer(choices, least + 1)
      expect(fewer && fewestBreaches(problem, fewer)).toBe(least)
      const none = choicesForFewer(choices, least)
      expect(none === null || fewestBreaches(problem, none) >= least).toBe(true)
    }),
    { numRuns: effort(40, 400), seed: 10 },
  )
})

function leastOfAll(problem: Problem, choices: readonly (readonly Choice[])[]): number {
  const picked: Choice[] = []
  const least = (from: number): number => {
    if (from === choices.length) return breachesOf(problem, picked)
    return choices[from]!.reduce((best, choice) => {
      picked[from] = choice
      return Math.min(best, least(from + 1))
    }, 1_000_000)
  }
  return least(0)
}

function breachesOf({ contacts, rules }: Problem, picked: readonly Choice[]): number {
  const between = contacts.map((contact) =>
    breachesBetween(picked[contact.below]!, picked[contact.above]!, contact, rules.stagger),
  )
  return [...between, ...picked.map(({ breaches }) => breaches)].reduce((sum, one) => sum + one, 0)
}
