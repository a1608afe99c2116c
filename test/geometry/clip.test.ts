import fc from 'fast-check'
import polygonClipping, { type MultiPolygon, type Polygon } from 'polygon-clipping'
import { describe, expect, test } from 'vitest'
import { canonical } from '../../server/src/geometry/canonical.ts'
import { difference, intersection, union } from '../../server/src/geometry/clip.ts'
import { twiceAreaOf } from '../../server/src/geometry/exact.ts'
import type { Region, Ring } from '../../server/src/geometry/point.ts'
import { counterClockwise, rectangle } from './regions.ts'

const MM = 1_000_000

/** Quadrilaterals on whole millimetres, square or not, that cross each other in all ways. */
const coordinate = fc.integer({ min: 0, max: 4000 })
const quad = fc
  .tuple(
    coordinate,
    coordinate,
    fc.integer({ min: 200, max: 2000 }),
    fc.integer({ min: 200, max: 2000 }),
    fc.array(fc.integer({ min: -90, max: 90 }), { minLength: 8, maxLength: 8 }),
    fc.boolean(),
  )
  .map(([x, y, width, height, off, square]) =>
    counterClockwise(
      rectangle(x, y, width, height).map((point, i) => ({
        x: (point.x + (square ? 0 : off[2 * i]!)) * MM,
        y: (point.y + (square ? 0 : off[2 * i + 1]!)) * MM,
      })),
    ),
  )
const quads = fc.array(quad, { minLength: 1, maxLength: 5 })

const inMillimetres = (ring: Ring): Polygon => [ring.map(({ x, y }) => [x / MM, y / MM])]

/** Area in square millimetres, as another library has it. */
const otherArea = (result: MultiPolygon) =>
  result.flat().reduce((sum, ring) => sum + signed(ring), 0)

const signed = (ring: readonly (readonly [number, number])[]) =>
  ring.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = ring[(i + 1) % ring.length]!
    return sum + (x * nextY - nextX * y) / 2
  }, 0)

const area = (region: Region) => Number(twiceAreaOf(region)) / 2 / MM / MM

describe('clipping', () => {
  test('has the same areas as another library', () => {
    fc.assert(
      fc.property(quads, quads, (some, others) => {
        const [first, ...rest] = some.map(inMillimetres) as [Polygon, ...Polygon[]]
        const a = polygonClipping.union(first, ...rest)
        const [firstOther, ...restOther] = others.map(inMillimetres) as [Polygon, ...Polygon[]]
        const b = polygonClipping.union(firstOther, ...restOther)
        const [ours, theirs] = [union(some), union(others)]
        // 2 nm along some 100 m of rim are 0.2 square millimetres.
        expect(area(ours)).toBeCloseTo(otherArea(a), 0)
        expect(area(difference(ours, theirs))).toBeCloseTo(
          otherArea(polygonClipping.difference(a, b)),
          0,
        )
        expect(area(intersection(ours, theirs))).toBeCloseTo(
          otherArea(polygonClipping.intersection(a, b)),
          0,
        )
      }),
      { seed: 20261125, numRuns: 200 },
    )
  })

  test('of square shapes is exact', () => {
    const [a, b] = [rectangle(0, 0, 10, 10), rectangle(5, -2, 3, 20)]
    expect(union([a, b])).toEqual([
      [
        [5, -2],
        [8, -2],
        [8, 0],
        [10, 0],
        [10, 10],
        [8, 10],
        [8, 18],
        [5, 18],
        [5, 10],
        [0, 10],
        [0, 0],
        [5, 0],
      ].map(([x, y]) => ({ x, y })),
    ])
    expect(intersection([a], [b])).toEqual([rectangle(5, 0, 3, 10)])
    expect(difference([a], [b])).toEqual([rectangle(0, 0, 5, 10), rectangle(8, 0, 2, 10)])
  })

  test('makes holes clockwise', () => {
    const [outer, hole] = difference([rectangle(0, 0, 10, 10)], [rectangle(4, 4, 2, 2)])
    expect(twiceAreaOf([outer!])).toBe(200n)
    expect(twiceAreaOf([hole!])).toBe(-8n)
  })
})

describe('the canonical form', () => {
  test('is the same from whichever corner and in whichever order the rings come', () => {
    const region = [rectangle(0, 0, 10, 10), rectangle(20, 0, 5, 5)]
    const turned = region.toReversed().map((ring) => [...ring.slice(2), ...ring.slice(0, 2)])
    expect(canonical(turned)).toEqual(canonical(region))
  })

  test('has no corner on a straight edge, no repeat and no spike', () => {
    const ring = [
      [5, 0],
      [10, 0],
      [10, 0],
      [10, 10],
      [10, 14],
      [10, 10],
      [0, 10],
      [0, 5],
      [0, 0],
      [3, 0],
    ].map(([x, y]) => ({ x: x!, y: y! }))
    expect(canonical([ring])).toEqual([rectangle(0, 0, 10, 10)])
  })

  test('of a ring without area is nothing', () => {
    expect(
      canonical([
        [
          { x: 0, y: 0 },
          { x: 5, y: 5 },
          { x: 9, y: 9 },
        ],
        [
          { x: 1, y: 1 },
          { x: 1, y: 1 },
          { x: 1, y: 1 },
        ],
      ]),
    ).toEqual([])
  })
})
