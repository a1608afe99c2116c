import { expect, test } from 'vitest'
import { boxes } from '../../server/src/geometry/boxes.ts'
import type { Box } from '../../server/src/geometry/ring.ts'
import { dice } from '../generate/dice.ts'

const MM = 1_000_000

test('boxes of all sizes are found where they meet or touch, as by looking at each', () => {
  const roll = dice(7)
  const box = (): Box => {
    const size = () => roll.between(0, 2 ** roll.between(0, 16)) * MM
    const [west, south] = [roll.between(-5000, 5000) * MM, roll.between(-5000, 5000) * MM]
    return { west, south, east: west + size(), north: south + size() }
  }
  const all = Array.from({ length: 300 }, box)
  const found = boxes<number>()
  for (const [i, each] of all.entries()) found.add(i, each)
  for (let query = 0; query < 300; query += 1) {
    const asked = box()
    const seen = new Set<number>()
    found.some(asked, (i) => !seen.add(i))
    const expected = all.flatMap((each, i) =>
      each.west <= asked.east &&
      asked.west <= each.east &&
      each.south <= asked.north &&
      asked.south <= each.north
        ? [i]
        : [],
    )
    expect([...seen].sort((a, b) => a - b)).toEqual(expected)
  }
})
