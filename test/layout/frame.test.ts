import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  EAST_WEST,
  intoFrame,
  isQuarterTurn,
  NORTH_SOUTH,
  outOfFrame,
} from '../../server/src/layout/frame.ts'

const coordinate = fc.integer({ min: -1e11, max: 1e11 })

describe('the frame of a run', () => {
  test('turns by quarters without rounding', () => {
    const point = { x: 123_456_789_012, y: -7 }
    expect(intoFrame(EAST_WEST, point)).toEqual(point)
    expect(intoFrame(NORTH_SOUTH, point)).toEqual({ x: -7, y: -123_456_789_012 })
    expect(intoFrame({ east: -5, north: 0 }, point)).toEqual({ x: -123_456_789_012, y: 7 })
    expect(intoFrame({ east: 0, north: -2 }, point)).toEqual({ x: 7, y: 123_456_789_012 })
    expect([EAST_WEST, NORTH_SOUTH, { east: 1, north: 1 }].map(isQuarterTurn)).toEqual([
      true,
      true,
      false,
    ])
  })

  test('has u along the direction and v to its left', () => {
    // 3-4-5: 50 along (3, 4) and 25 to its left, (−4, 3).
    expect(intoFrame({ east: 3, north: 4 }, { x: 30 - 20, y: 40 + 15 })).toEqual({ x: 50, y: 25 })
  })

  test('never gives a zero with a sign', () => {
    const ways = [-1, 0, 1].flatMap((east) => [-1, 0, 1].map((north) => ({ east, north })))
    for (const frame of ways.filter(({ east, north }) => east !== 0 || north !== 0)) {
      expect(outOfFrame(frame, { x: 0, y: 0 })).toEqual({ x: 0, y: 0 })
      expect(intoFrame(frame, { x: 0, y: 0 })).toEqual({ x: 0, y: 0 })
    }
  })

  test('goes back within a nanometre, and keeps lengths', () => {
    const way = fc.integer({ min: -1e10, max: 1e10 })
    fc.assert(
      fc.property(coordinate, coordinate, way, way, (x, y, east, north) => {
        fc.pre(east !== 0 || north !== 0)
        const frame = { east, north }
        const there = intoFrame(frame, { x, y })
        expect(Number.isInteger(there.x) && Number.isInteger(there.y)).toBe(true)
        const back = outOfFrame(frame, there)
        expect(Math.hypot(back.x - x, back.y - y)).toBeLessThan(0.75)
      }),
      { seed: 20261125, numRuns: 500 },
    )
  })

  test('rounds two corners alike wherever the house lies, from the middle of its floor', () => {
    const frame = { east: 3, north: 7 }
    const way = (by: number) => {
      const [a, b] = [0, 1].map((i) =>
        intoFrame(frame, { x: 1001 * i + by, y: 777 * i - by }, { x: 500.5 + by, y: 388.5 - by }),
      )
      return [b!.x - a!.x, b!.y - a!.y]
    }
    const moved = Array.from({ length: 40 }, (_, i) => way(i * 12_345_678_901))
    expect(new Set(moved.map(String)).size).toBe(1)
    const [u, v] = moved[0]!
    expect(Math.abs(Math.hypot(u!, v!) - Math.hypot(1001, 777))).toBeLessThan(1.5)
  })
})
