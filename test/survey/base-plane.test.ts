import { describe, expect, test } from 'vitest'
import type { Room } from '../../server/src/job/job.ts'
import { basePlaneMessage, grownCorners, leadAt } from '../../server/src/survey/base-plane.ts'

type Base = {
  readonly fate: 'kept' | 'off and back' | null
  readonly thickness: number | null
} | null

const roomOf = (planes: string, base: Base) =>
  ({
    name: { text: 'bunk' },
    walls: planes.split(' ').map((plane) => ({ reading: { plane } })),
    base: base && { ...base, span: { file: 'job.floor', start: 3, end: 9 } },
  }) as unknown as Room

const kept = { fate: 'kept', thickness: null } as const
const off = { fate: 'off and back', thickness: null } as const
const unsaid = { fate: null, thickness: null } as const

/** What the tape touched at each wall, what becomes of the base, and from where to where it is asked. */
const ASKED: readonly (readonly [string, string, Base, string | null])[] = [
  ['a base that comes off, read to', 'base base base base', off, 'to the base … to the wall'],
  ['a base that stays, read behind', 'wall wall wall wall', kept, 'to the wall … to the base'],
  [
    'one wall read to the base, which is off',
    'wall wall wall base',
    off,
    'to the wall … to the wall',
  ],
  ['one wall read behind, the base stays', 'base base wall', kept, 'to the base … to the base'],
  ['a base that comes off, read behind', 'wall wall wall wall', off, null],
  ['a base that stays, read to', 'base base base base', kept, null],
  ['a base of which nothing is said', 'base base', unsaid, null],
  ['the same, read behind', 'wall wall', unsaid, null],
  ['a jamb is no wall', 'wall wall jamb', off, null],
  ['read to jambs', 'jamb jamb wall', off, null],
  ['no base', 'wall wall base', null, null],
  ['its thickness is said', 'base base', { fate: 'off and back', thickness: 12 }, null],
]

describe('how thick a base is, is asked where it matters', () => {
  test.each(ASKED)('%s', (_, planes, base, expected) => {
    const found = basePlaneMessage(roomOf(planes, base), 'feet-inches')
    if (expected === null) {
      expect(found).toBeNull()
      return
    }
    const [touched, rim] = expected.split(' … ')
    expect(found).toMatchObject({
      weight: 'incomplete',
      code: 'base-thickness-not-said',
      span: { start: 3 },
      text: `bunk was read ${touched} and its floor runs ${rim}: how thick is the base? Write it, such as base 1/2" thick.`,
    })
  })
})

describe('a floor that runs farther than the tape', () => {
  test('round a 3-4-5 triangle: one farther out, it is twice as large', () => {
    // The circle that touches its sides has a radius of 1 and its middle at (1, −1).
    const grown = grownCorners(
      [
        { x: 0, y: 0 },
        { x: 4, y: 0 },
        { x: 0, y: -3 },
      ],
      1,
    )
    const expected = [
      [-1, 1],
      [7, 1],
      [-1, -5],
    ]
    grown.forEach(({ x, y }, i) => {
      expect(x).toBeCloseTo(expected[i]![0]!, 9)
      expect(y).toBeCloseTo(expected[i]![1]!, 9)
    })
  })

  test('where a wall turns straight back its corner has no mitre and stays', () => {
    const there = [
      { x: 0, y: 0 },
      { x: 10, y: 0 },
      { x: 4, y: 0 },
      { x: 4, y: -6 },
      { x: 0, y: -6 },
    ]
    expect(grownCorners(there, 1)[1]).toEqual({ x: 10, y: 0 })
    expect(leadAt({ x: 1, y: 0 }, { x: -1, y: 0 })).toBe(0)
  })
})
