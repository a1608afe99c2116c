import { describe, expect, test } from 'vitest'
import {
  balancedLine,
  betterLines,
  type Line,
  type LineRules,
  movedLine,
} from '../../server/src/layout/line.ts'
import type { WallAlong } from '../../server/src/layout/rips.ts'
import type { Ratio } from '../../server/src/units/ratio.ts'
import { inches } from './made-floors.ts'

/** Planks 8 by 40 in, no rip under 2 in: all widths below come out in sixteenths. */
const rules: LineRules = {
  width: inches(8),
  narrowestRip: inches(2),
  kerfAlong: 0,
  length: inches(40),
}

/** A wall 80 in long with the floor before it at v, or from one v to another; in inches. */
function wall(
  name: string,
  floor: WallAlong['floor'],
  v: number | readonly [number, number],
  more: { readonly from?: number; readonly to?: number } & Partial<WallAlong> = {},
): WallAlong {
  const [low, high] = typeof v === 'number' ? [v, v] : v
  const { from = 0, to = 80 } = more
  return {
    label: name,
    room: 'hall',
    wall: name,
    level: true,
    ...more,
    floor,
    low: inches(low),
    high: inches(high),
    from: inches(from),
    to: inches(to),
  }
}

const inInches = ({ n, d }: Ratio) => Number(n) / Number(d) / inches(1)

/** The courses of the start room, in inches: the first, the last, and the last where it is narrowest. */
function widths({ balance }: Line) {
  if (balance === null) return null
  const { first, last, lastAtLeast } = balance
  return [first, last, lastAtLeast].map((each) => (each === null ? null : inInches(each)))
}

const start = wall('north', 'below', 100)
const opposite = wall('south', 'above', 0)

describe('the balanced line', () => {
  test('makes first and last course equal', () => {
    // 100 = 12 × 8 + 4: (8 + 4) ÷ 2 at either wall.
    const line = balancedLine([opposite, start], [start], rules)
    expect(line).toMatchObject({ seam: inches(94), start: inches(100), moved: 0, narrow: 0 })
    expect(widths(line)).toEqual([6, 6, 6])
  })

  test('counts from wall to wall, wherever the room lies', () => {
    // 103 = 12 × 8 + 7: (8 + 7) ÷ 2.
    const line = balancedLine([wall('south', 'above', -3), start], [start], rules)
    expect(widths(line)).toEqual([7.5, 7.5, 7.5])
  })

  test('is rounded to whole nanometres, half of one to the even number', () => {
    const farther = { ...opposite, low: -1, high: -1 }
    const line = balancedLine([farther, start], [start], rules)
    // Half of 12 in and a nanometre is 152400000.5 nm.
    expect(line.seam).toBe(inches(100) - 152400000)
  })

  test('begins at the farthest of a start wall in parts, and counts with the nearest', () => {
    const parts = [wall('north', 'below', [98, 99]), wall('north', 'below', [99, 100])]
    // 99 to 100 from the farthest, 98 − 1 at the least: 97 to 100, so the last course loses 3 in.
    const line = balancedLine([wall('south', 'above', [0, 1]), ...parts], parts, rules)
    expect(line).toMatchObject({ seam: inches(94), start: inches(100) })
    expect(widths(line)).toEqual([6, 6, 3])
    const turned = balancedLine(
      [wall('south', 'above', [0, 1]), ...parts],
      parts.toReversed(),
      rules,
    )
    expect(turned).toEqual({ ...line })
  })

  test('lies a first course off the start wall, which gives way to a last one too narrow', () => {
    // Clear 95 to 100: the last has 2 + 5 where it is widest, which leaves 12 − 7 for the first.
    const line = balancedLine([wall('south', 'above', [0, 5]), start], [start], rules)
    expect(line.seam).toBe(inches(95))
    expect(widths(line)).toEqual([5, 7, 2])
  })

  test('lies on a start wall at an angle', () => {
    const slanted = wall('north', 'below', [60, 100], { level: false })
    const line = balancedLine([opposite, slanted], [slanted], rules)
    expect(line).toMatchObject({ seam: inches(100), start: inches(100), balance: null })
  })

  test.each([
    ['of another room', wall('south', 'above', 50, { room: 'den', to: 90 })],
    ['that looks the other way', wall('pier', 'below', 50, { to: 90 })],
    ['that is the end of an opening', wall('door', 'above', 50, { wall: null, to: 90 })],
    ['at an angle', wall('bay', 'above', [50, 60], { level: false, to: 90 })],
    ['level with the start wall', wall('bay', 'above', 100, { to: 90 })],
    ['behind the start wall', wall('bay', 'above', 101, { to: 90 })],
  ] as const)('is never balanced with a wall %s', (_, other) => {
    expect(widths(balancedLine([other, start], [start], rules))).toBeNull()
    expect(widths(balancedLine([other, opposite, start], [start], rules))).toEqual([6, 6, 6])
  })

  test.each([
    ['shorter', wall('bay', 'above', 50, { to: 79 })],
    ['farther, but shorter', wall('bay', 'above', -5, { to: 79 })],
    ['as long, but nearer', wall('bay', 'above', 50)],
  ] as const)('is balanced with the wall opposite before one that is %s', (_, other) => {
    expect(widths(balancedLine([opposite, other, start], [start], rules))).toEqual([6, 6, 6])
    expect(widths(balancedLine([other, opposite, start], [start], rules))).toEqual([6, 6, 6])
  })

  test('is balanced with a wall that openings part as with a whole one', () => {
    const parts = [wall('south', 'above', 0, { to: 30 }), wall('south', 'above', 0, { from: 50 })]
    // Together 60 long; the bay is 50. 47 − 5 × 8 = 7 would be its rest.
    const bay = wall('bay', 'above', 53, { to: 50 })
    expect(widths(balancedLine([...parts, bay, start], [start], rules))).toEqual([6, 6, 6])
  })
})

