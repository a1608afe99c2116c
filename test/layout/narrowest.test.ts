import { describe, expect, test } from 'vitest'
import { narrowestOf } from '../../server/src/layout/narrowest.ts'
import type { PublishedRing } from '../../server/src/layout/published.ts'
import { NM_PER_MM } from '../../server/src/units/length.ts'

type Corners = readonly (readonly [number, number])[]

const inMm = (corners: Corners): PublishedRing =>
  corners.map(([u, v]) => [u * NM_PER_MM, v * NM_PER_MM])

/** In mm; nothing that ends in a point is long enough to count unless `rip` is told. */
function narrowest(corners: Corners, rip = 1000): number | null {
  const found = narrowestOf(inMm(corners), rip * NM_PER_MM)
  return found === null ? null : found / NM_PER_MM
}

/** Whichever corner a ring is begun at, and wherever it lies. */
const begunAnew = (corners: Corners): readonly Corners[] =>
  corners.map((_, i) =>
    [...corners.slice(i), ...corners.slice(0, i)].map(([u, v]) => [u - 7, v + 9] as const),
  )

describe('of four corners', () => {
  test.each<readonly [string, Corners, number | null]>([
    [
      'a rectangle is as narrow as it is high',
      [
        [0, 0],
        [20, 0],
        [20, 5],
        [0, 5],
      ],
      5,
    ],
    [
      'a slanted lower edge leaves the lesser side',
      [
        [0, 0],
        [20, 2],
        [20, 5],
        [0, 5],
      ],
      3,
    ],
    [
      'a lower edge slanted the other way too',
      [
        [0, 2],
        [20, 0],
        [20, 5],
        [0, 5],
      ],
      3,
    ],
    [
      'a slanted upper edge leaves the lesser side',
      [
        [0, 0],
        [20, 0],
        [20, 5],
        [0, 3],
      ],
      3,
    ],
    [
      'an upper edge slanted the other way too',
      [
        [0, 0],
        [20, 0],
        [20, 3],
        [0, 5],
      ],
      3,
    ],
    [
      'a slanted right end comes to a point',
      [
        [0, 0],
        [20, 0],
        [30, 5],
        [0, 5],
      ],
      null,
    ],
    [
      'a slanted left end comes to a point',
      [
        [10, 0],
        [20, 0],
        [20, 5],
        [0, 5],
      ],
      null,
    ],
  ])('%s', (_, corners, expected) => {
    for (const each of begunAnew(corners)) expect(narrowest(each)).toBe(expected)
  })

  test('a rectangle of a thousandth of a millimetre is a point, a nanometre more is not', () => {
    const high = (nm: number): PublishedRing => [
      [0, 0],
      [20 * NM_PER_MM, 0],
      [20 * NM_PER_MM, nm],
      [0, nm],
    ]
    expect(narrowestOf(high(1000), 0)).toBeNull()
    expect(narrowestOf(high(1001), 0)).toBe(1001)
  })
})

describe('what comes to a point', () => {
  const wedge: Corners = [
    [0, 0],
    [20, 0],
    [20, 5],
  ]

  test('counts by its widest place where it is longer than the narrowest rip', () => {
    expect(narrowest(wedge, 19)).toBe(5)
    expect(narrowest(wedge, 20)).toBeNull()
  })

  test('is a point up to a thousandth of a millimetre', () => {
    const blunt = (mm: number): Corners => [...wedge, [0, mm]]
    expect(narrowest(blunt(0.001))).toBeNull()
    expect(narrowest(blunt(0.002))).toBe(0.002)
  })

  test('goes on as long as it gets no narrower', () => {
    // To 5 over 10, then 5 for another 10.
    const long: Corners = [
      [0, 0],
      [20, 0],
      [20, 5],
      [10, 5],
    ]
    expect(narrowest(long, 19)).toBe(5)
    expect(narrowest(long, 20)).toBeNull()
  })

  test('ends where it gets narrower again: there the lesser side counts', () => {
    const beak: Corners = [
      [0, 0],
      [20, 0],
      [20, 2],
      [10, 5],
    ]
    expect(narrowest(beak, 9)).toBe(2)
    // The first 10 are a corner that is cut off; the rest is a strip of 5 to 2.
    expect(narrowest(beak, 10)).toBe(2)
  })
})

describe('a piece in parts', () => {
  test('a leg is as narrow as it is, however wide the rest', () => {
    expect(
      narrowest([
        [0, 0],
        [30, 0],
        [30, 7],
        [10, 7],
        [10, 1.5],
        [0, 1.5],
      ]),
    ).toBe(1.5)
  })

  test('a neck of a thousandth of a millimetre is none, one of two is', () => {
    const waisted = (neck: number): Corners => [
      [0, -4],
      [10, -4],
      [10, 0],
      [20, 0],
      [20, -4],
      [30, -4],
      [30, 5],
      [20, 5],
      [20, neck],
      [10, neck],
      [10, 4],
      [0, 4],
    ]
    expect(narrowest(waisted(0.001), 5)).toBe(8)
    expect(narrowest(waisted(0.002), 5)).toBe(0.002)
  })

  test('two legs, the lesser counts, even if only that is long enough to be a point', () => {
    // Above a notch 20 long a leg of 2, below it a wedge from 3 down to nothing.
    const forked: Corners = [
      [0, 0],
      [20, 0],
      [20, 7],
      [0, 7],
      [0, 5],
      [15, 5],
      [15, 3],
    ]
    expect(narrowest(forked, 14)).toBe(2)
    expect(narrowest(forked, 30)).toBe(2)
  })
})
