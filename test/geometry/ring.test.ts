import { expect, test } from 'vitest'
import type { Point } from '../../server/src/geometry/point.ts'
import { boxesMeet, boxOf, onSegment, placeInRing } from '../../server/src/geometry/ring.ts'

const p = (x: number, y: number): Point => ({ x, y })
const square = [p(0, 0), p(10, 0), p(10, 10), p(0, 10)]

test('a point one nanometre off a line a thousand kilometres long is off it', () => {
  const far = p(1e15, 1e15 - 1)
  expect(onSegment(p(5e14, 5e14), p(0, 0), far)).toBe(false)
  expect(onSegment(far, p(0, 0), far)).toBe(true)
})

test('inside, outside and on the rim, from a ring of either orientation', () => {
  for (const ring of [square, [...square].reverse()]) {
    expect(placeInRing(p(5, 5), ring)).toBe('inside')
    expect(placeInRing(p(5, 10), ring)).toBe('rim')
    expect(placeInRing(p(0, 0), ring)).toBe('rim')
    expect(placeInRing(p(11, 10), ring)).toBe('outside')
    expect(placeInRing(p(-1, 10), ring)).toBe('outside')
  }
})

test('a point level with corners is judged rightly', () => {
  const diamond = [p(0, -5), p(5, 0), p(0, 5), p(-5, 0)]
  expect(placeInRing(p(0, 0), diamond)).toBe('inside')
  expect(placeInRing(p(-6, 0), diamond)).toBe('outside')
  expect(placeInRing(p(-6, 5), diamond)).toBe('outside')
})

test('boxes meet when they share more than an edge', () => {
  const box = boxOf(square)
  expect(box).toEqual({ west: 0, south: 0, east: 10, north: 10 })
  expect(boxesMeet(box, boxOf([p(9, 9), p(12, 12)]))).toBe(true)
  const beside = [
    [p(10, 0), p(12, 12)],
    [p(-4, 0), p(0, 12)],
    [p(0, 10), p(12, 12)],
    [p(0, -4), p(12, 0)],
  ]
  for (const ring of beside) {
    expect(boxesMeet(box, boxOf(ring))).toBe(false)
    expect(boxesMeet(boxOf(ring), box)).toBe(false)
  }
})
