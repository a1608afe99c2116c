import { describe, expect, test } from 'vitest'
import type { Contact, Problem, Stretch } from '../../server/src/layout/problem.ts'
import { acrossOf, placesOf } from '../../server/src/layout/stretches.ts'
import { plankRules } from './made-floors.ts'

/** Planks 48 by 7, no rip under 2; one unit is as good as another here. */
const rules = plankRules({ width: 7, narrowestRip: 2 })

const course = (number: number) => ({
  course: number,
  low: 7 * (number - 1),
  high: 7 * number,
  order: number,
})

/** A stretch of the whole first course from 0 to 100. */
function stretch(id: number, more: Partial<Stretch> = {}): Stretch {
  const { from = 0, to = 100, course: number = 1 } = more
  const { low, high } = course(number)
  return {
    id,
    course: number,
    from,
    to,
    area: 7 * (to - from),
    bands: [{ from, to, low, high }],
    posts: [],
    doorways: [],
    ...more,
  }
}

function placesFrom(stretches: readonly Stretch[], contacts: readonly Contact[] = []) {
  const problem: Problem = { courses: [1, 2, 3].map(course), stretches, contacts, rules }
  return placesOf(problem)
}

const bands = (...of: readonly (readonly [number, number, number, number])[]) =>
  of.map(([from, to, low, high]) => ({ from, to, low, high }))

test('posts lie by their right ends, then by their left', () => {
  const posts = [
    { from: 30, to: 40 },
    { from: 15, to: 20 },
    { from: 10, to: 20 },
    { from: 5, to: 50 },
  ]
  expect(placesFrom([stretch(0, { posts })])[0]!.posts).toEqual([
    { from: 10, to: 20 },
    { from: 15, to: 20 },
    { from: 30, to: 40 },
    { from: 5, to: 50 },
  ])
})

test('floor narrower than the narrowest rip is told in as few parts as there are', () => {
  const of = bands([0, 10, 0, 1], [10, 20, 3, 4], [20, 30, 0, 2], [30, 40, 0, 1], [40, 99, 0, 7])
  const { narrow } = placesFrom([stretch(0, { bands: of })])[0]!
  expect(narrow).toEqual([
    { from: 0, to: 20 },
    { from: 30, to: 40 },
  ])
})

describe('what a blank must be across', () => {
  const stepped = bands([0, 40, 2, 7], [40, 70, 0, 7], [70, 100, 1, 4])
  const [place] = placesFrom([stretch(0, { bands: stepped })])

  test.each([
    ['in one band', 0, 30, { width: 5, low: false, high: true }],
    ['up to where the next one begins', 0, 40, { width: 5, low: false, high: true }],
    ['over two', 0, 41, { width: 7, low: true, high: true }],
    ['from where one ends', 70, 100, { width: 3, low: false, high: false }],
    ['over all', 0, 100, { width: 7, low: true, high: true }],
  ] as const)('%s', (_, from, to, across) => {
    expect(place!.across).toBeNull()
    expect(acrossOf(place!, from, to)).toEqual(across)
  })

  test('is the same everywhere in a stretch that is one width all along', () => {
    const ripped = bands([0, 40, 0, 5], [40, 100, 0, 5])
    const [same] = placesFrom([stretch(0, { bands: ripped })])
    expect(same!.across).toEqual({ width: 5, low: true, high: false })
    expect(acrossOf(same!, 0, 10)).toBe(same!.across)
    const low = placesFrom([stretch(0, { bands: bands([0, 40, 0, 5], [40, 100, 0, 6]) })])
    const high = placesFrom([stretch(0, { bands: bands([0, 40, 0, 5], [40, 100, 1, 5]) })])
    expect([low[0]!.across, high[0]!.across]).toEqual([null, null])
  })
})

test('what lies two courses off is told with the stretch between, below and above', () => {
  // Course 2 in two parts side by side; over and under it one stretch each.
  const stretches = [
    stretch(0),
    stretch(1, { course: 2, to: 50 }),
    stretch(2, { course: 2, from: 60 }),
    stretch(3, { course: 3 }),
  ]
  const contact = (below: number, above: number) => ({ below, above, from: 0, to: 50 })
  const contacts = [contact(0, 1), contact(0, 2), contact(1, 3), contact(2, 3)]
  const places = placesFrom(stretches, contacts)
  expect(places.map(({ beyond }) => beyond)).toEqual([
    [
      { between: 1, other: 3 },
      { between: 2, other: 3 },
    ],
    [],
    [],
    [
      { between: 1, other: 0 },
      { between: 2, other: 0 },
    ],
  ])
  expect(places.map(({ length }) => length)).toEqual([100, 50, 40, 100])
  expect(places[0]!.touches).toEqual([
    { other: 1, from: 0, to: 50 },
    { other: 2, from: 0, to: 50 },
  ])
})

describe('ways to joint a stretch are kept', () => {
  const knownOf = (more: Partial<Stretch>, others: Partial<Stretch> = more) => {
    const [one, other] = placesFrom([stretch(0, more), stretch(1, others)])
    return one!.known === other!.known
  }
  const zone = [{ from: 20, to: 30 }]

  test('in common by whole stretches with the same ends, in whatever course', () => {
    expect(knownOf({})).toBe(true)
    expect(knownOf({}, { course: 2 })).toBe(true)
  })

  test.each([
    ['other ends', {}, { to: 99 }],
    ['a post', { posts: zone }],
    ['a doorway', { doorways: zone }],
    ['a lower edge in the course', { bands: bands([0, 50, 0, 7], [50, 100, 1, 7]) }],
    ['an upper edge in the course', { bands: bands([0, 50, 0, 6], [50, 100, 0, 7]) }],
  ] as const)('apart by those with %s', (_, one, other: Partial<Stretch> = one) => {
    expect(knownOf(one, other)).toBe(false)
  })
})

test('a problem that is none is refused', () => {
  expect(() => placesFrom([stretch(0, { course: 4 })])).toThrow('a course that is not there')
  expect(() => placesFrom([stretch(0, { bands: [] })])).toThrow('a stretch without a band')
})
