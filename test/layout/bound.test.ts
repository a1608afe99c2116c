import { describe, expect, test } from 'vitest'
import { boundOf } from '../../server/src/layout/bound.ts'
import type { PlankRules } from '../../server/src/layout/problem.ts'
import { placesOf } from '../../server/src/layout/stretches.ts'
import { type Box, floorOf, inches, plankRules } from './made-floors.ts'

const exact = { kerfAlong: 0, kerfAcross: 0, toSpare: 0 }

/** Planks 7 × 48 in that no layout of these boxes of floor can do without. */
function planksFor(boxes: readonly Box[], changes: Partial<PlankRules> = exact): number {
  const rules = plankRules(changes)
  return boundOf(placesOf(floorOf(boxes, rules)), rules).planks
}

/** So many boxes, each in a course of its own, `low` to `high` within it. */
const courses = (count: number, length: number, low: number, high: number): readonly Box[] =>
  Array.from({ length: count }, (_, k) => [0, 7 * k + low, length, 7 * k + high] as const)

const SAW = { kerfAlong: inches(1 / 8), kerfAcross: inches(1 / 8), toSpare: inches(1 / 4) }

describe('planks that a floor takes at least (computed)', () => {
  test.each([
    ['whole planks', [[0, 0, 96, 14]], exact, 4],
    ['wherever the floor lies', [[480, 70, 528, 77]], exact, 1],
    ['a sixteenth more than whole planks', [[0, 0, 96.0625, 7]], exact, 3],
    ['two halves of one plank', courses(2, 24, 0, 7), exact, 1],
    [
      'two pieces and what the cut takes: 2 × 23 13/16 + 3/8 = 48',
      courses(2, 23.8125, 0, 7),
      SAW,
      1,
    ],
    ['two pieces that leave no room for the cut', courses(2, 23.828125, 0, 7), SAW, 2],
    ['three strips and two rips: 3 × 2 1/4 + 2/8 = 7', courses(3, 48, 0, 2.25), SAW, 1],
    ['three strips that leave no room for the rips', courses(3, 48, 0, 2.265625), SAW, 2],
    ['pieces too long for any other beside them', courses(200, 47.6875, 0, 7), SAW, 200],
    [
      'short strips too wide for a second one',
      courses(6, 24, 0, 3.546875),
      { ...exact, kerfAlong: inches(1 / 8) },
      3,
    ],
    [
      'short strips that just leave room for one',
      courses(6, 24, 0, 3.4375),
      { ...exact, kerfAlong: inches(1 / 8) },
      2,
    ],
    [
      'short strips that two go beside each other',
      courses(6, 24, 0, 3),
      { ...exact, kerfAlong: inches(1 / 8) },
      2,
    ],
    ['strips ripped at their low edge', courses(10, 48, 1, 7), exact, 10],
    ['strips ripped at their high edge', courses(10, 48, 0, 6), exact, 10],
    ['nothing', [], exact, 0],
  ] as const)('%s', (_, boxes, changes, planks) => {
    expect(planksFor(boxes, changes)).toBe(planks)
  })
})

test('boxes at least: as many as the planks fill', () => {
  const rules = plankRules(exact)
  const boxes = (length: number) =>
    boundOf(placesOf(floorOf([[0, 0, length, 7]], rules)), rules).boxes
  expect([480, 481, 960].map(boxes)).toEqual([1, 2, 2])
})

test('boxes of several lengths at least: as many as the area fills', () => {
  const lengths = [48, 24].map((length) => ({ length: inches(length), perBox: 5 }))
  const rules = plankRules({ ...exact, lengths })
  const bound = (length: number) => boundOf(placesOf(floorOf([[0, 0, length, 7]], rules)), rules)
  // A box is 5 × (48 + 24) = 360 in of plank; the floor takes no fewer planks than of the longest.
  expect(bound(720)).toEqual({ planks: 15, boxes: 2 })
  expect(bound(721)).toEqual({ planks: 16, boxes: 3 })
})
