import { expect, test } from 'vitest'
import { locatorOf } from '../../server/src/geometry/locate.ts'
import type { Point, Ring } from '../../server/src/geometry/point.ts'
import { placeInRing } from '../../server/src/geometry/ring.ts'

const comb: Ring = [
  { x: 0, y: 0 },
  { x: 80, y: 0 },
  ...Array.from({ length: 10 }, (_, i): Point[] => [
    { x: 80 - 8 * i, y: 20 },
    { x: 76 - 8 * i, y: 20 },
    { x: 76 - 8 * i, y: 6 },
    { x: 72 - 8 * i, y: 6 },
  ]).flat(),
]

/** Slanted on every side: the comb sheared, with corners at many heights. */
const sheared = comb.map(({ x, y }) => ({ x: x + y, y: 3 * y + x }))

test.each([
  ['a comb', comb],
  ['a comb the other way round', comb.toReversed()],
  ['a sheared comb', sheared],
])('%s: every place around it is where the slow way has it', (_, ring) => {
  const locate = locatorOf(ring)
  const differing: string[] = []
  for (let y = -3; y < 145; y += 1) {
    for (let x = -3; x < 110; x += 1)
      if (locate({ x, y }) !== placeInRing({ x, y }, ring)) differing.push(`${x} ${y}`)
  }
  expect(differing).toEqual([])
})
