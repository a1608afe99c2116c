import { describe, expect, test } from 'vitest'
import { boxTree } from '../../server/src/geometry/box-tree.ts'
import { near } from '../../server/src/geometry/near.ts'
import type { Box } from '../../server/src/geometry/ring.ts'

const square = (west: number, south: number, size = 1): Box => ({
  ...{ west, south, east: west + size, north: south + size },
})

function found(boxes: readonly Box[], at: Box): number[] {
  const indices: number[] = []
  boxTree(boxes).touching(at, (index) => indices.push(index))
  return indices.sort((a, b) => a - b)
}

describe('boxes in a tree', () => {
  test('touch at their sides and corners, and no further', () => {
    const one = [square(10, 10)]
    for (const [west, south] of [
      [9, 10],
      [11, 10],
      [10, 9],
      [10, 11],
      [9, 9],
      [11, 11],
    ] as const)
      expect(found(one, square(west, south))).toEqual([0])
    for (const [west, south] of [
      [8, 10],
      [12, 10],
      [10, 8],
      [10, 12],
    ] as const)
      expect(found(one, square(west, south))).toEqual([])
    expect(found([], square(0, 0))).toEqual([])
  })

  // 64 by 64 squares with a gap between, told in an order of chance (7919 has no divisor in common).
  const WIDE = 64
  const places = Array.from({ length: WIDE * WIDE }, (_, i) => (i * 7919) % (WIDE * WIDE))
  const at = (place: number) => square(3 * (place % WIDE), 3 * Math.floor(place / WIDE))

  test('are all found, wherever they were told', () => {
    const boxes = places.map(at)
    for (const place of [0, 63, 64 * 63, 64 * 64 - 1, 64 * 20 + 33]) {
      const here = at(place)
      expect(found(boxes, here)).toEqual([places.indexOf(place)])
      // With a gap of two around it, its neighbours touch as well.
      const around = {
        west: here.west - 2,
        south: here.south - 2,
        east: here.east + 2,
        north: here.north + 2,
      }
      const expected = boxes.flatMap((box, i) => {
        const [across, up] = [Math.abs(box.west - here.west), Math.abs(box.south - here.south)]
        return across <= 3 && up <= 3 ? [i] : []
      })
      expect(found(boxes, around)).toEqual(expected)
    }
  })

  test('are looked at only where others of their node lie near', () => {
    let looks = 0
    const counted = places.map((place) => {
      const { west, ...rest } = at(place)
      return {
        ...rest,
        get west() {
          looks += 1
          return west
        },
      }
    })
    const tree = boxTree(counted)
    looks = 0
    tree.touching(at(64 * 20 + 33), () => {})
    // Four nodes of eight boxes meet in a corner; by chance, some two hundred boxes would be looked at.
    expect(looks).toBeLessThanOrEqual(4 * 8)
  })
})

describe('long lines beside each other', () => {
  const lines = Array.from({ length: 200 }, (_, i) => ({
    from: { x: i % 2 === 0 ? 0 : 100_000, y: 10 * i },
    to: { x: i % 2 === 0 ? 100_000 : 0, y: 10 * i },
  }))

  test('are near a point within their margin only, in their order', () => {
    const close = near(lines, 3)
    expect(close.at({ x: 50_000, y: 1003 })).toEqual([100])
    expect(close.at({ x: 50_000, y: 1004 })).toEqual([])
    expect(close.at({ x: -3, y: 997 })).toEqual([100])
    expect(close.at({ x: -4, y: 1000 })).toEqual([])
    expect(close.at({ x: 100_003, y: 1010 })).toEqual([101])
    expect(close.at({ x: 100_004, y: 1010 })).toEqual([])
    expect(near(lines, 10).at({ x: 7, y: 1000 })).toEqual([99, 100, 101])
  })

  test('stand together each alone, and two and two where their margins meet', () => {
    const groups: (readonly number[])[] = []
    near(lines.slice(0, 150), 5).cells((indices) => groups.push(indices))
    const alone = Array.from({ length: 150 }, (_, i) => [i])
    const pairs = Array.from({ length: 149 }, (_, i) => [i, i + 1])
    expect(new Set(groups.map(String))).toEqual(new Set([...alone, ...pairs].map(String)))
    expect(groups).toHaveLength(299)
  })
})
