import { expect, test } from 'vitest'
import { sizesSaid } from '../../server/src/report/drawing/same-size.ts'
import { direction } from '../../server/src/report/drawing/vector.ts'

const along = (x: number, y: number) => direction({ x: 0, y: 0 }, { x, y })

test('a size is said by a parallel one within a hundredth, whichever way round it runs', () => {
  const said = sizesSaid()
  said.add(along(1, 0), 10_000)
  expect(said.has(along(-1, 0), 10_100)).toBe(true)
  expect(said.has(along(1, 0), 10_102)).toBe(false)
  expect(said.has(along(1, 0), 9_900)).toBe(true)
  expect(said.has(along(1, 0), 9_899)).toBe(false)
  expect(said.has(along(100, 2.9), 10_000)).toBe(true)
  expect(said.has(along(100, -2.9), 10_000)).toBe(true)
  expect(said.has(along(100, 3.1), 10_000)).toBe(false)
  expect(said.has(along(0, 1), 10_000)).toBe(false)
})

test('every way and every length finds itself and what is just alike', () => {
  for (let step = 0; step < 360; step += 1) {
    const way = along(180 - step, step < 180 ? step : 360 - step)
    for (const length of [1, 7, 4095, 4096, 25_400_000, 1e12]) {
      const said = sizesSaid()
      said.add(way, length)
      expect(said.has(way, length)).toBe(true)
      expect(said.has({ x: -way.x, y: -way.y }, Math.floor(length * 1.01))).toBe(true)
      expect(said.has({ x: -way.y, y: way.x }, length)).toBe(false)
      expect(said.has(way, length * 1.1 + 1)).toBe(false)
    }
  }
})
