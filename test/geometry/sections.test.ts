import { describe, expect, test } from 'vitest'
import { bandsOf, heightOn } from '../../server/src/geometry/bands.ts'
import { outlinesOf, partsOf } from '../../server/src/geometry/outline.ts'
import type { Region, Ring } from '../../server/src/geometry/point.ts'
import {
  exchanged,
  heightOf,
  type Interval,
  sameSide,
  sectionsOf,
} from '../../server/src/geometry/sections.ts'
import { rectangle } from './regions.ts'

const points = (...pairs: readonly (readonly [number, number])[]): Ring =>
  pairs.map(([x, y]) => ({ x, y }))

/** Rises by 1 in 3 from the left, falls to nothing at the right; its floor is level. */
const GABLE = points([0, 0], [20, 0], [10, 10])

describe('a region cut at each of its corners', () => {
  const bounds = ({ low, high }: Interval) =>
    [low, high].map((ends) => ends.map(({ whole }) => whole))

  test('a gable is two trapeziums', () => {
    const sections = sectionsOf([GABLE])
    expect(sections.map(({ from, to }) => [from, to])).toEqual([
      [0, 10],
      [10, 20],
    ])
    expect(sections.map(({ intervals }) => intervals.map(bounds))).toEqual([
      [
        [
          [0, 0],
          [0, 10],
        ],
      ],
      [
        [
          [0, 0],
          [10, 0],
        ],
      ],
    ])
  })

  test('a post parts what lies beside it into two, and what lies before and behind it not', () => {
    const region = [rectangle(0, 0, 90, 60), rectangle(40, 10, 10, 20).toReversed()]
    const sections = sectionsOf(region)
    expect(sections.map(({ from, to }) => [from, to])).toEqual([
      [0, 40],
      [40, 50],
      [50, 90],
    ])
    expect(
      sections.map(({ intervals }) => intervals.map((one) => heightOf(one, 0, 'down'))),
    ).toEqual([[60], [10, 30], [60]])
    expect(sections[1]!.intervals.map(bounds)).toEqual([
      [
        [0, 0],
        [10, 10],
      ],
      [
        [30, 30],
        [60, 60],
      ],
    ])
  })

  test('two floors that touch in a line are one interval; two apart are two', () => {
    const touching = sectionsOf([rectangle(0, 0, 10, 5), rectangle(0, 5, 10, 5)])
    expect(touching[0]!.intervals.length).toBe(2)
    const apart = sectionsOf([rectangle(0, 0, 10, 5), rectangle(20, 0, 10, 5)])
    expect(apart.map(({ intervals }) => intervals.length)).toEqual([1, 0, 1])
  })

  test('a height on a slant is exact: a third of a nanometre counts', () => {
    // From (0, 0) up to (30, 10): at 10 it stands at 3 1/3, at 20 at 6 2/3; all of it moved by (100, 50).
    const plain = points([0, 0], [10, -9], [20, -9], [30, -9], [30, 10])
    const region = [plain.map(({ x, y }) => ({ x: x + 100, y: y + 50 }))]
    const [, middle] = sectionsOf(region)
    const { high } = middle!.intervals[0]!
    expect(high.map(({ whole, over, of }) => [whole, Number(over) / Number(of)])).toEqual([
      [53, 1 / 3],
      [56, 2 / 3],
    ])
    expect(heightOf(middle!.intervals[0]!, 0, 'down')).toBe(12)
    expect(heightOf(middle!.intervals[0]!, 0, 'up')).toBe(13)
    expect(heightOf(middle!.intervals[0]!, 1, 'down')).toBe(15)
    expect(heightOf(middle!.intervals[0]!, 1, 'up')).toBe(16)
  })

  test('a height between two slants of one part is whole, however they are rounded', () => {
    // Both edges rise by 1 in 3, ten apart.
    const region = [points([0, 0], [30, 10], [30, 20], [10, 13], [0, 10])]
    const sections = sectionsOf(region)
    const between = sections[1]!.intervals[0]!
    expect(heightOf(between, 1, 'down')).toBe(10)
    expect(heightOf(between, 1, 'up')).toBe(10)
    // At 10 the upper edge has its corner at 13, the lower one stands at 3 1/3: 9 2/3 between.
    expect(heightOf(between, 0, 'down')).toBe(9)
    expect(heightOf(between, 0, 'up')).toBe(10)
  })

  test('sides are the same when both their ends are, to the last part of a nanometre', () => {
    const region = [points([0, 0], [10, -9], [20, -9], [30, -9], [30, 10])]
    const [first, middle, last] = sectionsOf(region).map(({ intervals }) => intervals[0]!)
    expect(sameSide(first!, middle!)).toBe(true)
    expect(sameSide(middle!, last!)).toBe(true)
    expect(sameSide(first!, last!)).toBe(false)
    const [low, high] = [rectangle(0, 0, 5, 5), rectangle(5, 0, 5, 6)].map(
      (ring) => sectionsOf([ring])[0]!.intervals[0]!,
    )
    expect(sameSide(low!, high!)).toBe(false)
    expect(sameSide(sectionsOf([rectangle(0, 1, 5, 5)])[0]!.intervals[0]!, high!)).toBe(false)
  })

  test('exchanged twice is the same', () => {
    expect(exchanged({ x: 3, y: 7 })).toEqual({ x: 7, y: 3 })
  })
})

