import { describe, expect, test } from 'vitest'
import {
  ALIGNED,
  clashes,
  inLine,
  offPhase,
  repeatsPhase,
  steps,
} from '../../server/src/layout/clash.ts'
import type { Jointing } from '../../server/src/layout/jointing.ts'
import { boxesFor, breachesOf, scoreOf } from '../../server/src/layout/score.ts'
import { placesOf } from '../../server/src/layout/stretches.ts'
import { floorOf, inches, plankRules } from './made-floors.ts'

/** Joints at so many inches. */
function jointing(joints: readonly number[], more: Partial<Jointing> = {}): Jointing {
  return {
    start: 0,
    end: 0,
    joints: joints.map(inches),
    parted: [],
    phase: -1,
    breaches: 0,
    slivers: 0,
    hardCuts: 0,
    ...more,
  }
}

const rules = plankRules()

describe('joints of neighbours against an 8 in stagger, where they touch from 0 to 100 in', () => {
  const touch = { other: 1, from: 0, to: inches(100) }

  test.each([
    ['6 in apart, and 8 in', [20, 60], [26, 68], 1],
    ['on both sides', [20], [13, 27], 2],
    ['far enough on both sides', [20], [12, 28], 0],
    ['one to two of several', [5, 50, 95], [20, 47, 53, 80], 2],
    ['no joints below', [], [26], 0],
    ['no joints above', [26], [], 0],
    ['the lower at the end of the seam', [0], [4], 0],
    ['the upper at the end of the seam', [4], [0], 0],
    ['the lower at its other end', [100], [96], 0],
    ['the upper at its other end', [96], [100], 0],
    ['both just inside', [1, 99], [5, 95], 2],
    ['one before the seam', [-3], [2], 0],
    ['one behind the seam', [101], [99], 0],
    ['in line', [20], [20], ALIGNED],
    ['in line at the end of the seam', [0], [0], ALIGNED],
    ['in line at its other end', [100], [100], ALIGNED],
  ] as const)('%s', (_, below, above, count) => {
    expect(clashes(jointing(below), jointing(above), touch, rules)).toBe(count)
  })

  test('joints that repeat with the plank are told by their phases', () => {
    const a = jointing([10, 58], { phase: inches(10) })
    const b = (first: number) => jointing([first, first + 48], { phase: inches(first) })
    expect(clashes(a, b(13), touch, rules)).toBe(2)
    expect(clashes(a, b(18), touch, rules)).toBe(0)
  })

  test('without a stagger only those in line count', () => {
    const none = { ...rules, stagger: 0 }
    expect(clashes(jointing([20, 50]), jointing([20, 51]), touch, none)).toBe(ALIGNED)
  })
})

describe('patterns of joints over three courses (48 in planks, in line under 1/2 in)', () => {
  test.each([
    ['an H', 10, -1, 10.25, true],
    ['no H at half an inch', 10, -1, 10.5, false],
    ['an H across the end of a plank', 47.75, -1, 0, true],
    ['an H at the plank itself', 0, -1, 47.75, true],
    ['a step', 10, 20, 30, true],
    ['no step', 10, 20, 31, false],
    ['no step at half an inch', 10, 20, 30.5, false],
    ['a step over the end of a plank', 10, 0, 38, true],
    ['no step through joints that do not repeat', 10, -1, 38, false],
    ['nothing where the first do not repeat', -1, 20, 40, false],
    ['nothing where the third do not repeat', 40, 20, -1, false],
  ] as const)('%s', (_, a, b, c, is) => {
    const of = (phase: number) => jointing([], { phase: phase < 0 ? -1 : inches(phase) })
    expect(repeatsPhase(of(a), of(b), of(c), inches(48))).toBe(is)
  })

  test('phases lie apart the shorter way round', () => {
    expect([10, -10, 40, 48, 0, 24].map((by) => offPhase(by, 48))).toEqual([10, 10, 8, 0, 0, 24])
  })

  test('joints in line are counted', () => {
    expect(inLine(jointing([10, 20, 30, 40]), jointing([10.25, 20.5, 29.75, 39.5]))).toBe(2)
    expect(inLine(jointing([10]), jointing([]))).toBe(0)
  })

  test.each([
    ['to the right', [10], [20], [30], 1],
    ['to the left', [40], [30], [20], 1],
    ['not where they are in line', [10], [20], [10, 30], 0],
    ['not further on', [10], [20], [31], 0],
    ['by half a plank', [10], [34], [58], 1],
    ['by half a plank to the left', [58], [34], [10], 1],
    ['not by more', [10], [35], [60], 0],
    ['not by more to the left', [60], [35], [10], 0],
    ['through the second joint that is near', [40], [30, 50], [60], 1],
    ['each by itself', [10, 70, 130], [20, 80, 140], [30, 90, 160], 2],
    ['not without joints between', [10], [], [10.75], 0],
  ] as const)('joints that go on in a step: %s', (_, a, b, c, count) => {
    expect(steps(jointing(a), jointing(b), jointing(c), inches(48))).toBe(count)
  })
})

