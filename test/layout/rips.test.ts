import { describe, expect, test } from 'vitest'
import { floorArea } from '../../server/src/layout/area.ts'
import { EAST_WEST, NORTH_SOUTH } from '../../server/src/layout/frame.ts'
import { ripsAt, wallsAlong, wholeWalls } from '../../server/src/layout/rips.ts'
import { floor, inch, job, room, shaped, survey } from './house.ts'

const walls = (wide: number, frame = EAST_WEST) => {
  const hall = room('hall', [
    0,
    0,
    frame === EAST_WEST ? 100 : wide,
    frame === EAST_WEST ? wide : 100,
  ])
  return wallsAlong(floorArea(job(), survey([hall]), floor(['hall'])), frame)
}

describe('the courses along the walls', () => {
  test('know their wall and its gap', () => {
    expect(
      walls(142.5).map(({ label, low, high, floor: side }) => [label, low, high, side]),
    ).toEqual([
      ['south of hall', inch(0.25), inch(0.25), 'above'],
      ['north of hall', inch(142.25), inch(142.25), 'below'],
    ])
    expect(
      walls(142.5, NORTH_SOUTH).map(({ label, low, floor: side }) => [label, low, side]),
    ).toEqual([
      ['east of hall', inch(-142.25), 'above'],
      ['west of hall', inch(-0.25), 'below'],
    ])
  })

  // Wall to wall, plank, gap 1/4, and the balanced rip of the table of balancing [computed].
  test.each([
    [142.5, 7, 4.5],
    [121, 6, 3.25],
    [126.5, 7, 7],
    [147.5, 7.5, 6],
  ])('%f in of floor in planks of %f in balance at %f in on both sides', (wide, plank, rip) => {
    const rips = ripsAt(walls(wide), inch(plank), inch(0.25 + rip))
    expect(rips.map(({ narrowest, widest }) => [narrowest, widest])).toEqual([
      [inch(rip), inch(rip)],
      [inch(rip), inch(rip)],
    ])
  })

  test('taper with a wall out of square, and run out where a seam meets it', () => {
    const wall = {
      label: 'north of hall',
      room: 'hall',
      wall: 'a',
      level: true,
      from: 0,
      to: inch(100),
      floor: 'below',
    } as const
    // Clear 139 1/2 to 141 in planks of 7: 6 1/2 at one end, a full plank and 1 in at the other [computed].
    const [wedge] = ripsAt([{ ...wall, low: inch(139.5), high: inch(141) }], inch(7), 0)
    expect(wedge).toMatchObject({ narrowest: 0, widest: inch(7) })
    const [taper] = ripsAt([{ ...wall, low: inch(139.5), high: inch(141) }], inch(7), inch(4))
    expect(taper).toMatchObject({ narrowest: inch(2.5), widest: inch(4) })
  })

  test('count a nanometre off a seam as a full plank', () => {
    const wall = {
      label: '',
      room: '',
      wall: null,
      level: true,
      from: 0,
      to: 1,
      low: inch(7) + 1,
      high: inch(7) + 1,
      floor: 'below',
    } as const
    expect(ripsAt([wall], inch(7), 0)[0]).toMatchObject({ narrowest: inch(7) })
  })
})

describe('the walls along the planks', () => {
  const labels = (corners: Parameters<typeof shaped>[1], frame = EAST_WEST) => {
    const den = survey([shaped('den', corners)])
    return wallsAlong(floorArea(job({ gap: { value: 0, span: null } }), den, floor(['den'])), frame)
  }

  test('lie from low to high, of equals the lower end first, of those the longest first', () => {
    // North walls at 60 and 90, an arm's at 60 that is longer, and one that rises from 50 to 60.
    const corners = [
      [0, 60],
      [30, 60],
      [30, 90],
      [60, 90],
      [60, 60],
      [110, 60],
      [110, 50],
      [160, 60],
      [160, 0],
      [0, 0],
    ] as const
    const listed = (of: Parameters<typeof shaped>[1]) =>
      labels(of).map(({ label, low, high }) => [label, low / inch(1), high / inch(1)])
    expect(listed(corners)).toEqual([
      ['wall 8 of den', 0, 0],
      ['wall 6 of den', 50, 60],
      ['wall 4 of den', 60, 60],
      ['wall 0 of den', 60, 60],
      ['wall 2 of den', 90, 90],
    ])
    const inMirror = corners.map(([x, y]) => [160 - x, y] as const).toReversed()
    expect(listed(inMirror)).toEqual([
      ['wall 0 of den', 0, 0],
      ['wall 2 of den', 50, 60],
      ['wall 4 of den', 60, 60],
      ['wall 8 of den', 60, 60],
      ['wall 6 of den', 90, 90],
    ])
  })

  test('run at up to 45 degrees, and four nanometres more for corners that were rounded', () => {
    const roof = (more: number) => {
      const outline = [
        { x: 0, y: 0 },
        { x: inch(50), y: 0 },
        { x: inch(50), y: inch(50) + more },
      ]
      const corners = outline.toReversed()
      const den = shaped('den', [
        [50, 50],
        [50, 0],
        [0, 0],
      ])
      const rooms = survey([{ ...den, outline, corners }])
      return wallsAlong(floorArea(job(), rooms, floor(['den'])), EAST_WEST).length
    }
    expect(roof(4)).toBe(2)
    expect(roof(5)).toBe(1)
  })

  test('are level up to a rise of a quarter of their run', () => {
    const levels = (rise: number) =>
      labels([
        [0, 50],
        [40, 50 + rise],
        [40, 0],
        [0, 0],
      ]).map(({ level }) => level)
    expect(levels(10)).toEqual([true, true])
    expect(levels(10.5)).toEqual([true, false])
  })

  test('are whole though openings part them, each side by itself, and edges by their name', () => {
    const edge = (wall: string | null, label: string, from: number, side: 'above' | 'below') => ({
      ...{ wall, label, room: 'hall', level: true, floor: side },
      ...{ from, to: from + 10, low: from, high: from + 1 },
    })
    const whole = wholeWalls([
      edge('a', 'north', 0, 'below'),
      edge('b', 'north', 20, 'below'),
      edge('a', 'north', 40, 'below'),
      edge('a', 'north', 60, 'above'),
      edge(null, 'island', 80, 'below'),
      edge(null, 'column', 100, 'below'),
    ])
    expect(
      whole.map(({ wall, label, length, low, high }) => [wall, label, length, low, high]),
    ).toEqual([
      ['a', 'north', 20, 0, 41],
      ['b', 'north', 10, 20, 21],
      ['a', 'north', 10, 60, 61],
      [null, 'island', 10, 80, 81],
      [null, 'column', 10, 100, 101],
    ])
  })
})

test('a micrometre off a seam is on it, either way; a nanometre more is a rip', () => {
  const rip = (v: number, side: 'above' | 'below') => {
    const wall = { label: '', room: '', wall: null, level: true, from: 0, to: 1, low: v, high: v }
    return ripsAt([{ ...wall, floor: side }], inch(7), 0)[0]!.narrowest
  }
  for (const side of ['above', 'below'] as const) {
    expect(rip(1000, side)).toBe(inch(7))
    expect(rip(-1000, side)).toBe(inch(7))
  }
  expect(rip(1001, 'below')).toBe(1001)
  expect(rip(-1001, 'below')).toBe(inch(7) - 1001)
  expect(rip(-1001, 'above')).toBe(1001)
})
