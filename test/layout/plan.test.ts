import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { plan, planOf } from '../../server/src/layout/plan.ts'
import type { PlankRules } from '../../server/src/layout/problem.ts'
import { begin } from '../../server/src/layout/search.ts'
import { type Box, floorOf, inches, plankRules, withThings } from './made-floors.ts'
import { planBreaches, planFaults } from './plan-faults.ts'

const eighths = (low: number, high: number) =>
  fc.integer({ min: low * 8, max: high * 8 }).map((value) => value / 8)

/** A room, a second one beside it through a doorway, and a bay below: loops, jogs and rips. */
const anyBoxes: fc.Arbitrary<readonly Box[]> = fc
  .record({
    wide: eighths(30, 170),
    deep: eighths(20, 90),
    beside: fc.option(eighths(25, 120), { nil: null }),
    door: eighths(26, 40),
    bay: fc.option(eighths(5, 60), { nil: null }),
  })
  .map(({ wide, deep, beside, door, bay }) => {
    const boxes: Box[] = [[0, 0, wide, deep]]
    if (bay !== null) boxes.push([wide / 4, -bay, wide / 2, 0])
    if (beside !== null) {
      boxes.push([wide + 4.5, -3, wide + 4.5 + beside, deep])
      boxes.push([wide, Math.max(0, deep - door - 4), wide + 4.5, deep - 2])
    }
    return boxes
  })

const anyRules: fc.Arbitrary<PlankRules> = fc
  .record({
    length: fc.constantFrom(36, 47.875, 48, 60),
    width: fc.constantFrom(5, 6.75, 9),
    stagger: fc.constantFrom(6, 8, 12),
    laid: fc.constantFrom('left to right', 'right to left', 'either way'),
    kerf: fc.constantFrom(0, 1 / 8),
    pieces: fc.constantFrom(0, 2, 8),
  })
  .map(({ length, width, stagger, laid, kerf, pieces }) =>
    plankRules({
      lengths: [{ length: inches(length), perBox: 9 }],
      width: inches(width),
      stagger: inches(stagger),
      laid,
      kerfAlong: inches(kerf),
      kerfAcross: inches(kerf),
      pile: { pieces, courses: 4 },
    }),
  )

describe('a plan keeps what always holds', () => {
  test('on made-up floors of one plank length', () => {
    fc.assert(
      fc.property(anyBoxes, anyRules, eighths(0, 9), (boxes, rules, seam) => {
        const problem = floorOf(boxes, rules, seam)
        const planned = plan(problem)
        expect(planFaults(problem, planned)).toEqual([])
        expect(planned.planks.length).toBeGreaterThanOrEqual(planned.bound.planks)
      }),
      { numRuns: 120, seed: 20270412 },
    )
  })

  test('with posts and doorways in the way', () => {
    fc.assert(
      fc.property(
        anyBoxes,
        anyRules,
        fc.array(fc.tuple(fc.integer({ min: 1, max: 9 }), eighths(4, 100), eighths(2, 9)), {
          maxLength: 4,
        }),
        (boxes, rules, marks) => {
          const things = marks.map(([course, from, wide], index) => ({
            course,
            kind: index % 2 === 0 ? ('posts' as const) : ('doorways' as const),
            from,
            to: from + wide,
          }))
          const problem = withThings(floorOf(boxes, rules), things)
          expect(planFaults(problem, plan(problem))).toEqual([])
        },
      ),
      { numRuns: 80, seed: 20270413 },
    )
  })

  test('the same problem gives the same plan, byte for byte', () => {
    const problem = floorOf([[0, 0, 150, 120]], plankRules(), 3)
    expect(JSON.stringify(plan(problem))).toBe(JSON.stringify(plan(problem)))
  })

  test('a post is opened by a joint where that costs no breach', () => {
    const rules = plankRules()
    const posts = [{ course: 2, kind: 'posts' as const, from: 61, to: 65 }]
    const problem = withThings(floorOf([[0, 0, 150, 21]], rules), posts)
    const planned = plan(problem)
    expect(planFaults(problem, planned)).toEqual([])
    expect(planBreaches(problem, planned)).toBe(0)
    const behind = planned.blanks.find(
      (blank) => blank.course === 2 && inches(61) < blank.from && blank.from < inches(65),
    )
    expect(behind?.along[0]).toBe(0)
  })
})

describe('what a good plan is', () => {
  test('no plank is wasted where courses are whole planks long', () => {
    const problem = floorOf([[0, 0, 144, 35]], plankRules())
    const planned = plan(problem)
    expect(planBreaches(problem, planned)).toBe(0)
    // Every other course begins with a part; its other part ends the same kind of course later.
    expect(planned.planks.length).toBeLessThanOrEqual(planned.bound.planks + 1)
  })

  test('one plank ripped once gives the first course and the last', () => {
    const problem = floorOf([[0, 0, 48, 3 + 14 + 3.5]], plankRules(), 3)
    const planned = plan(problem)
    expect(planFaults(problem, planned)).toEqual([])
    // 3 + 3 1/2 + a kerf of 1/8 fit into 7.
    expect(planned.planks).toHaveLength(3)
    const strips = planned.blanks.filter((blank) => blank.course === 1 || blank.course === 4)
    expect(new Set(strips.map((blank) => blank.plank)).size).toBe(1)
  })

  test('strips that are too wide together take two planks', () => {
    const problem = floorOf([[0, 0, 48, 3.5 + 14 + 3.5]], plankRules(), 3.5)
    expect(plan(problem).planks).toHaveLength(4)
  })

  test('a turned offcut serves where the lock is symmetric', () => {
    const narrow = [[0, 0, 70, 70]] as const
    const turned = plan(floorOf(narrow, plankRules({ laid: 'either way' })))
    const straight = plan(floorOf(narrow, plankRules()))
    expect(turned.planks.length).toBeLessThanOrEqual(straight.planks.length)
  })

  test('900 square feet stay within five planks in a hundred of the bound', () => {
    const planned = plan(floorOf([[0, 0, 420.25, 308.5]], plankRules(), 4))
    expect(planned.planks.length).toBeLessThanOrEqual(planned.bound.planks * 1.05)
  })
})

describe('what a search may spend', () => {
  const problem = floorOf([[0, 0, 150, 120]], plankRules(), 3)

  test('is so many patterns, at least one and no more than there are', () => {
    const triedOf = (patterns: number) => plan(problem, { patterns }).tried
    // Six ways from nothing, then the best again by six habits.
    expect([0, 1, 3, 12, 99].map(triedOf)).toEqual([1, 1, 3, 12, 12])
  })

  test('before its first step it has no plan, but knows what none goes below', () => {
    const { planks, boxes } = plan(problem).bound
    expect(planOf(begin(problem))).toEqual({
      blanks: [],
      planks: [],
      bound: { planks, boxes },
      pattern: '',
      tried: 0,
    })
  })
})
