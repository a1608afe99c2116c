import { describe, expect, test } from 'vitest'
import type { Line } from '../../server/src/geometry/exact.ts'
import type { Ring } from '../../server/src/geometry/point.ts'
import { distanceToLine, spliced } from '../../server/src/geometry/splice.ts'
import { boundary } from '../../server/src/geometry/trace.ts'
import { rectangle } from './regions.ts'

const points = (...pairs: readonly (readonly [number, number])[]): Ring =>
  pairs.map(([x, y]) => ({ x, y }))
const edgesOf = (ring: Ring): Line[] =>
  ring.map((from, i) => ({ from, to: ring[(i + 1) % ring.length]! }))
const cornersOf = (rings: readonly (readonly Line[])[]) =>
  rings.map((ring) => ring.map(({ from }) => from))

describe('how far a point lies off a line with ends', () => {
  const slanted: Line = { from: { x: 10, y: 20 }, to: { x: 410, y: 320 } }
  test.each([
    // The line runs 4 to 3: its normal is (−3, 4)/5.
    ['beside it', { x: 10 + 200 - 30, y: 20 + 150 + 40 }, 50],
    ['on its other side', { x: 10 + 40 + 3, y: 20 + 30 - 4 }, 5],
    ['on it', { x: 50, y: 50 }, 0],
    ['before it', { x: 10 - 4, y: 20 - 3 }, 5],
    ['past it and aside', { x: 410 + 8 - 9, y: 320 + 6 + 12 }, Math.hypot(10, 15)],
    ['at its end', { x: 410, y: 320 }, 0],
  ])('%s', (_, point, distance) => {
    expect(distanceToLine(point, slanted)).toBeCloseTo(distance, 9)
    expect(distanceToLine(point, { from: slanted.to, to: slanted.from })).toBeCloseTo(distance, 9)
  })

  test('a nanometre off the middle of 10 km', () => {
    const far = 7_000_000_000_000
    const line = { from: { x: 0, y: 0 }, to: { x: far, y: far } }
    expect(distanceToLine({ x: far / 2, y: far / 2 + 1 }, line)).toBeCloseTo(Math.SQRT1_2, 2)
  })
})

describe('rings that all but touch come to share corners and edges', () => {
  test('a corner within reach of another moves to the first; one further off stays', () => {
    const rooms = [rectangle(0, 0, 100, 100), rectangle(102, 0, 50, 100)].map(edgesOf)
    expect(cornersOf(spliced(rooms, 2))[1]).toEqual(
      points([100, 0], [152, 0], [152, 100], [100, 100]),
    )
    const apart = [rectangle(0, 0, 100, 100), rectangle(103, 0, 50, 100)].map(edgesOf)
    expect(cornersOf(spliced(apart, 2))).toEqual(cornersOf(apart))
    const above = [rectangle(0, 0, 100, 100), rectangle(0, 103, 100, 50)].map(edgesOf)
    expect(cornersOf(spliced(above, 2))).toEqual(cornersOf(above))
  })

  test('corners within reach of an edge stand in it, in the order of walking', () => {
    const wall = edgesOf(rectangle(0, 0, 400, 300))
    const doors = [
      rectangle(300, -60, 50, 60),
      rectangle(100, -60, 60, 59),
      rectangle(-40, 100, 40, 90),
      rectangle(402, 20, 40, 90),
      rectangle(200, 300, 20, 10),
    ].map(edgesOf)
    expect(cornersOf(spliced([wall, ...doors], 2))[0]).toEqual(
      points(
        [0, 0],
        [100, -1],
        [160, -1],
        [300, 0],
        [350, 0],
        [400, 0],
        [402, 20],
        [402, 110],
        [400, 300],
        [220, 300],
        [200, 300],
        [0, 300],
        [0, 190],
        [0, 100],
      ),
    )
  })

  test('on a slanted edge too', () => {
    const roof = edgesOf(points([10, 10], [410, 310], [10, 310]))
    const post = edgesOf(points([330, 250], [340, 240], [340, 200]))
    const beam = edgesOf(points([90, 70], [120, 60], [130, 100]))
    expect(cornersOf(spliced([roof, post, beam], 2))[0]).toEqual(
      points([10, 10], [90, 70], [130, 100], [330, 250], [410, 310], [10, 310]),
    )
  })

  test('a corner near an end of an edge makes no step in it', () => {
    const room = edgesOf(rectangle(0, 0, 100, 100))
    const sharp = edgesOf(points([-50, 2], [0, 2], [-50, 60]))
    expect(cornersOf(spliced([room, sharp], 2))).toEqual([
      rectangle(0, 0, 100, 100),
      points([-50, 2], [0, 0], [-50, 60]),
    ])
  })

  test('a corner near an end that went another way makes no step in the edge', () => {
    // Of three corners two apart each, the middle one comes last and goes to the first.
    const first = edgesOf(points([0, 7], [-50, -3], [-50, -60]))
    const second = edgesOf(points([4, 7], [60, -50], [60, -5]))
    const middle = edgesOf(points([2, 7], [30, 107], [2, 107]))
    expect(cornersOf(spliced([first, second, middle], 2))).toEqual([
      points([0, 7], [-50, -3], [-50, -60]),
      points([4, 7], [60, -50], [60, -5]),
      points([0, 7], [30, 107], [2, 107]),
    ])
    const turned = [first, second, middle].map((ring) =>
      ring.map(({ from, to }) => ({ from: { x: from.y, y: from.x }, to: { x: to.y, y: to.x } })),
    )
    expect(cornersOf(spliced(turned, 2))[2]).toEqual(points([7, 0], [107, 30], [107, 2]))
  })

  test('an edge that shrinks to nothing falls away, and so does a ring of two edges', () => {
    const bevelled = edgesOf(points([0, 0], [100, 0], [100, 99], [99, 100], [0, 100]))
    expect(cornersOf(spliced([bevelled], 2))[0]).toEqual(
      points([0, 0], [100, 0], [100, 99], [0, 100]),
    )
    const splinter = edgesOf(points([0, 200], [100, 200], [100, 201]))
    expect(spliced([splinter], 2)).toEqual([])
  })

  test('edges keep what they carry', () => {
    const room = edgesOf(rectangle(0, 0, 100, 100)).map((edge, i) => ({ ...edge, mark: i }))
    const door = edgesOf(rectangle(40, -10, 20, 10)).map((edge, i) => ({ ...edge, mark: 10 + i }))
    const [walls] = spliced([room, door], 2)
    expect(walls!.map(({ mark }) => mark)).toEqual([0, 0, 0, 1, 2, 3])
  })
})

