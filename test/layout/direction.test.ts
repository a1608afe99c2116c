import { describe, expect, test } from 'vitest'
import type { EdgeKind } from '../../server/src/job/job.ts'
import { directionOf, wallFrame } from '../../server/src/layout/direction.ts'
import { gapAt } from '../../server/src/layout/edge-gaps.ts'
import type { FloorArea } from '../../server/src/layout/floor-area.ts'
import { EAST_WEST, NORTH_SOUTH } from '../../server/src/layout/frame.ts'
import { floor, inch, ring, room, survey } from './house.ts'

describe('the direction of the planks', () => {
  const along = (...sizes: readonly (readonly [number, number, number, number])[]) => {
    const rooms = sizes.map(([x, y, width, height], i) => ({
      name: `room ${i}`,
      outline: ring([x, y], [x + width, y], [x + width, y + height], [x, y + height]),
    }))
    const area = { rooms } as unknown as FloorArea
    return directionOf(floor(['hall']), survey([]), area)
  }

  test.each([
    ['east-west', [[500, 900, 120, 100]], EAST_WEST],
    ['north-south', [[500, 90, 100, 120]], NORTH_SOUTH],
    ['east-west where the room is square', [[0, 90, 100, 100]], EAST_WEST],
    [
      'along the longest side of all its rooms',
      [
        [0, 0, 120, 100],
        [120, 0, 60, 140],
      ],
      NORTH_SOUTH,
    ],
    [
      'along it wherever the rooms lie',
      [
        [-900, -900, 130, 100],
        [0, 0, 60, 120],
      ],
      EAST_WEST,
    ],
  ] as const)('is %s where nothing is said (common practice, no source)', (_, sizes, frame) => {
    expect(along(...sizes)).toEqual({ frame, said: false })
  })

  test('is none along a wall that is not there or has no length', () => {
    const hall = room('hall', [0, 0, 100, 50])
    const flat = room('flat', [0, 0, 100, 0])
    const rooms = survey([hall, flat])
    expect(wallFrame(rooms, 'hall', 0)).toEqual({ east: inch(100), north: 0 })
    expect(wallFrame(rooms, 'hall', 3)).toEqual({ east: 0, north: inch(50) })
    expect(wallFrame(rooms, 'hall', 4)).toBeNull()
    expect(wallFrame(rooms, 'den', 0)).toBeNull()
    expect(wallFrame(rooms, 'flat', 1)).toBeNull()
    expect(wallFrame(survey([{ ...hall, corners: [] }]), 'hall', 0)).toBeNull()
  })
})

describe('the gap at an edge (common practice, no source)', () => {
  const product = inch(1 / 4)
  const kinds: Readonly<Record<EdgeKind, number>> = {
    'base kept': product,
    'base off and back': product,
    'base new': product,
    'no base': product,
    tub: product,
    hearth: product,
    slider: product,
    cabinet: product,
    nosing: 0,
    'open edge': 0,
    carpet: inch(3 / 8),
    jamb: product,
    transition: inch(3 / 8),
    obstacle: product,
  }

  test.each(Object.entries(kinds) as [EdgeKind, number][])('at %s', (kind, gap) => {
    expect(gapAt(kind, null, product)).toBe(gap)
    expect(gapAt(kind, inch(1), product)).toBe(inch(1))
    expect(gapAt(kind, 0, product)).toBe(0)
  })
})
