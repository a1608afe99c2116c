import { describe, expect, test } from 'vitest'
import { blanksOf, type Jointing, jointingsFrom, judged } from '../../server/src/layout/jointing.ts'
import type { Place } from '../../server/src/layout/stretches.ts'
import { plankRules } from './made-floors.ts'

/** Planks 48 by 7, no piece under 10; one unit is as good as another here. */
const rules = plankRules({ width: 7, lengths: [{ length: 48, perBox: 10 }], shortestEnd: 10 })

function place(more: Partial<Place> = {}): Place {
  const { from = 0, to = 130 } = more
  return {
    id: 0,
    from,
    to,
    length: to - from,
    course: { course: 1, low: 0, high: 7, order: 1 },
    area: 7 * (to - from),
    bands: [{ from, to, low: 0, high: 7 }],
    posts: [],
    doorways: [],
    narrow: [],
    across: { width: 7, low: true, high: true },
    touches: [],
    beyond: [],
    known: new Map(),
    ...more,
  }
}

const jointsOf = (jointings: readonly Jointing[]) => jointings.map(({ joints }) => joints)

describe('a stretch 130 long begun with a piece', () => {
  test.each([
    ['34 long', 34, { joints: [34, 82], end: 48, phase: 34, breaches: 0, slivers: 0 }],
    [
      'just long enough',
      10,
      { joints: [10, 58, 106], end: 24, phase: 10, breaches: 0, slivers: 0 },
    ],
    ['too short', 9, { joints: [9, 57, 105], end: 25, phase: 9, breaches: 1, slivers: 0 }],
    [
      'as short as the plank is wide',
      7,
      { joints: [7, 55, 103], end: 27, breaches: 1, slivers: 0 },
    ],
    ['a sliver', 6, { joints: [6, 54, 102], end: 28, breaches: 1, slivers: 1 }],
    [
      'that leaves a sliver at the end',
      28,
      { joints: [28, 76, 124], end: 6, breaches: 1, slivers: 1 },
    ],
    ['a plank', 48, { joints: [48, 96], end: 34, phase: 0, breaches: 0, slivers: 0 }],
  ] as const)('%s', (_, start, found) => {
    const [only, ...others] = jointingsFrom(place(), start, rules)
    expect(only).toMatchObject({ start, parted: [], hardCuts: 0, ...found })
    expect(others).toEqual([])
  })

  test('is jointed once', () => {
    const same = place()
    expect(jointingsFrom(same, 34, rules)).toBe(jointingsFrom(same, 34, rules))
  })
})

test('a stretch of one piece has no joints and shares no phase', () => {
  const short = place({ to: 40 })
  expect(jointingsFrom(short, 40, rules)).toEqual([
    { start: 40, end: 40, joints: [], parted: [], phase: -1, breaches: 0, slivers: 0, hardCuts: 0 },
  ])
})

test('phases are told from the same place left of it and right of it', () => {
  expect(jointingsFrom(place({ from: -100, to: 0 }), 34, rules)[0]!.phase).toBe(30)
  const two = { ...rules, lengths: [48, 24].map((length) => ({ length, perBox: 5 })) }
  expect(judged(place(), [34, 82], [], two).phase).toBe(-1)
})

describe('a post from 60 to 66', () => {
  const posts = [{ from: 60, to: 66 }]

  test.each([
    [13, [13, 61, 109]],
    [17, [17, 65, 113]],
  ] as const)('takes a joint strictly inside it: begun with %i', (start, joints) => {
    expect(jointsOf(jointingsFrom(place({ posts }), start, rules))).toEqual([joints])
  })

  test.each([12, 18])('does not take one at its side: begun with %i', (start) => {
    const ways = jointingsFrom(place({ posts }), start, rules)
    expect(ways.map(({ parted }) => parted.length)).toEqual(Array(12).fill(1))
  })

  test('that no joint falls into is parted in three places, and goes on in four lengths', () => {
    const ways = jointingsFrom(place({ posts }), 34, rules)
    expect(jointsOf(ways)).toEqual([
      [34, 63, 82],
      [34, 63, 75, 123],
      [34, 63, 87],
      [34, 63, 99],
      [34, 61, 82],
      [34, 61, 73, 121],
      [34, 61, 85],
      [34, 61, 97],
      [34, 64, 82],
      [34, 64, 76, 124],
      [34, 64, 88],
      [34, 64, 100],
    ])
    expect(ways[0]).toMatchObject({ parted: [63], phase: -1, breaches: 0, slivers: 0, hardCuts: 2 })
  })

  test('parted and parted again at each further one that is missed', () => {
    const two = [...posts, { from: 100, to: 106 }]
    const ways = jointingsFrom(place({ posts: two }), 34, rules)
    expect(jointsOf(ways).slice(0, 4)).toEqual([
      [34, 63, 82, 103],
      [34, 63, 75, 103, 123],
      [34, 63, 87, 103],
      [34, 63, 99, 103],
    ])
    // The last has a piece of 4 between its posts' middle and the joint before it.
    expect(ways[3]).toMatchObject({ parted: [63, 103], breaches: 1, slivers: 1, hardCuts: 4 })
  })

  test('takes no further part where the joints behind it fall into the next', () => {
    const two = [...posts, { from: 72, to: 78 }]
    const ways = jointingsFrom(place({ posts: two }), 34, rules)
    expect(ways[1]).toMatchObject({ joints: [34, 63, 75, 123], parted: [63] })
  })

  test('is none where it is too thin to be parted', () => {
    const thin = { from: 60, to: 61 }
    expect(jointingsFrom(place({ posts: [thin] }), 34, rules)).toEqual([])
    const behind = { from: 100, to: 101 }
    expect(jointingsFrom(place({ posts: [...posts, behind] }), 34, rules)).toEqual([])
  })
})

