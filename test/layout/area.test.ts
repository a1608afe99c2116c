import { describe, expect, test } from 'vitest'
import { twiceAreaOf } from '../../server/src/geometry/exact.ts'
import type { Region } from '../../server/src/geometry/point.ts'
import { floorArea } from '../../server/src/layout/area.ts'
import type { FloorArea } from '../../server/src/layout/floor-area.ts'
import { EAST_WEST, NORTH_SOUTH } from '../../server/src/layout/frame.ts'
import { netInFrame } from '../../server/src/layout/net.ts'
import { NM_PER_INCH } from '../../server/src/units/length.ts'
import {
  breakLine,
  closet,
  doorway,
  edgeBetween,
  edgeOfWall,
  floor,
  inch,
  job,
  ring,
  room,
  survey,
} from './house.ts'

const inInches = (region: Region) =>
  region.map((corners) => corners.map(({ x, y }) => [x / NM_PER_INCH, y / NM_PER_INCH]))
const codes = (area: FloorArea) => area.messages.map(({ code }) => code)
const edge = (area: FloorArea, label: string, kind?: string) =>
  area.rim.filter((one) => one.label === label && (kind === undefined || one.kind === kind))
/** Exact down to 1/64 of a square inch, which all figures here are. */
const squareInches = (region: Region) =>
  Number((twiceAreaOf(region) * 32n) / BigInt(NM_PER_INCH) ** 2n) / 64

// A hall 120 × 48 in, a den north of it behind a 4-in wall, a 30-in door between them.
const hall = room('hall', [0, 0, 120, 48])
const den = room('den', [0, 52, 120, 100])
const door = doorway(
  'hall',
  'den',
  [
    [40, 48],
    [70, 48],
  ],
  [
    [40, 52],
    [70, 52],
  ],
)

describe('one room', () => {
  test('is its outline less the gap of the product', () => {
    const area = floorArea(job(), survey([hall]), floor(['hall']))
    expect(inInches(area.gross)).toEqual([
      [
        [0, 0],
        [120, 0],
        [120, 48],
        [0, 48],
      ],
    ])
    expect(inInches(netInFrame(area, EAST_WEST))).toEqual([
      [
        [0.25, 0.25],
        [119.75, 0.25],
        [119.75, 47.75],
        [0.25, 47.75],
      ],
    ])
    expect(area.rim.map(({ label, kind }) => [label, kind])).toEqual([
      ['south of hall', 'base kept'],
      ['east of hall', 'base kept'],
      ['north of hall', 'base kept'],
      ['west of hall', 'base kept'],
    ])
    expect(area.complete).toBe(true)
    expect(area.messages).toEqual([])
  })

  test('turned by a quarter keeps every figure', () => {
    const area = floorArea(job(), survey([hall]), floor(['hall']))
    expect(inInches(netInFrame(area, NORTH_SOUTH))).toEqual([
      [
        [0.25, -119.75],
        [47.75, -119.75],
        [47.75, -0.25],
        [0.25, -0.25],
      ],
    ])
  })

  test('takes the gap of each edge from the floor, then from the wall', () => {
    const tub = room('hall', [0, 0, 120, 48], {
      walls: { west: { edge: { kind: 'tub', gap: inch(1 / 8), trim: null, span: null } } },
    })
    const lines = [edgeOfWall('hall', 1, { kind: 'nosing', trim: 'stair nosing' })]
    const area = floorArea(job(), survey([tub]), floor(['hall'], { edges: lines }))
    expect(inInches(netInFrame(area, EAST_WEST))).toEqual([
      [
        [0.125, 0.25],
        [120, 0.25],
        [120, 47.75],
        [0.125, 47.75],
      ],
    ])
    expect(edge(area, 'east of hall')).toMatchObject([{ kind: 'nosing', trim: 'stair nosing' }])
  })

  test('whose base nobody spoke of keeps the gap of the product, and says so', () => {
    const bare = room('hall', [0, 0, 120, 48], { room: { base: null } })
    const area = floorArea(job(), survey([bare]), floor(['hall']))
    expect(area.rim.every(({ kind, gap }) => kind === null && gap === inch(1 / 4))).toBe(true)
    expect(codes(area)).toEqual(['base-not-said'])
    expect(area.messages[0]!.weight).toBe('note')
  })

  test('less its columns and hearths', () => {
    const column = {
      kind: 'column',
      label: 'column',
      gap: inch(1 / 2),
      span: den.room.span,
    } as const
    const furnished = room('hall', [0, 0, 120, 48], {
      surveyed: {
        obstacles: [
          { ...column, ring: ring([50, 20], [54, 20], [54, 24], [50, 24]) },
          {
            ...column,
            kind: 'hearth',
            label: 'hearth',
            gap: null,
            ring: ring([20, 36], [60, 36], [60, 48], [20, 48]),
          },
        ],
      },
    })
    const area = floorArea(job(), survey([furnished]), floor(['hall']))
    expect(squareInches(area.gross)).toBe(120 * 48 - 16 - 480)
    expect(edge(area, 'hearth in hall', 'hearth').length).toBe(3)
    expect(edge(area, 'column in hall', 'obstacle').length).toBe(4)
    expect(squareInches(netInFrame(area, EAST_WEST))).toBe(119.5 * 47.5 - 25 - 40.5 * 12)
  })
})

