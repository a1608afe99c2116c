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

  test('a corner that turns little is mitred like any other', () => {
    // The walls run 4 to 3 and 3 to 4: their normals (−3, 4)/5 and (−4, 3)/5 meet at (−7, 7)·k.
    const net = inset([
      edges(
        [
          [0, 0],
          [400, 300],
          [700, 700],
          [0, 700],
        ],
        [50, 50, 0, 0],
      ),
    ])
    // k = 50 / (1 + 24/25) / 5: the corner (400, 300) moves by 35.7142… each way.
    expect(pairs(net[0]!)).toContainEqual([364, 336])
    // The first wall's line 3x − 4y = 0 moves to 3x − 4y = −250 and meets x = 0 at 62.5.
    expect(pairs(net[0]!)).toContainEqual([0, 62])
  })

  test('walls almost in line with other gaps make a step square to the wider one', () => {
    const bent = [
      [0, 0],
      [50_000_000, 0],
      [100_000_000, 1000],
      [100_000_000, 80_000_000],
      [0, 80_000_000],
    ] as const
    const wide = inset([edges(bent, [2_000_000, 5_000_000, 0, 0, 0])]).map(pairs)[0]!
    // The second wall falls back by 1 in 50 000: 40 nm at 2 mm off, 100 nm at 5 mm.
    expect(wide).toContainEqual([49_999_960, 2_000_000])
    expect(wide).toContainEqual([49_999_900, 5_000_000])
    const narrow = inset([edges(bent, [5_000_000, 2_000_000, 0, 0, 0])]).map(pairs)[0]!
    expect(narrow).toContainEqual([50_000_000, 5_000_000])
    expect(narrow).toContainEqual([50_000_000, 2_000_000])
  })

  test('where a wall turns away and its gap changes much, the wider band ends square to its wall', () => {
    // The second wall rises 3 in 4: the dot of the normals is 4/5, and 20 mm along one are 25 along the other.
    const turning = [
      [0, 0],
      [400_000_000, 0],
      [800_000_000, 300_000_000],
      [800_000_000, 800_000_000],
      [0, 800_000_000],
    ] as const
    const wide = inset([edges(turning, [50_000_000, 20_000_000, 0, 0, 0])]).map(pairs)[0]!
    expect(wide).toContainEqual([400_000_000, 50_000_000])
    expect(wide).toContainEqual([400_000_000, 25_000_000])
    const narrow = inset([edges(turning, [20_000_000, 50_000_000, 0, 0, 0])]).map(pairs)[0]!
    expect(narrow).toContainEqual([385_000_000, 20_000_000])
    expect(narrow).toContainEqual([370_000_000, 40_000_000])
  })

  test('a sharp end of a wall is cut square beyond four gaps, and mitred within', () => {
    // The end of a wedge at (50, 40), its sides 1 to 4, 1 to 3 and 1 to 1 off the upright.
    const wedge = (aside: number, along: number) =>
      inset([
        edges(
          [
            [0, 0],
            [10_000, 0],
            [10_000, 9000],
            [5000 + aside, 5000 + along],
            [5000, 5000],
            [5000 - aside, 5000 + along],
            [0, 9000],
          ],
          500,
        ),
      ])
    const lowest = (aside: number, along: number) =>
      Math.min(
        ...wedge(aside, along)
          .flat()
          .filter(({ x, y }) => y > 1000 && x > 1000 && x < 9000)
          .map(({ y }) => y),
      )
    // A mitre lies gap / sin(half the angle) off: √17, √10, √2 gaps. Cut square, each side goes on for
    // one gap past its end: 500 · (4 + 1)/√17 in all.
    expect(lowest(1000, 4000)).toBe(5000 - Math.round(2500 / Math.sqrt(17)))
    const aside = Math.round(1500 / Math.sqrt(17))
    expect(pairs(wedge(1000, 4000)[0]!)).toContainEqual([5000 - aside, lowest(1000, 4000)])
    expect(pairs(wedge(1000, 4000)[0]!)).toContainEqual([5000 + aside, lowest(1000, 4000)])
    expect(lowest(1000, 3000)).toBe(5000 - Math.round(500 * Math.sqrt(10)))
    expect(lowest(3000, 3000)).toBe(5000 - Math.round(500 * Math.sqrt(2)))
  })

  test('the square end of a wall reaches as far aside as its gaps say', () => {
    // A wall of no thickness that ends upright at (5000, 5000), 300 off on its left and 700 on its right.
    const slit = [
      [0, 0],
      [10_000, 0],
      [10_000, 9000],
      [5000, 9000],
      [5000, 5000],
      [4999, 9000],
      [0, 9000],
    ] as const
    const net = inset([edges(slit, [0, 0, 0, 700, 300, 0, 0])])
    const end = net.flat().filter(({ x, y }) => y < 5000 && x > 3000 && x < 7000)
    expect(pairs(end).sort()).toEqual([
      [4700, 4300],
      [5700, 4300],
    ])
  })

  test('a column in one room is kept off by its own gap while another room lies apart', () => {
    const other = SQUARE.map(([x, y]) => [x + 200, y] as const)
    const column = [
      [40, 30],
      [40, 50],
      [60, 50],
      [60, 30],
    ] as const
    const net = inset([edges(other, 5), edges(SQUARE, 5), edges(column, 2)])
    expect(twiceAreaOf(net)).toBe(2n * (90n * 70n + 90n * 70n - 24n * 24n))
    expect(net.length).toBe(3)
  })

  test('an edge of no length is none', () => {
    const doubled = [SQUARE[0], ...SQUARE] as const
    expect(inset([edges(doubled, [9, 1, 2, 3, 4])])).toEqual(inset([edges(SQUARE, [1, 2, 3, 4])]))
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
