import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { Line } from '../../server/src/geometry/exact.ts'
import { near } from '../../server/src/geometry/near.ts'
import { distanceToLine } from '../../server/src/geometry/splice.ts'

const coordinate = fc.oneof(
  fc.integer({ min: -30, max: 30 }),
  fc.integer({ min: -4000, max: 4000 }),
)
const point = fc.record({ x: coordinate, y: coordinate })
const lines: fc.Arbitrary<Line[]> = fc.array(
  fc
    .record({ from: point, to: point })
    .filter(({ from, to }) => from.x !== to.x || from.y !== to.y),
  { minLength: 1, maxLength: 12 },
)

test('every line that comes within the margin of a point is found there', () => {
  fc.assert(
    fc.property(lines, point, fc.integer({ min: 1, max: 9 }), (many, at, margin) => {
      const found = near(many, margin).at(at)
      many.forEach((line, i) => {
        if (distanceToLine(at, line) <= margin) expect(found).toContain(i)
      })
    }),
    { seed: 20261125, numRuns: 2000 },
  )
})

test('two lines that come within the margin of each other stand in one cell', () => {
  fc.assert(
    fc.property(lines, fc.integer({ min: 1, max: 9 }), (many, margin) => {
      const together = new Set<string>()
      near(many, margin).cells((indices) => {
        for (const i of indices) for (const j of indices) together.add(`${i} ${j}`)
      })
      many.forEach((line, i) => {
        many.forEach((other, j) => {
          const ends = [other.from, other.to].map((end) => distanceToLine(end, line))
          if (Math.min(...ends) <= margin) expect(together).toContain(`${i} ${j}`)
        })
      })
    }),
    { seed: 20261125, numRuns: 500 },
  )
})

test('where no line is, none is found', () => {
  const upright = { from: { x: 0, y: 0 }, to: { x: 0, y: 100 } }
  const grid = near([upright, { from: { x: 0, y: 0 }, to: { x: 100, y: 0 } }], 2)
  expect(grid.at({ x: 5000, y: 5000 })).toEqual([])
  expect(grid.at({ x: -5000, y: 50 })).toEqual([])
  expect(grid.lines[0]).toBe(upright)
})

test('lines far from each other share no cell, however short or long they are', () => {
  const short = (x: number, y: number): Line => ({ from: { x, y }, to: { x: x + 10, y: y + 10 } })
  const spread = Array.from({ length: 100 }, (_, i) => short(1000 * (i % 10), 100 * i))
  let most = 0
  near(spread, 1).cells((indices) => {
    most = Math.max(most, indices.length)
  })
  expect(most).toBe(1)
})

test('a long slanted line fills the cells that it passes, not the box around it', () => {
  const diagonal = { from: { x: 0, y: 0 }, to: { x: 100_000, y: 100_000 } }
  const fence = Array.from({ length: 99 }, (_, i) => ({
    from: { x: 1000 * i, y: -100 },
    to: { x: 1000 * i + 900, y: -100 },
  }))
  let cells = 0
  near([diagonal, ...fence], 1).cells((indices) => {
    if (indices.includes(0)) cells += 1
  })
  expect(cells).toBeLessThan(200)
  expect(cells).toBeGreaterThan(30)
})

test('long lines that crowd side by side are each found with those only that they touch', () => {
  const level = Array.from({ length: 1000 }, (_, i): Line => {
    return { from: { x: -1_000_000, y: 10 * i }, to: { x: 1_000_000 - i, y: 10 * i } }
  })
  const upright = { from: { x: 0, y: -100 }, to: { x: 0, y: 10_000 } }
  const found = near([...level, upright], 2)
  const pairs: (readonly number[])[] = []
  found.cells((indices) => {
    if (indices.length > 1) pairs.push(indices)
  })
  expect(pairs).toEqual(level.map((_, i) => [i, 1000]))
  expect(found.at({ x: 500_000, y: 302 })).toEqual([30])
})
