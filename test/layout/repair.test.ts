import { describe, expect, test } from 'vitest'
import { inOneGo } from '../../server/src/facts/slices.ts'
import { type Jointing, jointingsFrom } from '../../server/src/layout/jointing.ts'
import type { Problem } from '../../server/src/layout/problem.ts'
import { withFewerBreaches } from '../../server/src/layout/repair.ts'
import { breachesOf } from '../../server/src/layout/score.ts'
import { begin } from '../../server/src/layout/search.ts'
import { wrapped } from '../../server/src/layout/starts.ts'
import { choicesForFewer, choicesOf, fewestBreaches } from './fewest-breaches.ts'
import { type Box, floorOf, inches, plankRules, withThings } from './made-floors.ts'

/** Planks so long and 4 in wide, with this stagger and shortest end; in inches. */
const planks = (length: number, stagger: number, shortestEnd: number) =>
  plankRules({
    width: inches(4),
    lengths: [{ length: inches(length), perBox: 10 }],
    stagger: inches(stagger),
    shortestEnd: inches(shortestEnd),
  })

/** A problem jointed badly, each stretch begun with such a piece (in inches), and repaired. */
function repaired(problem: Problem, startOf: (id: number) => number) {
  const { field } = begin(problem)
  const { rules } = problem
  const plank = rules.lengths[0]!.length
  const bad = field.places.map((place) => {
    const start = wrapped(inches(startOf(place.id)), plank, place.length)
    return jointingsFrom(place, start, rules)[0]!
  })
  const good = inOneGo(withFewerBreaches(field, bad))
  const count = (jointings: readonly Jointing[]) => breachesOf(field.places, jointings, rules)
  return { field, bad, good, before: count(bad), after: count(good) }
}

/** The fewest breaches that can be, by going through everything; `ours` where there are no fewer. */
function fewestOf(problem: Problem, ours: number): number {
  const choices = choicesForFewer(choicesOf(problem, inches(1 / 4)), ours)
  return choices === null ? ours : Math.min(ours, fewestBreaches(problem, choices))
}

/** Two rooms that meet below and above a hearth: contacts close a loop round it. */
function hearth(left: number, hearth: number, right: number, courses: number): Box[] {
  const [wide, high] = [left + hearth + right, 8 + 4 * courses]
  return [
    [0, 0, wide, 8],
    [0, 8, left, high],
    [left + hearth, 8, wide, high],
    [0, high, wide, high + 8],
  ]
}

/** Three courses, the middle one parted twice: two loops. */
function posts(...wide: readonly [number, number, number, number, number]): Box[] {
  const [a, b, c, d, end] = wide.map((_, i) => wide.slice(0, i + 1).reduce((x, y) => x + y)) as [
    number,
    number,
    number,
    number,
    number,
  ]
  return [
    [0, 0, end, 4],
    [0, 4, a, 8],
    [b, 4, c, 8],
    [d, 4, end, 8],
    [0, 8, end, 12],
  ]
}

const door = (course: number, from: number) =>
  ({ course, kind: 'doorways', from, to: from + 7 }) as const

type Things = Parameters<typeof withThings>[1]