describe('a moved line', () => {
  const line = balancedLine([opposite, start], [start], rules)

  test('is moved from where it is', () => {
    const twice = movedLine(movedLine(line, inches(1), [], rules), inches(2), [], rules)
    expect(twice).toMatchObject({ seam: inches(97), moved: inches(3), start: inches(100) })
  })

  test.each([
    // The wall's course from 94 up, and from the next seam at 86 down.
    ['just wide enough', wall('bay', 'below', 96), 0],
    ['too narrow, for two planks and a part', wall('bay', 'below', 95.5, { to: 80 }), 3],
    ['too narrow, for a part of a plank', wall('bay', 'below', 95.5, { from: 40, to: 79 }), 1],
    ['too narrow on the other side', wall('bay', 'above', 84.5, { to: 39 }), 1],
    ['too narrow at one end', wall('bay', 'below', [95, 97], { to: 39 }), 1],
    ['running out at a seam', wall('bay', 'below', [93, 97], { to: 39 }), 1],
    ['too narrow, but slanted', wall('bay', 'below', 95.5, { level: false }), 0],
    ['too narrow beside a column', wall('bay', 'below', 95.5, { level: false, wall: null }), 3],
  ] as const)('counts pieces along a wall whose course is %s', (_, bay, narrow) => {
    expect(movedLine(line, 0, [bay], rules).narrow).toBe(narrow)
  })

  test.each([
    // In planks: length × (what is taken − what is laid). A strip up to half the width leaves another.
    ['half a plank wide', wall('bay', 'below', 98), 0, 0],
    ['hardly wider', wall('bay', 'below', 98.5), 0, 2 * (1 - 4.5 / 8)],
    ['half a plank, with a cut to lose', wall('bay', 'below', 98), 1 / 8, 2 * (1 - 1 / 2)],
    ['as wide, for half a plank', wall('bay', 'below', 98.5, { from: 60 }), 0, (1 - 4.5 / 8) / 2],
    ['full', wall('bay', 'below', 102), 0, 0],
    ['2 to 4 wide', wall('bay', 'below', [96, 98]), 0, 2 * (1 / 2 - 3 / 8)],
    ['of nothing to a plank', wall('bay', 'below', [93, 97]), 0, 2 * (1 - 1 / 2)],
  ] as const)(
    'wastes what is left of planks along a wall whose course is %s',
    (_, bay, kerf, waste) => {
      expect(movedLine(line, 0, [bay], { ...rules, kerfAlong: inches(kerf) }).waste).toBe(waste)
    },
  )
})

