import { expect, test } from 'vitest'
import { mirroredProblem, planSeenInMirror } from '../../server/src/layout/hand.ts'
import { plan } from '../../server/src/layout/plan.ts'
import { type Box, floorOf, inches, plankRules, withThings } from './made-floors.ts'
import { planBreaches, planFaults } from './plan-faults.ts'

/** A room with a bay below its left and a second room through a doorway on its right. */
const BOXES: readonly Box[] = [
  [0, 0, 131, 83],
  [20, -31, 66, 0],
  [131, 40, 135.5, 72],
  [135.5, -3, 226, 83],
]
const IN_MIRROR: readonly Box[] = BOXES.map(([u, v, toU, toV]) => [0 - toU, v, 0 - u, toV])

const rules = plankRules({ laid: 'right to left' })
const things = [
  { course: 9, kind: 'doorways', from: 125, to: 141.5 },
  { course: 7, kind: 'posts', from: 60, to: 66 },
] as const
const problem = withThings(floorOf(BOXES, rules), things)

test('the mirror image of a floor is the floor that was built the other way round', () => {
  const moved = things.map((thing) => ({ ...thing, from: 0 - thing.to, to: 0 - thing.from }))
  expect(mirroredProblem(problem)).toEqual(withThings(floorOf(IN_MIRROR, rules), moved))
})

test('seen in two mirrors a floor is itself', () => {
  expect(mirroredProblem(mirroredProblem(problem))).toEqual(problem)
})

test('a plan of the mirror image is a plan of the floor, as good as it was there', () => {
  const image = mirroredProblem(problem)
  const planned = plan(image)
  const seen = planSeenInMirror(planned, problem)
  expect(planFaults(problem, seen)).toEqual([])
  expect(planBreaches(problem, seen)).toBe(planBreaches(image, planned))
  expect(seen.planks).toEqual(planned.planks)
  const [first] = planned.blanks
  expect(seen.blanks[0]).toMatchObject({ from: 0 - first!.to, to: 0 - first!.from })
  expect(inches(48)).toBe(first!.along[1] + seen.blanks[0]!.along[0])
})

test('parts of one course that end at one place are listed the lowest first, then the shorter', () => {
  const part = (id: number, from: number, ...lows: readonly number[]) => ({
    id,
    course: 1,
    from,
    to: 100,
    area: 1,
    bands: lows.map((low) => ({ from, to: 100, low, high: low + 1 })),
    posts: [],
    doorways: [],
  })
  const stretches = [part(0, 0, 3), part(1, 20, 4, 2), part(2, 50, 4, 2), part(3, 50, 2, 4)]
  const seen = mirroredProblem({ ...problem, stretches, contacts: [] }).stretches
  const found = seen.map(({ id, from, to, bands }) => [
    id,
    from,
    to,
    ...bands.map(({ low }) => low),
  ])
  expect(found).toEqual([
    [0, -100, -50, 2, 4],
    [1, -100, -50, 4, 2],
    [2, -100, -20, 2, 4],
    [3, -100, 0, 3],
  ])
})