describe('the score of a floor of three courses', () => {
  const places = placesOf(floorOf([[0, 0, 100, 21]], rules))
  // 0 and 1: 4 in apart; 1 and 2: 3 3/4 in. 0 and 2: in line at 20, and in a step by 60, 70, 80.
  const jointings = [
    jointing([20, 60], { breaches: 1, slivers: 1, hardCuts: 2 }),
    jointing([24, 70], { breaches: 2, slivers: 2, hardCuts: 4 }),
    jointing([20.25, 80], { breaches: 4, slivers: 3, hardCuts: 8 }),
  ]

  test('adds up what is told of its stretches and of what lies side by side', () => {
    expect(breachesOf(places, jointings, rules)).toBe(9)
    expect(scoreOf(places, jointings, rules, [9])).toEqual({
      breaches: 9,
      boxes: 2,
      slivers: 6,
      repeats: 2,
      hardCuts: 14,
      planks: 9,
    })
  })

  test('takes steps up to half of the longest plank', () => {
    const lengths = [24, 48].map((length) => ({ length: inches(length), perBox: 5 }))
    const { repeats, planks } = scoreOf(places, jointings, { ...rules, lengths }, [4, 5])
    expect([repeats, planks]).toEqual([2, 9])
    const wide = [jointing([20]), jointing([42]), jointing([64])]
    expect(scoreOf(places, wide, { ...rules, lengths }, [0, 0]).repeats).toBe(1)
  })
})

describe('boxes of 10 to buy', () => {
  test.each([
    ['two planks for spoil at least', 98, { spoilPlanks: 0 }, 10],
    ['two planks for spoil at least, one over', 99, { spoilPlanks: 0 }, 11],
    ['six planks for spoil', 94, { spoilPlanks: 6 }, 10],
    ['six planks for spoil, one over', 95, { spoilPlanks: 6 }, 11],
    [
      'a share for spoil is rounded up',
      90,
      { spoilPlanks: 0, spoilPercent: { n: '10', d: '1' } },
      10,
    ],
    [
      'a share for spoil is rounded up, one over',
      91,
      { spoilPlanks: 0, spoilPercent: { n: '10', d: '1' } },
      11,
    ],
    ['five in a hundred', 200, { spoilPlanks: 0, spoilPercent: { n: '5', d: '1' } }, 21],
    ['half of a percent counts', 186, { spoilPlanks: 0, spoilPercent: { n: '15', d: '2' } }, 20],
    ['planks to spare', 95, { spoilPlanks: 2, sparePlanks: 3 }, 10],
    ['planks to spare, one over', 96, { spoilPlanks: 2, sparePlanks: 3 }, 11],
    ['boxes to spare', 98, { spoilPlanks: 2, spareBoxes: 3 }, 13],
  ] as const)('%s', (_, planks, changes, boxes) => {
    expect(boxesFor(plankRules(changes), [planks])).toBe(boxes)
  })
})
