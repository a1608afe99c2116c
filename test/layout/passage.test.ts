import { describe, expect, test } from 'vitest'
import { twiceAreaOf } from '../../server/src/geometry/exact.ts'
import type { Region } from '../../server/src/geometry/point.ts'
import { floorArea } from '../../server/src/layout/area.ts'
import {
  fromBeyond,
  middleOf,
  type Passage,
  passagesAt,
  widened,
} from '../../server/src/layout/passage.ts'
import { NM_PER_INCH } from '../../server/src/units/length.ts'
import { closet, doorway, floor, inch, job, name, ring, room, survey } from './house.ts'

type Face = readonly [readonly [number, number], readonly [number, number]]

/** A doorway north from one room into another, 30 in wide. */
const NEAR: Face = [
  [40, 48],
  [70, 48],
]
const FAR: Face = [
  [40, 52],
  [70, 52],
]
type More = NonNullable<Parameters<typeof doorway>[4]>
const between = (from: string, to: string | null, more: More = {}) =>
  doorway(from, to, NEAR, FAR, more)

const hall = room('Hall', [0, 0, 120, 48])
const den = room('Den', [0, 52, 120, 100])
const bath = room('Bath', [130, 0, 60, 60])

/** The one passage of a house with this doorway only. */
function passage(more: More = {}, to: string | null = 'Den'): Passage {
  const house = survey([hall, den, bath], [between('Hall', to, more)])
  return passagesAt(house, new Set(['hall']))[0]!
}

describe('the passages of some rooms', () => {
  function house() {
    const doors = [between('Hall', 'Den'), between('Den', 'Bath'), between('Hall', 'Bath')]
    const bunk = room('Bunk', [300, 0, 120, 100], {
      room: { recesses: [closet('closet', 0, 48, 4)] },
      surveyed: {
        closets: [
          {
            recess: 0,
            name: 'Bunk closet',
            outline: ring([330, 104], [402, 104], [402, 128], [330, 128]),
            throat: ring([390, 104], [342, 104], [342, 100], [390, 100]),
          },
        ],
      },
    })
    return survey([hall, den, bath, bunk], [...doors, between('Bunk', 'Den')])
  }

  test('are told in written order, whichever room is asked for first, each time alike', () => {
    const once = house()
    const labels = (...keys: readonly string[]) =>
      passagesAt(once, new Set(keys)).map(({ label }) => label)
    expect(labels('hall')).toEqual(['Hall to Den', 'Hall to Bath'])
    expect(labels('bath', 'hall')).toEqual(['Hall to Den', 'Den to Bath', 'Hall to Bath'])
    expect(labels('bunk', 'bath')).toEqual([
      'Den to Bath',
      'Hall to Bath',
      'Bunk to Den',
      'Bunk to Bunk closet',
    ])
    expect(labels('attic')).toEqual([])
  })

  test('a closet has one: its throat from the face in the room, no jambs to undercut', () => {
    expect(passagesAt(house(), new Set(['bunk closet']))).toEqual([
      {
        label: 'Bunk to Bunk closet',
        room: { key: 'bunk', text: 'Bunk' },
        beyond: { key: 'bunk closet', text: 'Bunk closet' },
        called: null,
        near: ring([342, 100], [390, 100]),
        far: ring([342, 104], [390, 104]),
        width: inch(48),
        thickness: inch(4),
        undercut: false,
        slider: false,
        openSide: false,
        reaches: true,
        trim: null,
        span: hall.room.span,
      },
    ])
  })
})

