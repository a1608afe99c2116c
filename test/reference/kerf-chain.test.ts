import { expect, test } from 'vitest'
import { jointingsFrom } from '../../server/src/layout/jointing.ts'
import { plan } from '../../server/src/layout/plan.ts'
import { placesOf } from '../../server/src/layout/stretches.ts'
import { floorOf, inches, plankRules } from '../layout/made-floors.ts'
import { planBreaches, planFaults } from '../layout/plan-faults.ts'

// The trade page's chain of a 130 in course, 48 in plank, kerf 1/8, 8 in shortest end: computed.
const rules = plankRules({ toSpare: 0, shortestEnd: inches(8), stagger: inches(6) })
const problem = floorOf([[0, 0, 130, 21]], rules)

test.each([
  [48, 34, 0],
  [13.875, 20.125, 0],
  [27.75, 6.25, 1],
])('begun with %f the course ends with %f', (start, end, breaches) => {
  const [jointing] = jointingsFrom(placesOf(problem)[0]!, inches(start), rules)
  expect(jointing).toMatchObject({ end: inches(end), breaches })
})

test('the third course starts shortened, and no end is too short', () => {
  const planned = plan(problem)
  expect(planFaults(problem, planned)).toEqual([])
  expect(planBreaches(problem, planned)).toBe(0)
})
