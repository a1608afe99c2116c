import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { crossingAt, turn, twiceArea, twiceAreaOf } from '../../server/src/geometry/exact.ts'
import { add, ratio } from '../../server/src/units/ratio.ts'
import { roundRatio } from '../../server/src/units/round.ts'
import { rectangle } from './regions.ts'

const line = (x: number, y: number, toX: number, toY: number) => ({
  from: { x, y },
  to: { x: toX, y: toY },
})

describe('where a slanted line crosses a height, half to even', () => {
  test.each([
    // One across and two up: half a nanometre at each odd height.
    [line(0, 0, 1, 2), 1, 0],
    [line(1, 0, 2, 2), 1, 2],
    [line(0, 0, 5, 2), 1, 2],
    [line(0, 0, 7, 2), 1, 4],
    [line(0, 0, -1, 2), 1, 0],
    [line(0, 0, -3, 2), 1, -2],
    [line(0, 0, -5, 2), 1, -2],
    [line(0, 2, 3, 0), 1, 2],
    [line(3, 2, 0, 0), 1, 2],
    [line(0, 0, 3, 4), 1, 1],
    [line(0, 0, 3, 4), 3, 2],
    [line(1, 0, 2, 4), 2, 2],
    [line(2, 4, 1, 0), 2, 2],
    [line(7, 0, 7, 9), 4, 7],
    [line(0, 0, 10, 10), 0, 0],
    [line(0, 0, 10, 10), 10, 10],
  ])('%j at %i', (slant, y, x) => {
    expect(Object.is(crossingAt(slant, y), x)).toBe(true)
  })

  test('as exact fractions say, whichever way the line runs, also for lines of 90 km', () => {
    const near = fc.integer({ min: -9, max: 9 })
    const far = fc.integer({ min: -1e13, max: 8e13 })
    const heights = fc.tuple(fc.integer({ min: 1, max: 12 }), fc.integer({ min: 0, max: 12 }))
    fc.assert(
      fc.property(near, far, fc.oneof(near, far), near, heights, (x, z, toX, y, [rise, up]) => {
        for (const start of [x, z]) {
          const along = ratio(BigInt(toX - start) * BigInt(up), rise)
          const exactly = Number(roundRatio(add(ratio(start), along), 'half to even'))
          expect(crossingAt(line(start, y, toX, y + rise), y + up)).toBe(exactly)
          expect(crossingAt(line(toX, y + rise, start, y), y + up)).toBe(exactly)
        }
      }),
      { seed: 20261125, numRuns: 1000 },
    )
  })

  test.each([
    // At the middle of an odd width the half is exact; a nanometre of width beside it is not.
    [60_000_000_000_001, 30_000_000_000_000],
    [60_000_000_000_003, 30_000_000_000_002],
    [-60_000_000_000_001, -30_000_000_000_000],
    [-60_000_000_000_003, -30_000_000_000_002],
  ])('half of %d nm', (width, half) => {
    expect(crossingAt(line(0, 0, width, 2_000_000), 1_000_000)).toBe(half)
    expect(crossingAt(line(0, 2_000_000, width, 0), 1_000_000)).toBe(half)
  })

  test.each([1, -1])('a quotient of 16 digits is put right by whole numbers, sign %i', (sign) => {
    // 90 km across; 1/3 and 2/3 of the way up, where a double's own quotient is off by more than 1/100.
    const width = sign * 90_071_992_547_409
    const third = roundRatio(ratio(BigInt(width), 3n), 'half to even')
    const two = roundRatio(ratio(2n * BigInt(width), 3n), 'half to even')
    expect(crossingAt(line(0, 0, width, 3), 1)).toBe(Number(third))
    expect(crossingAt(line(0, 0, width, 3), 2)).toBe(Number(two))
  })
})

test('a turn of one part in 10²⁷ is seen', () => {
  const far = 30_000_000_000_000
  expect(turn({ x: 0, y: 0 }, { x: far, y: far }, { x: far - 1, y: far - 1 })).toBe(0)
  expect(turn({ x: 0, y: 0 }, { x: far, y: far + 1 }, { x: far - 1, y: far })).toBe(1)
  expect(turn({ x: 0, y: 0 }, { x: far, y: far - 1 }, { x: far - 1, y: far - 2 })).toBe(-1)
})

test('areas: counter-clockwise positive, nothing for nothing', () => {
  expect(twiceArea(rectangle(5, 7, 4, 3))).toBe(24n)
  expect(twiceArea(rectangle(5, 7, 4, 3).toReversed())).toBe(-24n)
  expect([twiceArea([]), twiceArea([{ x: 1, y: 2 }])]).toEqual([0n, 0n])
  expect(twiceAreaOf([rectangle(0, 0, 4, 3), rectangle(1, 1, 1, 1).toReversed()])).toBe(22n)
})