describe('a passage', () => {
  test('calls its rooms as they are written', () => {
    expect(passage({ toText: 'DEN' })).toMatchObject({
      room: { key: 'hall', text: 'Hall' },
      beyond: { key: 'den', text: 'Den' },
    })
  })

  test('calls a room that is not told of as the door does', () => {
    const stray = survey([hall], [between('Attic', 'Loft', { toText: 'the Loft' })])
    expect(passagesAt(stray, new Set(['attic']))[0]).toMatchObject({
      room: { key: 'attic', text: 'attic' },
      beyond: { key: 'loft', text: 'the Loft' },
    })
  })

  test('may lead nowhere that is named', () => {
    const { beyond } = passage({ toText: '' }, null)
    expect(beyond).toEqual({ key: null, text: '' })
  })

  test.each([
    ['slides to the outside', true, null, true],
    ['slides to a room', true, 'Den', false],
    ['swings to the outside', false, null, false],
  ] as const)('is a slider if it %s', (_, sliding, to, slider) => {
    expect(passage({ opened: { sliding } }, to).slider).toBe(slider)
  })

  test.each([
    ['from its own line', 'threshold', 't moulding', 'threshold'],
    ['else from the other side', null, 't moulding', 't moulding'],
    ['or has none', null, null, null],
  ])('has its trim %s', (_, own, others, trim) => {
    const other = { ...between('Den', 'Hall').opening, trim: others }
    expect(passage({ opened: { trim: own }, other }).trim).toBe(trim)
    if (others === null) expect(passage({ opened: { trim: own }, other: null }).trim).toBe(trim)
  })

  test('is told from beyond with its ends exchanged, and by its own name if it has one', () => {
    const there = fromBeyond(passage())
    expect(there).toMatchObject({
      label: 'Den to Hall',
      room: { key: 'den', text: 'Den' },
      beyond: { key: 'hall', text: 'Hall' },
      near: ring([70, 52], [40, 52]),
      far: ring([70, 48], [40, 48]),
    })
    const named = passage({ label: 'arch', opened: { name: name('arch') } })
    expect(fromBeyond(named).label).toBe('arch')
  })

  test('has its middle halfway between its faces, to the even nanometre', () => {
    expect(middleOf(passage())).toEqual(ring([40, 50], [70, 50]))
    const [left, right] = [
      { x: 1, y: 8 },
      { x: 3, y: 0 },
    ]
    const odd = { ...passage(), near: [left, left], far: [right, right] } as const
    expect(middleOf(odd)[0]).toEqual({ x: 2, y: 4 })
    const half = { ...odd, far: [left, { x: 2, y: 9 }] } as const
    expect(middleOf(half)[1]).toEqual({ x: 2, y: 8 })
  })

  test('is widened along its faces', () => {
    // 3-4-5: 5 in to either side are 3 in east and 4 in north.
    const [near, far] = [ring([0, 0], [30, 40]), ring([-4, 3], [26, 43])]
    const faces = { near: [near[0]!, near[1]!], far: [far[0]!, far[1]!] } as const
    const { near: wide, far: beyond } = widened({ ...passage(), ...faces }, inch(5))
    expect(wide).toEqual(ring([-3, -4], [33, 44]))
    expect(beyond).toEqual(ring([-7, -1], [29, 47]))
  })

  test('without a width has no way to be widened', () => {
    const [point] = ring([40, 48]) as [{ x: number; y: number }]
    const none = { ...passage(), near: [point, point], far: [point, point] } as const
    expect(widened(none, inch(5))).toEqual(none)
  })
})

/** Exact down to 1/64 of a square inch, which all figures here are. */
const squareInches = (region: Region) =>
  Number((twiceAreaOf(region) * 32n) / BigInt(NM_PER_INCH) ** 2n) / 64

describe('the floor in a passage', () => {
  type Area = Parameters<typeof floorArea>
  const areaOf = (rooms: Area[1]['rooms'], more: More, near: Face, far: Face, listed: string[]) =>
    floorArea(
      job(),
      survey(rooms, [doorway('Hall', 'Den', near, far, { jambs: false, ...more })]),
      floor(listed),
    )

  // The den begins 2 in before the hall ends: both are floor once.
  const over = room('Den', [0, 46, 120, 100])
  const OVER: Face = [
    [40, 46],
    [70, 46],
  ]

  test('is none where the rooms lie over each other', () => {
    const both = areaOf([hall, over], {}, NEAR, OVER, ['Hall', 'Den'])
    expect(squareInches(both.gross)).toBe(120 * 146)
    const one = areaOf([hall, over], {}, NEAR, OVER, ['Hall'])
    expect(squareInches(one.gross)).toBe(120 * 48)
    expect(one.rings.map((edges) => edges.length)).toEqual([4])
  })

  test('is both ends of it where its faces cross', () => {
    // Open to a room whose side lies 2 in off at one end and 2 in over at the other: two triangles of
    // 60 by 2 in, one of them in both rooms.
    const slanted = room('Den', [0, 0, 1, 1], {
      surveyed: {
        outline: ring([0, 50], [120, 46], [120, 146], [0, 146]),
        corners: ring([0, 146], [120, 146], [120, 46], [0, 50]),
      },
    })
    const faces = [
      [
        [0, 48],
        [120, 48],
      ],
      [
        [0, 50],
        [120, 46],
      ],
    ] as const
    const open = { kind: 'open side', thickness: 0 } as const
    const both = areaOf([hall, slanted], open, ...faces, ['Hall', 'Den'])
    expect(squareInches(both.gross)).toBe(120 * 146)
    expect(both.rings.length).toBe(1)
  })

  test('of a slider stops at its track, whatever its jambs: nothing is undercut', () => {
    const sides = (opened: More['opened'], jambs: boolean) => {
      const out = doorway('Hall', null, NEAR, FAR, { jambs, opened: { ...opened } })
      return floorArea(job(), survey([hall], [out]), floor(['Hall'])).jambSides
    }
    expect(sides({ sliding: true }, true)).toBe(0)
    expect(sides({ sliding: false }, true)).toBe(2)
    expect(sides({ sliding: false }, false)).toBe(0)
  })

  test('is none of one floor only where no wall parts it from the other', () => {
    const open = { kind: 'open side', thickness: 0 } as const
    const one = areaOf([hall, den], open, NEAR, FAR, ['Hall'])
    expect(squareInches(one.gross)).toBe(120 * 48)
  })

  test('a side without a wall is no doorway, which a product may ask to be broken', () => {
    const rooms = survey([hall, den], [between('Hall', 'Den', { kind: 'open side' })])
    const both = floor(['Hall', 'Den'])
    expect(floorArea(job({ doorways: 'break' }), rooms, both).transitions).toEqual([])
    const under = { breakUnder: inch(31) }
    expect(floorArea(job({ doorways: under }), rooms, both).transitions).toEqual([])
  })
})
