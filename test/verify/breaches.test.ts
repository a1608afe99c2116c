import { describe, expect, test } from 'vitest'
import type { PublishedFloor, PublishedRules } from '../../server/src/layout/published.ts'
import { narrowestRipBreaches } from '../../server/src/verify/breaches/narrowest-rip.ts'
import type { Floor, Ring } from '../../server/src/verify/layout.ts'
import { verify } from '../../server/src/verify/verify.ts'
import { inches, layouts, leaning, offcuts, post, ripped } from './hand-made.ts'

/** Breaches of one rule once the product's rules are made stricter; values in inches. */
function under(floor: PublishedFloor, rules: Partial<PublishedRules>, rule: string) {
  const report = verify(layouts({ ...floor, rules: { ...floor.rules, ...rules } }))
  return report.breaches
    .filter((breach) => breach.rule === rule)
    .map(({ value, pieces }) => [value / inches(1), ...pieces])
}

describe('stagger', () => {
  test('each pair of joints of neighbouring courses once, by the pieces left of them', () => {
    expect(under(offcuts, { stagger: inches(13.5) }, 'stagger')).toEqual([
      [10.5, 4, 8],
      [10.5, 5, 9],
      [10.5, 6, 10],
    ])
    expect(under(offcuts, { stagger: inches(10.5) }, 'stagger')).toEqual([])
  })

  test('joints count only where the courses touch', () => {
    // The third course of the L ends at 60", so the joint at 68" below has nothing above it.
    const pairs = under(post, { stagger: inches(40) }, 'stagger')
    expect(pairs).toContainEqual([14, 4, 8])
    expect(pairs).not.toContainEqual([34, 6, 8])
  })
})

test('shortest end: cut pieces, never whole planks', () => {
  const short = under(offcuts, { shortestEnd: inches(48) }, 'shortest end')
  expect(short.map(([, piece]) => piece)).toEqual([3, 4, 7, 8, 11])
})

describe('narrowest rip', () => {
  test('the legs of a notched piece are as narrow as they are', () => {
    expect(under(post, { narrowestRip: inches(2.5) }, 'narrowest rip')).toEqual([])
    expect(under(post, { narrowestRip: inches(2.75) }, 'narrowest rip')).toEqual([
      [2.5, 5],
      [2.5, 6],
    ])
  })

  const narrowest = (ring: Ring) =>
    narrowestRipBreaches({
      pieces: [{ piece: 1, ring }],
      rules: { narrowestRip: 40_000 },
    } as never as Floor).map(({ value }) => value)

  test('a taper to a point is judged by its wider side', () => {
    expect(
      narrowest([
        [0, 0],
        [50_000, 0],
        [0, 9000],
      ]),
    ).toEqual([9000])
    expect(
      narrowest([
        [0, 0],
        [50_000, 0],
        [50_000, 1000],
        [0, 9000],
      ]),
    ).toEqual([9000])
    expect(
      narrowest([
        [0, 0],
        [50_000, 0],
        [50_000, 1001],
        [0, 9000],
      ]),
    ).toEqual([1001])
  })

  test('a point no longer than the narrowest rip does not count', () => {
    expect(
      narrowest([
        [0, 0],
        [40_000, 0],
        [0, 9000],
      ]),
    ).toEqual([])
    expect(
      narrowest([
        [0, 0],
        [30_000, 0],
        [30_000, 15_000],
        [70_001, 20_000],
        [0, 20_000],
      ]),
    ).toEqual([5000])
  })

  test('a sliver that is a point at both sides does not count', () => {
    const withSliver: Ring = [
      [0, 0],
      [50_000, 0],
      [50_000, 7000],
      [10, 7000],
      [9, 900],
      [0, 900],
    ]
    expect(narrowest(withSliver)).toEqual([7000])
  })

  test('a neck is judged in its slab, not by the piece it joins', () => {
    const neck: Ring = [
      [0, 0],
      [20, 0],
      [20, 6000],
      [40, 6000],
      [40, 0],
      [60, 0],
      [60, 9000],
      [0, 9000],
    ]
    expect(narrowest(neck)).toEqual([3000])
  })
})

describe('longest run', () => {
  const runs = (floor: PublishedFloor, along: number, across: number) => {
    const longestRun = { along: inches(along), across: inches(across) }
    const report = verify(layouts({ ...floor, rules: { ...floor.rules, longestRun } }))
    return report.breaches
      .filter(({ rule }) => rule === 'longest run')
      .map(({ value, at, direction }) => [
        direction,
        value / inches(1),
        ...at.map((x) => x / inches(1)),
      ])
  }

  test('at most the longest is no breach', () => {
    expect(runs(ripped, 106, 13)).toEqual([])
  })

  test('inside the L, past the post, the longest from its low end', () => {
    expect(runs(post, 100, 20)).toEqual([
      ['along', 106, 0, 0],
      ['across', 21, 0, 0],
    ])
  })

  test('under a leaning wall it is longest along the wide side', () => {
    expect(runs(leaning, 129, 21)).toEqual([['along', 130, 0, 0]])
  })
})

test('doorway joint: how far inside the zone, for joints that lie across it', () => {
  const zone = {
    doorway: 'hall to den',
    from: inches(40),
    to: inches(60),
    low: inches(3),
    high: inches(9),
  }
  const report = verify(layouts({ ...offcuts, doorways: [zone] }))
  expect(report.breaches).toEqual([
    {
      floor: 'offcuts',
      rule: 'doorway joint',
      value: inches(8),
      limit: 0,
      at: [inches(48), inches(3.5)],
      pieces: [1],
      direction: '',
    },
  ])
  const beyond = { ...zone, low: inches(7), to: inches(61.5) }
  expect(verify(layouts({ ...offcuts, doorways: [beyond] })).breaches).toEqual([])
})
