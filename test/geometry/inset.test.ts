import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { twiceAreaOf } from '../../server/src/geometry/exact.ts'
import { type GapEdge, inset, insetByBands } from '../../server/src/geometry/inset.ts'
import type { Ring } from '../../server/src/geometry/point.ts'
import { comb, someFloor } from './regions.ts'

/** Edges of a ring given as [x, y] pairs, all with one gap or one gap each. */
function edges(
  corners: readonly (readonly [number, number])[],
  gaps: number | readonly number[],
): GapEdge[] {
  return corners.map(([x, y], i) => {
    const [toX, toY] = corners[(i + 1) % corners.length]!
    return {
      from: { x, y },
      to: { x: toX, y: toY },
      gap: typeof gaps === 'number' ? gaps : gaps[i]!,
    }
  })
}

const pairs = (ring: Ring) => ring.map(({ x, y }) => [x, y])
const SQUARE = [
  [0, 0],
  [100, 0],
  [100, 80],
  [0, 80],
] as const

describe('the gap taken off a region', () => {
  test('each wall by its own', () => {
    expect(inset([edges(SQUARE, [1, 2, 3, 4])]).map(pairs)).toEqual([
      [
        [4, 1],
        [98, 1],
        [98, 77],
        [4, 77],
      ],
    ])
  })

  test('a corner that juts into the floor is mitred', () => {
    const ell = [
      [0, 0],
      [100, 0],
      [100, 40],
      [50, 40],
      [50, 80],
      [0, 80],
    ] as const
    expect(inset([edges(ell, 5)]).map(pairs)).toEqual([
      [
        [5, 5],
        [95, 5],
        [95, 35],
        [45, 35],
        [45, 75],
        [5, 75],
      ],
    ])
  })

  test('a column is kept off all round', () => {
    const column = [
      [40, 30],
      [40, 50],
      [60, 50],
      [60, 30],
    ] as const
    expect(inset([edges(SQUARE, 0), edges(column, 5)]).map(pairs)).toEqual([
      pairs(SQUARE.map(([x, y]) => ({ x, y }))),
      [
        [35, 25],
        [35, 55],
        [65, 55],
        [65, 25],
      ],
    ])
  })

  test('walls in line with other gaps make a step', () => {
    const split = [
      [0, 0],
      [50, 0],
      [100, 0],
      [100, 80],
      [0, 80],
    ] as const
    expect(inset([edges(split, [2, 5, 0, 0, 0])]).map(pairs)).toEqual([
      [
        [0, 2],
        [50, 2],
        [50, 5],
        [100, 5],
        [100, 80],
        [0, 80],
      ],
    ])
  })

  test('a column against the wall joins the gap of the wall', () => {
    const column = [
      [40, 3],
      [40, 20],
      [60, 20],
      [60, 3],
    ] as const
    expect(inset([edges(SQUARE, 5), edges(column, 5)]).map(pairs)).toEqual([
      [
        [5, 5],
        [35, 5],
        [35, 25],
        [65, 25],
        [65, 5],
        [95, 5],
        [95, 75],
        [5, 75],
      ],
    ])
  })

  test('a room narrower than its gaps has no floor', () => {
    expect(
      inset([
        edges(
          [
            [0, 0],
            [100, 0],
            [100, 9],
            [0, 9],
          ],
          5,
        ),
      ]),
    ).toEqual([])
  })

  test('a niche narrower than its gaps closes', () => {
    const niche = [
      [0, 0],
      [40, 0],
      [40, -30],
      [48, -30],
      [48, 0],
      [100, 0],
      [100, 80],
      [0, 80],
    ] as const
    expect(inset([edges(niche, 5)]).map(pairs)).toEqual([
      [
        [5, 5],
        [95, 5],
        [95, 75],
        [5, 75],
      ],
    ])
  })

  test('the end of a thin wall is kept off square', () => {
    const slit = [
      [0, 0],
      [100, 0],
      [100, 80],
      [51, 80],
      [50, 40],
      [49, 80],
      [0, 80],
    ] as const
    const net = inset([edges(slit, 5)])
    const lowest = Math.min(
      ...net
        .flat()
        .filter((p) => p.y > 20 && p.y < 60)
        .map((p) => p.y),
    )
    expect(lowest).toBe(35)
    expect(net.flat().some((p) => p.x < 50 && p.y === 35)).toBe(true)
    expect(net.flat().some((p) => p.x > 50 && p.y === 35)).toBe(true)
  })

  test('a vent within the gap of the wall is overrun', () => {
    const vent = [
      [40, 2],
      [40, 4],
      [60, 4],
      [60, 2],
    ] as const
    expect(inset([edges(SQUARE, 10), edges(vent, 1)]).map(pairs)).toEqual([
      [
        [10, 10],
        [90, 10],
        [90, 70],
        [10, 70],
      ],
    ])
  })

  test('a slanted wall is kept off square to it', () => {
    // 3-4-5: off the wall from (400, 0) to (0, 300) by 50 along its normal (3/5, 4/5).
    const net = inset([
      edges(
        [
          [0, 0],
          [400, 0],
          [0, 300],
        ],
        [0, 50, 0],
      ),
    ])
    // The wall's line 3x + 4y = 1200 moves to 3x + 4y = 950.
    expect(pairs(net[0]!)).toEqual([
      [0, 0],
      [317, 0],
      [0, 238],
    ])
    expect(twiceAreaOf(net)).toBe(317n * 238n)
  })

  test('moved corner by corner or taken off in bands is the same floor', () => {
    const INCH = 25_400_000
    const gap = fc.constantFrom(0, INCH / 8, INCH / 4, (3 * INCH) / 8)
    fc.assert(
      fc.property(someFloor, fc.infiniteStream(gap), (region, gaps) => {
        const rings = region.map((ring) =>
          edges(
            ring.map(({ x, y }) => [x, y] as const),
            [...gaps.take(ring.length)],
          ),
        )
        const difference = twiceAreaOf(inset(rings)) - twiceAreaOf(insetByBands(rings))
        // The bands' crossings are off by 2 nm at most, along some 100 m of rim.
        expect(difference < 800_000_000_000n && difference > -800_000_000_000n).toBe(true)
      }),
      { seed: 20261125, numRuns: 200 },
    )
  })

  test('of a comb of many teeth is exact', () => {
    const region = comb(200, false)
    const rings = region.map((ring) =>
      edges(
        ring.map(({ x, y }) => [x, y] as const),
        6_350_000,
      ),
    )
    expect(inset(rings)).toEqual(insetByBands(rings))
  })
})