describe('what is wrong with joints at 34 and 82 by itself', () => {
  const of = (more: Partial<Place>) => judged(place(more), [34, 82], [], rules)

  test.each([
    ['a joint inside', [{ from: 80, to: 90 }], 1],
    ['a joint at its left side', [{ from: 82, to: 90 }], 0],
    ['a joint at its right side', [{ from: 70, to: 82 }], 0],
    ['no joint at the end of the floor', [{ from: -5, to: 10 }], 0],
    [
      'two joints in two',
      [
        { from: 30, to: 40 },
        { from: 80, to: 90 },
      ],
      2,
    ],
  ] as const)('doorways: %s', (_, doorways, breaches) => {
    expect(of({ doorways }).breaches).toBe(breaches)
  })

  test.each([
    ['one in a piece', [{ from: 40, to: 50 }], 1],
    [
      'two in one piece count once',
      [
        { from: 40, to: 50 },
        { from: 60, to: 70 },
      ],
      1,
    ],
    ['one over a joint is in two', [{ from: 30, to: 40 }], 2],
    ['one that begins at a joint', [{ from: 82, to: 90 }], 1],
    ['one that ends at a joint', [{ from: 60, to: 82 }], 1],
    ['one behind the stretch', [{ from: 130, to: 140 }], 0],
  ] as const)('narrow floor: %s', (_, narrow, breaches) => {
    expect(of({ narrow }).breaches).toBe(breaches)
  })

  const bands = (...parts: readonly (readonly [number, number, number, number])[]) =>
    parts.map(([from, to, low, high]) => ({ from, to, low, high }))

  test.each([
    ['a step below', bands([0, 100, 0, 7], [100, 130, 2, 7]), 1],
    ['a step above', bands([0, 100, 0, 7], [100, 130, 0, 5]), 1],
    ['no step', bands([0, 100, 0, 7], [100, 130, 0, 7]), 0],
    ['a step at a joint', bands([0, 82, 0, 7], [82, 130, 2, 7]), 0],
    ['a step further on in a piece', bands([0, 90, 0, 7], [90, 100, 0, 7], [100, 130, 2, 7]), 1],
    ['steps in two pieces', bands([0, 20, 0, 7], [20, 100, 2, 7], [100, 130, 0, 7]), 2],
  ] as const)('notches: %s', (_, parts, hardCuts) => {
    expect(of({ bands: parts, across: null }).hardCuts).toBe(hardCuts)
  })

  test('nothing of a whole plank is too short', () => {
    const short = { ...rules, width: 10, lengths: [{ length: 9, perBox: 10 }] }
    expect(judged(place({ to: 18 }), [9], [], short)).toMatchObject({ breaches: 0, slivers: 0 })
    expect(judged(place({ to: 17 }), [9], [], short)).toMatchObject({ breaches: 1, slivers: 1 })
  })

  test('a short piece between two whole ones counts where it is glued', () => {
    expect(judged(place({ to: 102 }), [48, 54], [48], rules)).toMatchObject({
      breaches: 1,
      slivers: 1,
    })
    expect(judged(place({ to: 102 }), [48, 54], [54], rules)).toMatchObject({
      breaches: 1,
      slivers: 1,
    })
    expect(judged(place({ to: 102 }), [48, 54], [48, 54], rules)).toMatchObject({
      breaches: 1,
      slivers: 1,
    })
  })
})

test('blanks need made ends where they meet, and cut ones where they are glued', () => {
  const jointing = judged(place(), [34, 63, 82], [63], rules)
  const found = blanksOf(place(), jointing).map(({ from, to, left, right, cutLeft, cutRight }) => [
    from,
    to,
    left,
    right,
    cutLeft,
    cutRight,
  ])
  expect(found).toEqual([
    [0, 34, false, true, false, false],
    [34, 63, true, false, false, true],
    [63, 82, false, true, true, false],
    [82, 130, true, false, false, false],
  ])
})
