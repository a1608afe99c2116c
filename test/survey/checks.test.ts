import { describe, expect, test } from 'vitest'
import {
  basePlaneOf,
  grownCorners,
  leadAt,
  otherPlane,
} from '../../server/src/survey/base-plane.ts'
import {
  acrossFrom,
  checkValue,
  cornersIn,
  type ShapeCheck,
} from '../../server/src/survey/check-value.ts'
import { allowedMiss, closingOf, isSurelyMisread } from '../../server/src/survey/closing.ts'
import { stretchOn, wholeWall } from '../../server/src/survey/stretch.ts'
import { wallFrame } from '../../server/src/survey/wall-frame.ts'
import type { ReadWall } from '../../server/src/survey/walls.ts'
import { nm, reading } from './build.ts'

/** A room of 40 by 30 read to the right, its last corner 3 farther out. */
const CORNERS = [
  { x: 0, y: 0 },
  { x: 40, y: 0 },
  { x: 40, y: -30 },
  { x: 0, y: -33 },
]
const check = (of: object) => of as ShapeCheck

describe('what a shape makes a reading', () => {
  test('a diagonal, a width from either mark, a tie and a tested corner', () => {
    expect(checkValue(check({ kind: 'diagonal', from: 0, to: 2 }), CORNERS)).toBe(50)
    const width = (at: object, from = 0, to = 2) =>
      checkValue(check({ kind: 'across', from, to, at }), CORNERS)
    // The far wall falls from 30 below on the right to 33 on the left.
    expect(width({ kind: 'left', distance: 0 })).toBeCloseTo(33, 9)
    expect(width({ kind: 'right', distance: 0 })).toBeCloseTo(30, 9)
    expect(width({ kind: 'middle' })).toBeCloseTo(31.5, 9)
    expect(width({ kind: 'left', distance: 10 })).toBeCloseTo(32.25, 9)
    expect(width({ kind: 'right', distance: 10 })).toBeCloseTo(30.75, 9)
    const tie = (corner: number, first: number, second: number) =>
      check({ kind: 'corner tie', corner, first, second, alongFirst: 3, alongSecond: 4 })
    // 3 along one wall and 4 along the other of a right angle: 5.
    expect(checkValue(tie(1, 0, 1), CORNERS)).toBeCloseTo(5, 9)
    expect(checkValue(tie(0, 3, 0), CORNERS)).toBeCloseTo(5, 9)
    // The corner at the far right: 40 back to the left the wall has fallen by 3.
    expect(checkValue(check({ kind: 'square', corner: 1 }), CORNERS)).toBe(0)
    expect(checkValue(check({ kind: 'square', corner: 2 }), CORNERS)).toBeCloseTo(
      (30 * 3) / Math.hypot(40, 3),
      9,
    )
  })

  test('a width ends on its far wall, counted from that one’s left; one along it never does', () => {
    const found = acrossFrom(
      check({ kind: 'across', from: 0, to: 2, at: { kind: 'left', distance: 10 } }) as never,
      CORNERS,
    )
    expect(found?.endsAt).toBeCloseTo((30 * Math.hypot(40, 3)) / 40, 9)
    expect(
      checkValue(check({ kind: 'across', from: 0, to: 1, at: { kind: 'middle' } }), CORNERS),
    ).toBeNull()
  })

  test('the corners that each depends on', () => {
    const of = (one: object) => cornersIn(check(one), 4)
    expect(of({ kind: 'diagonal', from: 0, to: 2 })).toEqual([0, 2])
    expect(of({ kind: 'across', from: 1, to: 3 })).toEqual([1, 2, 3, 0])
    expect(of({ kind: 'corner tie', first: 3, second: 0 })).toEqual([3, 0, 0, 1])
    expect(of({ kind: 'square', corner: 0 })).toEqual([3, 0, 1])
  })

  test('a corner of a wall without length is square', () => {
    const flat = [CORNERS[0]!, CORNERS[0]!, CORNERS[2]!]
    expect(checkValue(check({ kind: 'square', corner: 1 }), flat)).toBe(0)
    expect(checkValue(check({ kind: 'square', corner: 0 }), flat)).toBe(0)
  })
})