describe('the boundary of regions side by side', () => {
  test('a line walked both ways lies inside', () => {
    const lines = [rectangle(0, 0, 10, 10), rectangle(10, 0, 10, 10)].flatMap(edgesOf)
    expect(cornersOf(boundary(lines))).toEqual([
      points([0, 0], [10, 0], [20, 0], [20, 10], [10, 10], [0, 10]),
    ])
  })

  test('twice one way and once the other leaves it once', () => {
    const room = edgesOf(rectangle(0, 0, 10, 10))
    const back = { from: room[0]!.to, to: room[0]!.from }
    expect(cornersOf(boundary([{ ...room[0]! }, ...room, back]))).toEqual([rectangle(0, 0, 10, 10)])
  })

  test('where two rings touch in a corner neither crosses itself', () => {
    const lines = [rectangle(0, 0, 10, 10), rectangle(10, 10, 10, 10)].flatMap(edgesOf)
    expect(cornersOf(boundary(lines))).toEqual([rectangle(0, 0, 10, 10), rectangle(10, 10, 10, 10)])
    const holes = [rectangle(20, 0, 10, 10), rectangle(30, 10, 10, 10)].map((ring) =>
      ring.toReversed(),
    )
    expect(cornersOf(boundary(holes.flatMap(edgesOf))).map((ring) => ring.length)).toEqual([8])
  })

  test('of two ways to the left the sharper one is taken, whichever comes first in the list', () => {
    const west = edgesOf(points([-10, -1], [0, 0], [-5, 10]))
    const east = edgesOf(points([0, 0], [9, 3], [5, 10]))
    const [in0, ...rest] = west
    const orders = [
      [in0!, ...east, ...rest],
      [in0!, ...rest, ...east],
    ]
    for (const lines of orders) {
      expect(boundary(lines).map((ring) => ring.length)).toEqual([3, 3])
    }
  })

  test('a line walked three times one way and twice the other is left once', () => {
    const [south, ...walls] = edgesOf(rectangle(0, 0, 10, 10))
    const back = () => ({ from: south!.to, to: south!.from })
    const lines = [{ ...south! }, { ...south! }, south!, ...walls, back(), back()]
    expect(boundary(lines).map((ring) => ring.length)).toEqual([4])
  })

  test('three at one corner, each its own', () => {
    const wedge = (a: readonly [number, number], b: readonly [number, number]) =>
      edgesOf(points([0, 0], a, b))
    const rings = [wedge([10, 0], [10, 3]), wedge([10, 8], [5, 10]), wedge([-9, 2], [-9, -2])]
    const traced = cornersOf(boundary(rings.flat()))
    expect(traced).toEqual(cornersOf(rings))
    expect(cornersOf(boundary(rings.toReversed().flat()))).toEqual(cornersOf(rings.toReversed()))
  })
})