describe('lines that may be better than the balanced one', () => {
  function better(walls: readonly WallAlong[], seam = 94, changes: Partial<LineRules> = {}) {
    const all = { ...rules, ...changes }
    const unmoved = { seam: inches(seam), start: inches(100), balance: null, moved: 0 }
    const balanced = movedLine({ ...unmoved, narrow: 0, waste: 0 }, 0, walls, all)
    return betterLines(balanced, walls, all).map(({ moved }) => moved / inches(1))
  }

  test('are none where nothing is too narrow and nothing is saved', () => {
    expect(better([wall('bay', 'below', 102)])).toEqual([])
  })

  test('one saves a plank where two rips fit into one, moved the least and down first', () => {
    // 6 and 6 in of 8 take two planks each over 80 in; 4 and 8 take one and two: a move by 2 either way.
    expect(better([opposite, start])).toEqual([-2])
    // Over 79 in it is not quite one plank that is saved.
    const shorter = { to: 79 }
    expect(
      better([wall('south', 'above', 0, shorter), wall('north', 'below', 100, shorter)]),
    ).toEqual([])
  })

  test('on a grid of half inches too, where none makes some wall just so', () => {
    // Rips of 5.75 at either wall; 1.75 off, one of them is 4, for which no wall is just so.
    expect(better([wall('south', 'above', 0.5), start], 94.25)).toEqual([-2])
  })

  const low = { to: 39 }

  test('one makes a course as wide as it must be, moved to where the way is shorter', () => {
    // A course of 1.3 in, below its wall and above it.
    expect(better([wall('bay', 'below', 95.3, low)])).toEqual([-0.7])
    expect(better([wall('bay', 'above', 84.7, low)])).toEqual([0.7])
    // A course of 0.3 in: to a full plank it is not as far as to 2 in.
    expect(better([wall('bay', 'below', 94.3, low)])).toEqual([0.3])
  })

  test('one half a plank off is moved up', () => {
    // A rip of 4 in with a cut to lose wastes half of each of two planks; 8 in waste nothing.
    expect(better([wall('bay', 'below', 98)], 94, { kerfAlong: inches(1 / 8) })).toEqual([4])
  })

  test('the nearest without a narrow course and a farther one that saves a plank are two', () => {
    expect(better([wall('bay', 'below', 95.3, low), opposite, start])).toEqual([-0.7, -2])
  })

  test('none saves a plank at the price of a narrow course', () => {
    // The two lines that would, 2 in off either way, leave 1 in at one of the bays.
    const bays = [93, 97].map((v) => wall(`bay at ${v}`, 'below', v, { to: 1 }))
    const long = [wall('south', 'above', 0, { to: 100 }), wall('north', 'below', 100, { to: 100 })]
    expect(better(long)).toEqual([-2])
    expect(better([...long, ...bays])).toEqual([])
  })

  test('beyond a hundred walls the grid has to do', () => {
    const bay = wall('bay', 'below', 95.3, low)
    const others = Array.from({ length: 100 }, () => wall('pier', 'below', 98, { to: 1 }))
    expect(better([bay, ...others])).toEqual([-0.7])
    expect(better([...others, bay])).toEqual([-1])
  })
})