describe('a doorway', () => {
  test('run through is floor, half an inch under each jamb', () => {
    const area = floorArea(job(), survey([hall, den], [door]), floor(['hall', 'den']))
    expect(squareInches(area.gross)).toBe(120 * 48 + 120 * 100 + 31 * 4)
    // Half an inch under each jamb at the wall's own thickness; there the floor keeps no gap.
    expect(squareInches(netInFrame(area, EAST_WEST))).toBe(119.5 * 47.5 + 119.5 * 99.5 + 31 * 4.5)
    expect(edge(area, 'hall to den', 'jamb').length).toBe(2)
    expect(area.jambSides).toBe(2)
    expect(area.doorways.map(({ label }) => label)).toEqual(['hall to den'])
    expect(area.transitions).toEqual([])
  })

  test('without jambs loses the gap at each side', () => {
    const pass = { ...door, kind: 'pass-through', jambs: false } as const
    const area = floorArea(job(), survey([hall, den], [pass]), floor(['hall', 'den']))
    expect(squareInches(netInFrame(area, EAST_WEST))).toBe(119.5 * 47.5 + 119.5 * 99.5 + 29.5 * 4.5)
    expect(area.jambSides).toBe(0)
  })

  test('to another floor is run in to the middle of the closed door', () => {
    const lines = [edgeBetween('den', 'hall', { trim: 't moulding' })]
    const area = floorArea(job(), survey([hall, den], [door]), floor(['hall'], { edges: lines }))
    expect(squareInches(area.gross)).toBe(120 * 48 + 31 * 2)
    // 3/4 in of floor missing under the moulding, half of it on this side: common practice, no source.
    expect(squareInches(netInFrame(area, EAST_WEST))).toBe(119.5 * 47.5 + 31 * (2.25 - 0.375))
    expect(edge(area, 'hall to den', 'transition')).toMatchObject([
      { gap: inch(3 / 8), trim: 't moulding' },
    ])
    expect(area.transitions).toMatchObject([
      {
        label: 'hall to den',
        breaks: false,
        kind: 'transition',
        trim: 't moulding',
        width: inch(30),
      },
    ])
    expect(area.messages).toEqual([])
  })

  test('is told from the other side as well', () => {
    const area = floorArea(job(), survey([hall, den], [door]), floor(['den']))
    expect(squareInches(area.gross)).toBe(120 * 100 + 31 * 2)
    expect(area.transitions).toMatchObject([{ label: 'den to hall', kind: null }])
  })

  test('that does not reach the room beyond, for nothing places it there, is none of its floor', () => {
    const astray = { ...door, reaches: false }
    const area = floorArea(job(), survey([hall, den], [astray]), floor(['den']))
    expect(squareInches(area.gross)).toBe(120 * 100)
    expect(area.transitions).toEqual([])
    const both = floorArea(job(), survey([hall, den], [astray]), floor(['hall', 'den']))
    const alone = floorArea(job(), survey([hall], [astray]), floor(['hall']))
    expect(squareInches(both.gross)).toBe(120 * 100 + squareInches(alone.gross))
  })

  test('to another floor with nothing said of how is noted, with what to write', () => {
    const area = floorArea(job(), survey([hall, den], [door]), floor(['hall']))
    expect(codes(area)).toEqual(['edge-without-kind'])
    expect(area.messages[0]!.text).toContain('edge hall to den, with t moulding')
  })

  test('that the floor breaks in parts the floor, with a moulding between', () => {
    const area = floorArea(
      job(),
      survey([hall, den], [door]),
      floor(['hall', 'den'], { breaks: [breakLine('hall', 'den')] }),
    )
    expect(area.rings.length).toBe(2)
    const net = netInFrame(area, EAST_WEST)
    expect(net.length).toBe(2)
    expect(squareInches(net)).toBe(119.5 * 47.5 + 119.5 * 99.5 + 31 * (4.5 - 0.75))
    expect(area.transitions).toMatchObject([
      { label: 'hall to den', breaks: true, trim: 't moulding' },
    ])
    expect(area.doorways).toEqual([])
    expect(area.messages).toEqual([])
  })

  test('that the product breaks in does so too, if it is narrow enough', () => {
    const parts = (doorways: 'break' | { breakUnder: number }) =>
      floorArea(job({ doorways }), survey([hall, den], [door]), floor(['hall', 'den'])).rings.length
    expect(parts('break')).toBe(2)
    expect(parts({ breakUnder: inch(31) })).toBe(2)
    expect(parts({ breakUnder: inch(30) })).toBe(1)
  })

  test('with a slider to the outside stops the floor at its track', () => {
    const slider = doorway(
      'hall',
      null,
      [
        [40, 48],
        [112, 48],
      ],
      [
        [40, 52],
        [112, 52],
      ],
      {
        opened: { sliding: true },
      },
    )
    const lines = [edgeBetween('hall', 'outside', { trim: 'end cap' })]
    const area = floorArea(job(), survey([hall], [slider]), floor(['hall'], { edges: lines }))
    expect(squareInches(area.gross)).toBe(120 * 48)
    expect(area.transitions).toMatchObject([
      { label: 'hall to outside', kind: 'slider', trim: 'end cap' },
    ])
  })

  test('a nanometre off its wall joins the rooms all the same', () => {
    const off = {
      ...door,
      near: [
        { x: inch(40), y: inch(48) + 1 },
        { x: inch(70), y: inch(48) - 1 },
      ],
    } as const
    const area = floorArea(job(), survey([hall, den], [off]), floor(['hall', 'den']))
    expect(area.rings.length).toBe(1)
  })

  test('broken in a loop of rooms parts the floor there only', () => {
    const west = doorway(
      'hall',
      'den',
      [
        [10, 48],
        [40, 48],
      ],
      [
        [10, 52],
        [40, 52],
      ],
      {
        label: 'west door',
        opened: { name: { text: 'west door', key: 'west door', span: den.room.span } },
      },
    )
    const east = doorway(
      'hall',
      'den',
      [
        [80, 48],
        [110, 48],
      ],
      [
        [80, 52],
        [110, 52],
      ],
    )
    const line = {
      ...breakLine('hall', 'den'),
      called: { text: 'west door', key: 'west door', span: den.room.span },
    }
    const area = floorArea(
      job(),
      survey([hall, den], [west, east]),
      floor(['hall', 'den'], { breaks: [line] }),
    )
    // One floor: its outer ring runs in to the break from both sides; between the doors lies the wall.
    expect(netInFrame(area, EAST_WEST).length).toBe(1)
    expect(area.transitions.map(({ label }) => label)).toEqual(['west door'])
  })
})

