import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { plan } from '../../server/src/layout/plan.ts'
import { boxesFor } from '../../server/src/layout/score.ts'
import { type Box, floorOf, inches, plankRules, withThings } from './made-floors.ts'
import { planBreaches, planFaults } from './plan-faults.ts'

const lengths = [
  { length: inches(24), perBox: 2 },
  { length: inches(36), perBox: 3 },
  { length: inches(48), perBox: 3 },
  { length: inches(72), perBox: 2 },
]
const rules = plankRules({ width: inches(5), lengths })

function usedOf(planned: ReturnType<typeof plan>) {
  return lengths.map(
    ({ length }) => planned.planks.filter((plank) => plank.length === length).length,
  )
}

describe('planks of several lengths', () => {
  test('keep what always holds, with posts and doorways in the way', () => {
    const size = (min: number, max: number) =>
      fc.integer({ min: min * 4, max: max * 4 }).map((value) => value / 4)
    fc.assert(
      fc.property(
        size(10, 220),
        size(10, 70),
        size(5, 90),
        fc.boolean(),
        (wide, deep, at, turn) => {
          const boxes: readonly Box[] = [
            [0, 0, wide, deep],
            [wide / 3, -20, wide / 2, 0],
          ]
          const hand = turn ? ('either way' as const) : ('right to left' as const)
          const things = [
            { course: 5, kind: 'posts' as const, from: at, to: at + 3 },
            { course: 6, kind: 'doorways' as const, from: at, to: at + 30 },
          ]
          const problem = withThings(floorOf(boxes, { ...rules, laid: hand }), things)
          const planned = plan(problem)
          expect(planFaults(problem, planned)).toEqual([])
          expect(planned.planks.length).toBeGreaterThanOrEqual(planned.bound.planks)
        },
      ),
      { numRuns: 60, seed: 20270414 },
    )
  })

  test('break no rule in a plain room', () => {
    const problem = floorOf([[0, 0, 200, 150]], rules)
    expect(planBreaches(problem, plan(problem))).toBe(0)
  })

  test('are used as the boxes bring them', () => {
    const problem = floorOf([[0, 0, 260, 240]], rules)
    const planned = plan(problem)
    const boxes = boxesFor(rules, usedOf(planned))
    // Whole boxes that cover every length, hardly more than the floor alone would fill.
    expect(boxes).toBeLessThanOrEqual(Math.ceil(planned.bound.boxes * 1.08) + 1)
  })
})

describe('boxes', () => {
  test('are the least that cover the use of every length (computed)', () => {
    const plain = { ...rules, spoilPlanks: 0 }
    expect(boxesFor(plain, [2, 3, 3, 0])).toBe(1)
    expect(boxesFor(plain, [2, 3, 3, 2])).toBe(2)
    expect(boxesFor(plain, [0, 0, 0, 5])).toBe(3)
  })

  test('hold spoil, at least 2 planks, and the spares promised (computed)', () => {
    const one = plankRules()
    expect(boxesFor(one, [18])).toBe(2)
    expect(boxesFor(one, [19])).toBe(3)
    expect(boxesFor({ ...one, spoilPlanks: 0 }, [19])).toBe(3)
    expect(boxesFor({ ...one, sparePlanks: 3 }, [18])).toBe(3)
    expect(boxesFor({ ...one, spareBoxes: 1 }, [18])).toBe(3)
    // 5 % of 100 planks is 5, of 101 it is 6.
    const five = { ...one, spoilPlanks: 0, spoilPercent: { n: '5', d: '1' } }
    expect(boxesFor(five, [105])).toBe(12)
    expect(boxesFor(five, [104])).toBe(11)
  })
})
