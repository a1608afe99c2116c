import { describe, expect, test } from 'vitest'
import { crossingAt, turn } from '../../server/src/geometry/exact.ts'
import { healed } from '../../server/src/geometry/heal.ts'
import { rectangle } from './regions.ts'

const points = (...pairs: readonly (readonly [number, number])[]) =>
  pairs.map(([x, y]) => ({ x, y }))

describe('healing', () => {
  test('closes a slit of two nanometres', () => {
    const slit = points(
      [0, 0],
      [9000, 0],
      [9000, 9000],
      [5001, 9000],
      [5001, 50],
      [4999, 50],
      [4999, 9000],
      [0, 9000],
    )
    const [ring] = healed([slit])
    expect(ring!.every(({ y }) => y === 0 || y === 9000)).toBe(true)
  })

  test('drops a sliver along a wall', () => {
    const sliver = points(
      [0, 0],
      [9000, 0],
      [9000, 9000],
      [0, 9000],
      [0, 5000],
      [-4000, 5001],
      [0, 5002],
    )
    expect(healed([sliver])).toEqual([rectangle(0, 0, 9000, 9000)])
  })

  test('joins floors a nanometre apart', () => {
    const [ring, ...others] = healed([rectangle(0, 0, 5000, 9000), rectangle(5001, 0, 5000, 9000)])
    expect(others).toEqual([])
    expect(ring!.length).toBeLessThanOrEqual(8)
  })

  test('leaves what is wider as it is', () => {
    const region = [rectangle(0, 0, 5000, 9000), rectangle(5010, 0, 5000, 9000)]
    expect(healed(region)).toEqual(region)
  })
})

describe('exact predicates', () => {
  test('tell left from right a nanometre off a line of ten kilometres', () => {
    const [a, b] = [
      { x: 0, y: 0 },
      { x: 9_999_999_999_999, y: 9_999_999_999_998 },
    ]
    expect(turn(a, b, { x: 5_000_000_000_000, y: 5_000_000_000_000 })).toBe(1)
    expect(turn(a, b, { x: 5_000_000_000_000, y: 4_999_999_999_998 })).toBe(-1)
    expect(turn(a, b, { x: 0, y: 0 })).toBe(0)
  })

  test('round a crossing half to even, once', () => {
    const at = (width: number, rise: number, y: number) =>
      crossingAt({ from: { x: 0, y: 0 }, to: { x: width, y: rise } }, y)
    expect([at(1, 2, 1), at(3, 2, 1), at(5, 2, 1), at(-1, 2, 1), at(-3, 2, 1)]).toEqual([
      0, 2, 2, 0, -2,
    ])
    expect(at(10, 3, 1)).toBe(3)
    // (10^14 + 1) / 2 is half way: a quotient in floating point cannot tell.
    expect(at(100_000_000_000_001, 2, 1)).toBe(50_000_000_000_000)
    expect(at(100_000_000_000_003, 2, 1)).toBe(50_000_000_000_002)
  })
})
