import { describe, expect, test } from 'vitest'
import { canonical, canonicalEdges, comparePoints } from '../../server/src/geometry/canonical.ts'
import type { Line } from '../../server/src/geometry/exact.ts'
import {
  outlinesOf,
  partsOf,
  ringsWithCrossings,
  simpleOutlines,
} from '../../server/src/geometry/outline.ts'
import type { Ring } from '../../server/src/geometry/point.ts'
import { rectangle } from './regions.ts'

const points = (...pairs: readonly (readonly [number, number])[]): Ring =>
  pairs.map(([x, y]) => ({ x, y }))
const edgesOf = (ring: Ring): Line[] =>
  ring.map((from, i) => ({ from, to: ring[(i + 1) % ring.length]! }))

describe('rings sorted into parts', () => {
  test('each hole goes to the rim around it, also where it touches that in a corner', () => {
    const west = rectangle(0, 0, 50, 50)
    const east = rectangle(60, 0, 50, 50)
    const post = points([60, 25], [65, 30], [70, 25], [65, 20])
    const vent = rectangle(10, 10, 5, 5).toReversed()
    const parts = partsOf(outlinesOf([vent, west, post, east]))
    expect(parts.map(({ rim, holes }) => [rim.points, holes.map((hole) => hole.points)])).toEqual([
      [west, [vent]],
      [east, [post]],
    ])
  })

  test('a ring without area falls away, and so does a hole in nothing', () => {
    const flat = points([0, 0], [5, 0], [9, 0])
    const vent = rectangle(200, 10, 5, 5).toReversed()
    expect(partsOf(outlinesOf([flat, vent]))).toEqual([])
    const rooms = [rectangle(0, 0, 50, 50), rectangle(60, 0, 50, 50)]
    const parts = partsOf(outlinesOf([flat, vent, ...rooms]))
    expect(parts.map(({ holes }) => holes)).toEqual([[], []])
  })

  test('edges are numbered through all rings, from 0', () => {
    const ids = outlinesOf([rectangle(0, 0, 9, 9), points([1, 1], [2, 2], [3, 1])])
    expect(ids.map(({ wholes }) => wholes.map((whole) => whole!.id))).toEqual([
      [0, 1, 2, 3],
      [4, 5, 6],
    ])
  })
})

describe('a ring that meets itself in corners falls into rings that do not', () => {
  const split = (ring: Ring) => simpleOutlines(outlinesOf([ring])[0]!).map((one) => one.points)

  test('two squares at one corner', () => {
    const eight = points([0, 0], [5, 0], [5, 5], [9, 5], [9, 9], [5, 9], [5, 5], [0, 5])
    expect(split(eight)).toEqual([
      points([5, 5], [9, 5], [9, 9], [5, 9]),
      points([0, 0], [5, 0], [5, 5], [0, 5]),
    ])
  })

  test('two triangles at one corner, the least there is', () => {
    const bow = points([0, 0], [5, 5], [9, 0], [9, 9], [5, 5], [0, 9])
    expect(split(bow).map((ring) => ring.length)).toEqual([3, 3])
  })

  test('three in a row, met twice', () => {
    const chain = points(
      [0, 0],
      [4, 0],
      [8, 4],
      [12, 0],
      [16, 4],
      [12, 8],
      [8, 4],
      [4, 8],
      [4, 0],
      [0, 4],
    )
    expect(split(chain).map((ring) => ring.length)).toEqual([4, 3, 3])
  })

  test('a ring that meets itself nowhere stays itself', () => {
    const [room] = outlinesOf([rectangle(0, 0, 9, 9)])
    const [ell] = outlinesOf([points([0, 0], [9, 0], [9, 5], [5, 5], [5, 9], [0, 9])])
    expect(simpleOutlines(room!)[0]).toBe(room)
    expect(simpleOutlines(ell!)[0]).toBe(ell)
  })
})

test('corners that cuts put into edges stand in the order of walking, each once', () => {
  const [room] = outlinesOf([points([0, 0], [30, 0], [30, 20], [0, 10])])
  const [south, east, north, west] = room!.wholes
  const pieces = [
    { points: points([20, 0], [30, 0], [30, 8]), wholes: [south!, east!, null] },
    { points: points([0, 0], [20, 0], [30, 8], [30, 20]), wholes: [south!, null, east!, null] },
    { points: points([15, 15], [6, 12], [0, 10]), wholes: [north!, north!, null] },
    { points: points([30, 20], [15, 15]), wholes: [north!, null] },
    { points: points([0, 4], [0, 0]), wholes: [west!, null] },
  ]
  expect(ringsWithCrossings([room!.points], pieces)).toEqual([
    points([0, 0], [20, 0], [30, 0], [30, 8], [30, 20], [15, 15], [6, 12], [0, 10], [0, 4]),
  ])
  expect(ringsWithCrossings([room!.points], [])).toEqual([room!.points])
})

describe('one form for one region', () => {
  test('from the lowest, then the leftmost corner', () => {
    expect(canonical([points([9, 5], [9, 9], [2, 9], [2, 1], [5, 1], [5, 5])])).toEqual([
      points([2, 1], [5, 1], [5, 5], [9, 5], [9, 9], [2, 9]),
    ])
  })

  test('rings by their corners in turn, the shorter first where one begins the other', () => {
    const short = points([0, 0], [9, 0], [9, 9])
    const long = points([0, 0], [9, 0], [9, 9], [0, 8])
    const other = points([0, 0], [8, 0], [8, 9])
    expect(canonical([long, short, other])).toEqual([other, short, long])
    expect(canonical([other, short, long])).toEqual([other, short, long])
  })

  test('a corner stands lower, else further left', () => {
    const [a, b, c] = points([9, 0], [0, 1], [5, 1])
    expect([comparePoints(a!, b!), comparePoints(b!, c!), comparePoints(c!, b!)]).toEqual([
      -1, -1, 1,
    ])
    expect(comparePoints(a!, a!)).toBe(0)
  })

  test('edge by edge no corner is dropped, and edges keep what they carry', () => {
    const split = edgesOf(points([9, 9], [0, 9], [0, 0], [5, 0], [9, 0]))
    const other = edgesOf(points([0, -5], [5, -5], [5, -1]))
    const marked = [split, other].map((ring, r) =>
      ring.map((edge, i) => ({ ...edge, mark: `${r} ${i}` })),
    )
    const begun = canonicalEdges(marked)
    expect(begun.map((ring) => ring.map(({ mark }) => mark))).toEqual([
      ['1 0', '1 1', '1 2'],
      ['0 2', '0 3', '0 4', '0 0', '0 1'],
    ])
    expect(canonicalEdges(marked.toReversed())).toEqual(begun)
  })

  test('straight corners at the seam of the list fall away', () => {
    expect(canonical([points([5, 0], [9, 0], [9, 9], [0, 9], [0, 0], [2, 0])])).toEqual([
      rectangle(0, 0, 9, 9),
    ])
    expect(canonical([points([0, 0], [9, 0], [9, 9], [0, 9], [0, 0])])).toEqual([
      rectangle(0, 0, 9, 9),
    ])
    expect(canonical([points([0, 0], [9, 0]), points([3, 3])])).toEqual([])
  })
})
