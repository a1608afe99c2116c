import { describe, expect, test } from 'vitest'
import { doubledArea, turn } from '../../server/src/verify/exact.ts'
import type { Ring } from '../../server/src/verify/layout.ts'
import { sections, widthDown, widthUp } from '../../server/src/verify/sections.ts'
import { whereNotSimple } from '../../server/src/verify/simple-ring.ts'

const SQUARE: Ring = [
  [0, 0],
  [10, 0],
  [10, 10],
  [0, 10],
]

describe('turn', () => {
  test('is exact where doubles are not', () => {
    // p − q = 1, so these cross products are ±1 while their terms are near 2^99.
    const [p, q] = [900_719_925_474_099, 900_719_925_474_098]
    expect(turn([0, 0], [p, q], [p - 1, q - 1])).toBe(-1)
    expect(turn([0, 0], [p - 1, q - 1], [p, q])).toBe(1)
    expect(turn([0, 0], [p, q], [-p, -q])).toBe(0)
  })
})

test('area is signed by the direction of the ring', () => {
  expect(doubledArea(SQUARE)).toBe(200n)
  expect(doubledArea([...SQUARE].reverse())).toBe(-200n)
})

describe('simple rings', () => {
  test.each<[string, Ring]>([
    ['a square', SQUARE],
    [
      'a vertex inside a straight edge',
      [
        [0, 0],
        [5, 0],
        [10, 0],
        [10, 10],
        [0, 10],
      ],
    ],
    [
      'a triangle',
      [
        [0, 0],
        [10, 1],
        [3, 7],
      ],
    ],
    [
      'a notch one short of the other side',
      [
        [0, 0],
        [10, 0],
        [10, 10],
        [6, 10],
        [5, 1],
        [4, 10],
        [0, 10],
      ],
    ],
  ])('%s', (_, ring) => {
    expect(whereNotSimple(ring)).toBeNull()
  })

  test.each<[string, Ring]>([
    [
      'a bow tie',
      [
        [0, 0],
        [10, 10],
        [10, 0],
        [0, 10],
      ],
    ],
    [
      'a spur',
      [
        [0, 0],
        [10, 0],
        [15, 0],
        [10, 0],
        [10, 10],
        [0, 10],
      ],
    ],
    [
      'a vertex twice',
      [
        [0, 0],
        [0, 0],
        [10, 0],
        [10, 10],
        [0, 10],
      ],
    ],
    [
      'a notch that touches the other side',
      [
        [0, 0],
        [10, 0],
        [10, 10],
        [6, 10],
        [5, 0],
        [4, 10],
        [0, 10],
      ],
    ],
    [
      'two loops through one vertex',
      [
        [0, 0],
        [5, 5],
        [10, 0],
        [10, 10],
        [5, 5],
        [0, 10],
      ],
    ],
    [
      'an edge back along another',
      [
        [0, 0],
        [10, 0],
        [10, 10],
        [8, 10],
        [8, 0],
        [2, 0],
        [2, 10],
        [0, 10],
      ],
    ],
    [
      'a flat triangle',
      [
        [0, 0],
        [10, 0],
        [5, 0],
      ],
    ],
  ])('not %s', (_, ring) => {
    expect(whereNotSimple(ring)).not.toBeNull()
  })
})

describe('sections', () => {
  test('widths at a slab side that the grid does not hold are rounded down or up', () => {
    // A wedge 10 high at u = 0 that comes to a point at u = 3; a vertex below cuts it at u = 1.
    const [first] = sections([
      [
        [0, 0],
        [1, 0],
        [3, 0],
        [0, 10],
      ],
    ])
    const [interval] = first!.intervals
    expect([widthDown(interval!, 0), widthDown(interval!, 1)]).toEqual([10, 6])
    expect([widthUp(interval!, 0), widthUp(interval!, 1)]).toEqual([10, 7])
  })

  test('a hole parts the cross-section', () => {
    const hole: Ring = [
      [4, 4],
      [4, 6],
      [6, 6],
      [6, 4],
    ]
    expect(sections([SQUARE, hole]).map(({ intervals }) => intervals.length)).toEqual([1, 2, 1])
  })

  test('far from the origin nothing is lost', () => {
    const far = 900_000_000_000_000
    const ring: Ring = [
      [-far, -far],
      [far, far - 1],
      [far, far],
      [-far, -far + 1],
    ]
    const [slab] = sections([ring], [1])
    expect(widthDown(slab!.intervals[0]!, 1)).toBe(1)
    expect(widthUp(slab!.intervals[0]!, 1)).toBe(1)
  })
})