describe('how a traverse closes', () => {
  const wall = (length: number, x: number, y: number, sigma = 3) =>
    ({ nm: length, sigma, direction: { x, y } }) as unknown as ReadWall
  const walls = [wall(100, 1, 0), wall(80, 0, -1), wall(106, -1, 0, 4), wall(72, 0, 1, 4)]

  test('6 short to the west and 8 to the north: 10 in 358, 1 : 36; allowed 10 each way', () => {
    expect(closingOf(walls, 'transit')).toEqual({
      east: -6,
      north: -8,
      length: 10,
      perimeter: 358,
      ratio: 36,
      allowedEast: 10,
      allowedNorth: 10,
      within: true,
      rule: 'transit',
    })
    expect(closingOf([...walls.slice(0, 3), wall(69, 0, 1, 4)], 'compass').within).toBe(false)
    expect(closingOf([wall(111, 1, 0), ...walls.slice(1)], 'compass').within).toBe(true)
    expect(closingOf([wall(117, 1, 0), ...walls.slice(1)], 'compass').within).toBe(false)
  })

  test('a wall at an angle counts with the part of its worth along each way', () => {
    expect(allowedMiss([wall(10, 0.6, 0.8, 5)])).toEqual({ east: 6, north: 8 })
    expect(allowedMiss([wall(10, 0.6, 0.8, 5), wall(10, -1, 0, 4)]).east).toBeCloseTo(10, 9)
  })

  test('one that closes exactly has no ratio', () => {
    const square = [wall(9, 1, 0), wall(9, 0, -1), wall(9, -1, 0), wall(9, 0, 1)]
    expect(closingOf(square, 'transit')).toMatchObject({
      east: 0,
      north: 0,
      length: 0,
      ratio: null,
    })
  })

  test('past four times what is allowed, either way, a reading is wrong', () => {
    const closing = (east: number, north: number) =>
      isSurelyMisread({ ...closingOf(walls, 'transit'), east, north })
    expect([
      closing(40, 40),
      closing(-41, 0),
      closing(41, 0),
      closing(0, -41),
      closing(0, 41),
    ]).toEqual([false, true, true, true, true])
  })
})

describe('what stands on a wall', () => {
  const frame = wallFrame(
    [
      { x: 0, y: 0 },
      { x: nm(`12' 0"`), y: 0 },
    ],
    0,
  )
  const wall = { reading: reading(`12' 0"`, '3/16"') } as never
  const on = (said: object) => stretchOn({ from: 'left', far: null, ...said } as never, wall, frame)
  const read = (text: string) => reading(text, '1/4"')

  test('from either end, its width read or its far jamb', () => {
    const width = read(`30"`)
    expect(on({ distance: read(`2' 0"`), width })).toMatchObject({
      left: nm(`24"`),
      right: nm(`54"`),
      from: 'left',
    })
    expect(on({ distance: read(`2' 0"`), width, from: 'right' })).toMatchObject({
      left: nm(`90"`),
      right: nm(`120"`),
      from: 'right',
    })
    const far = read(`54 1/2"`)
    expect(on({ distance: read(`2' 0"`), width, far })).toMatchObject({
      left: nm(`24"`),
      right: nm(`54 1/2"`),
    })
  })

  test('its middle is as sure as the near jamb and half the width, or as both jambs', () => {
    // √(1/16 + 1/64) in; and half of √(1/16 + 1/16).
    const known = on({ distance: read(`2' 0"`), width: read(`30"`) }) as { sigma: number }
    expect(known.sigma).toBeCloseTo(nm('1"') * Math.sqrt(1 / 16 + 1 / 64), 3)
    const both = on({ distance: read(`2' 0"`), width: reading('?'), far: read(`54"`) }) as {
      sigma: number
    }
    expect(both.sigma).toBeCloseTo((nm('1"') * Math.sqrt(1 / 8)) / 2, 3)
  })

  test('one that ends past the wall by less than the readings allow is moved onto it', () => {
    // Allowed: 2·√(9/256 + 1/16 + 1/16) in = 0.8.
    expect(on({ distance: read(`9' 6 1/2"`), width: read(`30"`) })).toMatchObject({
      left: nm(`9' 6"`),
      right: nm(`12' 0"`),
    })
    expect(on({ distance: read(`9' 7"`), width: read(`30"`) })).toBe('past')
    expect(on({ distance: read(`0"`), width: read(`12' 0 1/2"`) })).toMatchObject({
      left: 0,
      right: nm(`12' 0"`),
    })
    expect(on({ distance: read(`9' 6 1/2"`), width: read(`30"`), from: 'right' })).toMatchObject({
      left: 0,
      right: nm(`30"`),
    })
    expect(on({ distance: read(`9' 7"`), width: read(`30"`), from: 'right' })).toBe('past')
    expect(on({ distance: read(`5' 0"`), width: reading('?'), far: read(`5' 0"`) })).toBe('past')
  })

  test('what was not read is not known', () => {
    expect(on({ distance: reading('?'), width: read(`30"`) })).toBeNull()
    expect(on({ distance: read(`2' 0"`), width: reading('?') })).toBeNull()
    expect(wholeWall(wall, frame)).toEqual({
      left: 0,
      right: nm(`12' 0"`),
      sigma: nm(`3/16"`) / 2,
      from: 'left',
    })
  })
})