describe('closets', () => {
  const withCloset = room('bunk', [0, 0, 120, 100], {
    room: { recesses: [closet('closet', 0, 48, 4)] },
    surveyed: {
      closets: [
        {
          recess: 0,
          name: 'bunk closet',
          outline: ring([30, 104], [102, 104], [102, 128], [30, 128]),
          throat: ring([90, 104], [42, 104], [42, 100], [90, 100]),
        },
      ],
    },
  })

  test('are floor with their throat when both are listed', () => {
    const area = floorArea(job(), survey([withCloset]), floor(['bunk', 'bunk closet']))
    expect(squareInches(area.gross)).toBe(120 * 100 + 48 * 4 + 72 * 24)
    // Three sides, and what the opening leaves of the fourth.
    expect(edge(area, 'bunk closet').length).toBe(5)
    expect(
      edge(area, 'bunk closet').every(
        ({ kind, room: of }) => kind === 'base kept' && of === 'bunk closet',
      ),
    ).toBe(true)
    expect(area.rooms.map(({ name }) => name)).toEqual(['bunk', 'bunk closet'])
    expect(area.complete).toBe(true)
  })

  test('left out end the floor halfway in', () => {
    const area = floorArea(job(), survey([withCloset]), floor(['bunk']))
    expect(squareInches(area.gross)).toBe(120 * 100 + 48 * 2)
    expect(area.transitions.map(({ label }) => label)).toEqual(['bunk to bunk closet'])
  })
})

