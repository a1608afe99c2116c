import { expect, test } from 'vitest'
import { meeting } from '../../server/src/geometry/meet.ts'
import type { Point, Ring } from '../../server/src/geometry/point.ts'
import { firstFault } from '../../server/src/geometry/simple.ts'

const ring = (...numbers: number[]): Ring => {
  const points: Point[] = []
  for (let i = 0; i < numbers.length; i += 2) points.push({ x: numbers[i]!, y: numbers[i + 1]! })
  return points
}

/** All the ways to hold a ring: turned, mirrored, begun elsewhere. */
const held = (points: Ring): Ring[] => {
  const turned = [points]
  for (let i = 0; i < 3; i++) turned.push(turned[i]!.map(({ x, y }) => ({ x: -y, y: x })))
  return turned.flatMap((r) => [r, [...r].reverse(), [...r.slice(1), r[0]!]])
}

const SIMPLE = {
  square: ring(0, 0, 10, 0, 10, 10, 0, 10),
  'walls in line': ring(0, 0, 5, 0, 10, 0, 10, 10, 0, 10),
  l: ring(0, 0, 10, 0, 10, 5, 5, 5, 5, 10, 0, 10),
  triangle: ring(0, 0, 7, 3, 2, 9),
}

const FAULTY = {
  'bow tie': ring(0, 0, 10, 10, 10, 0, 0, 10),
  'corner on a wall': ring(0, 0, 10, 0, 10, 10, 5, 0, 0, 10),
  'corner on a corner': ring(0, 0, 4, 0, 4, 4, 8, 4, 8, 8, 4, 8, 4, 4, 0, 4),
  spike: ring(0, 0, 10, 0, 10, 10, 10, 15, 10, 10, 0, 10),
  'there and back': ring(0, 0, 10, 0, 15, 0, 10, 0, 10, 10),
  'wall on a wall': ring(0, 0, 10, 0, 10, 4, 6, 4, 6, 0, 3, 0, 3, 8, 0, 8),
}

test.each(Object.entries(SIMPLE))('%s has no fault', (_, points) => {
  for (const r of held(points)) expect(firstFault(r)).toBeNull()
})

test.each(Object.entries(FAULTY))('%s is found', (_, points) => {
  for (const r of held(points)) expect(firstFault(r)).not.toBeNull()
})

test('names the two edges that cross', () => {
  expect(firstFault(FAULTY['bow tie'])).toEqual({ first: 0, second: 2 })
})

test('agrees with trying all pairs on 2000 random rings of few points', () => {
  let state = 7
  const next = (n: number) => {
    state = (state * 1_103_515_245 + 12_345) % 2_147_483_648
    return Math.floor(state / 1000) % n
  }
  let simple = 0
  for (let round = 0; round < 2000; round++) {
    const r = Array.from({ length: 3 + next(5) }, () => ({ x: next(6), y: next(6) }))
    if (r.some((p, i) => p.x === r.at(i - 1)!.x && p.y === r.at(i - 1)!.y)) continue
    const edges = r.map((from, i) => ({ from, to: r[(i + 1) % r.length]! }))
    const bad = edges.some((a, i) =>
      edges.some((b, j) => {
        if (j <= i) return false
        const how = meeting(a, b)
        const inTurn = j === i + 1 || (i === 0 && j === r.length - 1)
        return how !== 'apart' && !(how === 'end to end' && inTurn)
      }),
    )
    if (!bad) simple++
    expect(firstFault(r) !== null, JSON.stringify(r)).toBe(bad)
  }
  expect(simple).toBeGreaterThan(200)
})

/** A comb of n teeth lying on its side: all teeth are on the sweep at once. */
const comb = (teeth: number): Ring => {
  const points: Point[] = []
  for (let i = 0; i < teeth; i++) {
    points.push({ x: 0, y: 4 * i }, { x: 1000, y: 4 * i + 1 }, { x: 1, y: 4 * i + 2 })
  }
  return [...points, { x: -5, y: 4 * teeth }, { x: -5, y: -1 }]
}

test('ten thousand long teeth, all on the sweep at once', () => {
  expect(firstFault(comb(5000))).toBeNull()
})