describe('what the tape touched and what the floor runs to', () => {
  const room = (planes: readonly string[], base: object | null) =>
    ({ base, walls: planes.map((plane) => ({ reading: { plane } })) }) as never
  const kept = { fate: 'kept', thickness: 12 }
  const off = { fate: 'off', thickness: 12 }

  test.each([
    [['wall', 'wall'], null, 0, 0],
    [['wall', 'wall'], kept, -12, 12],
    [['base', 'base'], kept, 0, 12],
    [['base', 'base'], off, 12, 0],
    [['wall', 'wall'], off, 0, 0],
    [['base', 'wall', 'base'], off, 12, 0],
    [['wall', 'base', 'base', 'wall'], off, 0, 0],
    [['jamb', 'jamb'], kept, 0, 0],
  ])('%j with %j: %i farther, %i inside the wall', (planes, base, grown, inset) => {
    expect(basePlaneOf(room(planes, base))).toEqual({ grown, inset })
  })

  test('one reading to another plane is brought to that of the others', () => {
    const farther = otherPlane(room(['base', 'base', 'wall'], off))
    expect(farther({ plane: 'wall' } as never)).toBe(12)
    expect(farther({ plane: 'base' } as never)).toBe(0)
    expect(farther({ plane: 'jamb' } as never)).toBe(0)
    expect(otherPlane(room(['wall', 'wall'], off))({ plane: 'base' } as never)).toBe(-12)
    expect(otherPlane(room(['jamb', 'jamb'], off))({ plane: 'base' } as never)).toBe(0)
  })

  test('a corner moves along its walls by the tangent of half its turn', () => {
    const east = { x: 1, y: 0 }
    expect(leadAt(east, { x: 0, y: -1 })).toBe(1)
    expect(leadAt(east, { x: 0, y: 1 })).toBe(-1)
    expect(leadAt(east, east)).toBe(0)
    expect(leadAt(east, { x: -1, y: 0 })).toBe(0)
    expect(leadAt(east, { x: 0.6, y: -0.8 })).toBeCloseTo(0.5, 12)
  })

  test('a room grown by 5 on all sides', () => {
    const square = [
      { x: 0, y: 0 },
      { x: 40, y: 0 },
      { x: 40, y: -30 },
      { x: 0, y: -30 },
    ]
    expect(grownCorners(square, 5)).toEqual([
      { x: -5, y: 5 },
      { x: 45, y: 5 },
      { x: 45, y: -35 },
      { x: -5, y: -35 },
    ])
    expect(grownCorners(square, 0)).toBe(square)
  })
})