const bands = (region: Region) =>
  bandsOf(partsOf(outlinesOf(region))[0]!).map(({ from, to, low, high }) => [from, to, low, high])

describe('bands of a part, without a corner inside', () => {
  test('a room with a post: its extremes do not see the post, its corners do not part it', () => {
    const region = [rectangle(0, 0, 90, 60), rectangle(40, 10, 10, 20).toReversed()]
    expect(bands(region)).toEqual([[0, 90, 0, 60]])
  })

  test('a step parts it', () => {
    expect(bands([points([0, 0], [50, 0], [50, 5], [90, 5], [90, 40], [0, 40])])).toEqual([
      [0, 50, 0, 40],
      [50, 90, 5, 40],
    ])
  })

  test('a slant is as high as its higher end', () => {
    expect(bands([GABLE])).toEqual([[0, 20, 0, 10]])
    expect(bands([points([0, 0], [30, 0], [30, 10], [10, 4])])).toEqual([
      [0, 10, 0, 4],
      [10, 30, 0, 10],
    ])
  })

  test('heights on a slant are rounded outward', () => {
    // From (0, 0) to (30, 10), above a corner at 10 and 20: 3 1/3 and 6 2/3 there.
    expect(bands([points([0, 0], [10, -9], [20, -8], [30, -8], [30, 10])])).toEqual([
      [0, 10, -9, 4],
      [10, 20, -9, 7],
      [20, 30, -8, 10],
    ])
  })
})

test('the height of a slanted edge at a place, rounded down and up', () => {
  const rising = { from: { x: 0, y: 0 }, to: { x: 30, y: 10 } }
  const falling = { from: { x: 0, y: 10 }, to: { x: 30, y: 0 } }
  const at = (edge: typeof rising, x: number) => [
    heightOn(edge, x, 'down'),
    heightOn(edge, x, 'up'),
  ]
  expect([0, 10, 15, 20, 30].map((x) => at(rising, x))).toEqual([
    [0, 0],
    [3, 4],
    [5, 5],
    [6, 7],
    [10, 10],
  ])
  expect([0, 10, 15, 20, 30].map((x) => at(falling, x))).toEqual([
    [10, 10],
    [6, 7],
    [5, 5],
    [3, 4],
    [0, 0],
  ])
  expect(at({ from: { x: 0, y: 7 }, to: { x: 30, y: 7 } }, 11)).toEqual([7, 7])
})