describe('joints all in line come to the fewest breaches', () => {
  test.each<readonly [string, readonly Box[], Things, ReturnType<typeof planks>, number, number]>([
    ['in a room of two courses', [[0, 0, 20.375, 8]], [], planks(18.5, 3.5625, 5.25), 1.25, 0],
    ['with a rip too narrow', [[0, 0, 18.375, 9]], [], planks(19.75, 3.625, 2.25), 6.25, 1],
    ['where staggers are hard to keep', [[0, 0, 24.75, 8.5]], [], planks(10.3125, 5.5, 2), 8.75, 5],
    ['in a room of six courses', [[0, 0, 88.5, 24]], [], planks(12, 6, 3.5), 9, 0],
    ['in a narrow room', [[0, 0, 11.5, 24]], [], planks(10.5, 6.5, 5.5), 5.5, 5],
    ['round a hearth', hearth(16.5, 6, 18, 2), [door(2, 21.5)], planks(13.5, 6.5, 5), 4.5, 1],
    ['round another', hearth(20.5, 5, 22, 2), [door(2, 26)], planks(15, 7.5, 4.5), 7, 1],
    ['round a wide one', hearth(25.5, 14.5, 25.5, 1), [door(2, 8.5)], planks(15.5, 7.5, 4), 3.5, 0],
    ['round a deep one', hearth(22.5, 15.5, 25, 3), [door(2, 27.5)], planks(10, 5, 3.5), 1.5, 2],
    ['round two posts', posts(8, 5, 14.5, 5, 22), [door(1, 6.5)], planks(11.5, 3.5, 2), 1.5, 0],
    ['round two others', posts(24.5, 6.5, 8, 6.5, 24.5), [door(1, 8)], planks(10.5, 4, 3), 1.5, 0],
    ['round two more', posts(12.5, 6.5, 14.5, 6.5, 24.5), [door(1, 5.5)], planks(18, 7.5, 3), 9, 0],
  ])('%s', (_, boxes, things, rules, start, fewest) => {
    const problem = withThings(floorOf(boxes, rules), things)
    const { before, after } = repaired(problem, () => start)
    expect(before).toBeGreaterThan(after)
    expect(after).toBe(fewestOf(problem, after))
    expect(after).toBe(fewest)
  })
})

/** A stretch's first piece, in inches. */
const startsOf = (jointings: readonly Jointing[]) => jointings.map(({ start }) => start / inches(1))

test('what just fits is found where no grid holds it', () => {
  // The first course may have a joint at 44.1 only, the third at 60.1 only and so at 12.1: the second
  // has to keep 8 in off both, at 52.1, and so begins with 4.1. Before that lies its doorway.
  const problem = withThings(
    floorOf([[0, 0, 90, 12]], planks(48, 8, 2)),
    [
      { course: 1, from: 0, to: 44.1 },
      { course: 1, from: 44.15, to: 90 },
      { course: 2, from: 18, to: 38 },
      { course: 3, from: 20, to: 60.05 },
      { course: 3, from: 60.1, to: 90 },
    ].map((zone) => ({ kind: 'doorways' as const, ...zone })),
  )
  const { after, good } = repaired(problem, () => 48)
  expect(after).toBe(0)
  expect(startsOf(good)).toEqual([44.1, 4.1, 12.1])
})

describe('what need not change stays as it is', () => {
  const rules = planks(48, 8, 10)

  test('planks of several lengths', () => {
    const two = { ...rules, lengths: [48, 36].map((each) => ({ length: inches(each), perBox: 5 })) }
    const { good, bad } = repaired(floorOf([[0, 0, 150, 40]], two), () => 48)
    expect(good).toBe(bad)
  })

  test('all, where nothing is wrong', () => {
    const { good, bad, before } = repaired(
      floorOf([[0, 0, 154, 40]], rules),
      (id) => [48, 20][id % 2]!,
    )
    expect(before).toBe(0)
    expect(good.every((each, id) => each === bad[id])).toBe(true)
  })

  test('all, where what is wrong cannot be helped', () => {
    // A course 1 in wide, and beside it one that keeps off it.
    const { good, bad, before } = repaired(floorOf([[0, 0, 154, 5]], rules), (id) => [30, 48][id]!)
    expect(before).toBe(4)
    expect(good.every((each, id) => each === bad[id])).toBe(true)
  })

  test('what lies more than two courses from the only breach', () => {
    // The first two of twelve courses are in line.
    const { good, bad, after } = repaired(floorOf([[0, 0, 150, 48]], rules), (id) =>
      id < 2 ? 20 : [40, 20][id % 2]!,
    )
    expect(after).toBe(0)
    expect(good.slice(3)).toEqual(bad.slice(3))
    expect(good.slice(3).every((each, i) => each === bad[i + 3])).toBe(true)
    expect(good.slice(0, 3)).not.toEqual(bad.slice(0, 3))
  })
})