describe('sides without a wall', () => {
  const kitchen = room('kitchen', [0, 0, 120, 100], {
    walls: { east: { openTo: { text: 'dining', key: 'dining', span: den.room.span } } },
  })
  const dining = room('dining', [120, -1, 100, 102], {
    walls: { west: { openTo: { text: 'kitchen', key: 'kitchen', span: den.room.span } } },
  })
  const side = doorway(
    'kitchen',
    'dining',
    [
      [120, 100],
      [120, 0],
    ],
    [
      [120, 100],
      [120, 0],
    ],
    {
      kind: 'open side',
      jambs: false,
    },
  )

  test('open two rooms into one', () => {
    const area = floorArea(job(), survey([kitchen, dining], [side]), floor(['kitchen', 'dining']))
    expect(area.rings.length).toBe(1)
    expect(squareInches(area.gross)).toBe(120 * 100 + 100 * 102)
    expect(area.transitions).toEqual([])
    expect(codes(area)).toEqual([])
  })

  test('end the floor where the other one begins', () => {
    const area = floorArea(
      job(),
      survey([kitchen, dining], [side]),
      floor(['kitchen'], { edges: [edgeBetween('kitchen', 'dining', { trim: 't moulding' })] }),
    )
    expect(squareInches(netInFrame(area, EAST_WEST))).toBe((120 - 0.25 - 0.375) * 99.5)
    expect(area.transitions).toMatchObject([{ label: 'kitchen to dining', trim: 't moulding' }])
  })

  test('may be broken', () => {
    const area = floorArea(
      job(),
      survey([kitchen, dining], [side]),
      floor(['kitchen', 'dining'], { breaks: [breakLine('kitchen', 'dining')] }),
    )
    expect(netInFrame(area, EAST_WEST).length).toBe(2)
    expect(area.transitions).toMatchObject([{ label: 'kitchen to dining', breaks: true }])
  })

  test('at a stair end at its nosing', () => {
    const landing = room('landing', [0, 0, 48, 40], { walls: { south: { stair: 'down' } } })
    const bare = floorArea(job(), survey([landing]), floor(['landing']))
    expect(bare.messages[0]!.text).toContain('edge landing to stair, with stair nosing')
    const line = edgeBetween('landing', 'stair', { trim: 'stair nosing' })
    const area = floorArea(job(), survey([landing]), floor(['landing'], { edges: [line] }))
    expect(area.transitions).toMatchObject([{ label: 'landing to stair', kind: 'nosing' }])
    expect(squareInches(netInFrame(area, EAST_WEST))).toBe(47.5 * 39.75)
  })
})

describe('a floor that is not ready', () => {
  test('names the room that has no shape', () => {
    const bath = room('bath', [0, 0, 10, 10], {
      surveyed: { status: 'not measured', outline: [], corners: [], edges: [] },
    })
    const area = floorArea(job(), survey([hall, bath]), floor(['hall', 'bath']))
    expect(area.complete).toBe(false)
    expect(codes(area)).toEqual(['room-without-shape'])
    expect(area.messages[0]!).toMatchObject({ weight: 'incomplete' })
  })

  test('with a room that nobody knows is not complete', () => {
    expect(floorArea(job(), survey([hall]), floor(['hall', 'attic'])).complete).toBe(false)
  })

  test('without any room says nothing more: its list was asked for where it is read', () => {
    expect(codes(floorArea(job(), survey([]), floor([])))).toEqual([])
  })

  test('notes a room that no opening joins', () => {
    const area = floorArea(job(), survey([hall, den]), floor(['hall', 'den']))
    expect(codes(area)).toEqual(['rooms-apart'])
  })
})
