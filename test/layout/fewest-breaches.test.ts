import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { plan } from '../../server/src/layout/plan.ts'
import { fewestBreaches } from './fewest-breaches.ts'
import { type Box, floorOf, inches, plankRules, withThings } from './made-floors.ts'
import { planBreaches, planFaults } from './plan-faults.ts'

const whole = (min: number, max: number) => fc.integer({ min, max })

/** Short planks and wide staggers, so that breaches are hard to avoid; whole inches throughout. */
const anyRules = fc
  .record({
    length: whole(10, 20),
    stagger: whole(3, 7),
    shortest: whole(2, 6),
  })
  .map(({ length, stagger, shortest }) =>
    plankRules({
      width: inches(4),
      lengths: [{ length: inches(length), perBox: 10 }],
      stagger: inches(stagger),
      shortestEnd: inches(shortest),
    }),
  )

const oneRoom: fc.Arbitrary<readonly Box[]> = fc
  .record({ wide: whole(8, 70), deep: whole(8, 30) })
  .map(({ wide, deep }) => [[0, 0, wide, deep]])

/** Two rooms that meet above and below a hearth: the courses between are parted, and close a loop. */
const aboutAHearth: fc.Arbitrary<readonly Box[]> = fc
  .record({ left: whole(8, 26), hearth: whole(4, 16), right: whole(8, 26), deep: whole(1, 3) })
  .map(({ left, hearth, right, deep }) => {
    const wide = left + hearth + right
    return [
      [0, 0, wide, 8],
      [0, 8, left, 8 + 4 * deep],
      [left + hearth, 8, wide, 8 + 4 * deep],
      [0, 8 + 4 * deep, wide, 16 + 4 * deep],
    ]
  })

describe('no plan has fewer breaches, tried one by one', () => {
  test('in one room', () => {
    fc.assert(
      fc.property(oneRoom, anyRules, whole(0, 3), (boxes, rules, seam) => {
        const problem = floorOf(boxes, rules, seam)
        const planned = plan(problem)
        expect(planFaults(problem, planned)).toEqual([])
        expect(planBreaches(problem, planned)).toBeLessThanOrEqual(
          fewestBreaches(problem, inches(1)),
        )
      }),
      { numRuns: 150, seed: 7 },
    )
  })

  test('round a hearth, with a doorway', () => {
    fc.assert(
      fc.property(aboutAHearth, anyRules, whole(0, 3), whole(2, 30), (boxes, rules, seam, from) => {
        const door = { course: 2, kind: 'doorways' as const, from, to: from + 7 }
        const problem = withThings(floorOf(boxes, rules, seam), [door])
        const planned = plan(problem)
        expect(planFaults(problem, planned)).toEqual([])
        expect(planBreaches(problem, planned)).toBeLessThanOrEqual(
          fewestBreaches(problem, inches(1)),
        )
      }),
      { numRuns: 60, seed: 8 },
    )
  })
})
