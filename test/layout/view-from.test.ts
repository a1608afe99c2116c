import { describe, expect, test } from 'vitest'
import type { FloorArea } from '../../server/src/layout/floor-area.ts'
import { EAST_WEST } from '../../server/src/layout/frame.ts'
import type { WallAlong } from '../../server/src/layout/rips.ts'
import { compareNumbers, standing, viewFrom } from '../../server/src/layout/view-from.ts'

const point = (x: number, y: number) => ({ x, y })
const edge = (
  from: readonly [number, number],
  to: readonly [number, number],
  room: string,
  wall: string | null,
) => ({
  from: point(...from),
  to: point(...to),
  gap: 3,
  room,
  wall,
})

describe('what is seen of a floor', () => {
  // One faces the north wall of the hall, at y = 50, from its left end at x = 10.
  const rim = [
    edge([110, 50], [10, 50], 'hall', 'north'),
    edge([10, 50], [10, 0], 'hall', null),
    edge([10, 0], [110, 0], 'den', 'south'),
    edge([110, 0], [110, 50], 'hall', 'east'),
  ]
  const box = (x: number, y: number) => ({
    label: '',
    ring: [point(x, y), point(x + 4, y), point(x + 4, y + 2), point(x, y + 2)],
  })
  const area = { rim, doorways: [box(60, 0), box(20, 48)] } as unknown as FloorArea
  const wall = [{ from: 10, to: 110, high: 50, room: 'hall' }] as unknown as WallAlong[]

  test('edges and doorways from left to right, downwards, with gaps and what stands there', () => {
    expect(viewFrom(area, { frame: EAST_WEST, wall, inMirror: false })).toEqual([
      ...[0, 0, 0, 50, 3, 0],
      ...[0, 0, 100, 0, 3, 2],
      ...[0, 50, 100, 50, 3, 1],
      ...[100, 0, 100, 50, 3, 2],
      ...[10, 0, 10, 2, 14, 0, 14, 2],
      ...[50, 48, 50, 50, 54, 48, 54, 50],
    ])
  })

  test('in a mirror from the other end of the wall', () => {
    expect(viewFrom(area, { frame: EAST_WEST, wall, inMirror: true })).toEqual([
      ...[0, 0, 0, 50, 3, 2],
      ...[0, 0, 100, 0, 3, 2],
      ...[0, 50, 100, 50, 3, 1],
      ...[100, 0, 100, 50, 3, 0],
      ...[46, 48, 46, 50, 50, 48, 50, 50],
      ...[86, 0, 86, 2, 90, 0, 90, 2],
    ])
  })

  test('from the left end of a wall of several edges, at its highest', () => {
    const parts = [
      { from: 60, to: 110, high: 50 },
      { from: 10, to: 40, high: 52 },
    ] as unknown as WallAlong[]
    expect(standing({ wall: parts, inMirror: false })).toEqual({ u: 10, v: 52 })
    expect(standing({ wall: parts, inMirror: true })).toEqual({ u: -110, v: 52 })
  })
})

test('numbers are in the order of the first that differs, else the shorter list first', () => {
  const order = (a: readonly number[], b: readonly number[]) => Math.sign(compareNumbers(a, b))
  expect(order([1, 2], [1, 3])).toBe(-1)
  expect(order([2, 0], [1, 9])).toBe(1)
  expect(order([1, 2], [1, 2])).toBe(0)
  expect(order([1], [1, 2])).toBe(-1)
  expect(order([1, 2, 3], [1, 2])).toBe(1)
})
