import { describe, expect, test } from 'vitest'
import type { Floor } from '../../server/src/job/job.ts'
import { floorArea } from '../../server/src/layout/area.ts'
import { reversed } from '../../server/src/layout/direction.ts'
import { EAST_WEST, type Frame } from '../../server/src/layout/frame.ts'
import { startOf } from '../../server/src/layout/start-wall.ts'
import type { SurveyedRoom } from '../../server/src/survey/survey.ts'
import { floor, inch, job, name, ring, room, shaped, survey } from './house.ts'

const span = { file: 'test.floor', start: 0, end: 1 }

interface Given {
  readonly laid?: 'left to right' | 'right to left'
  readonly run?: Frame
  readonly start?: Floor['start']
  /** Rooms of the house that the floor does not have. */
  readonly others?: readonly SurveyedRoom[]
}

function started(den: SurveyedRoom, given: Given = {}) {
  const { laid = 'left to right', run = EAST_WEST, start = null, others = [] } = given
  const rooms = survey([den, ...others])
  const only = floor(['den'], { start })
  return startOf({ floor: only, survey: rooms, area: floorArea(job(), rooms, only), laid }, run)
}

const along = (text: string, wall: number): Floor['start'] => ({ room: name(text), wall, span })

type Corners = readonly (readonly [number, number])[]
const den = (...corners: Corners) => shaped('den', corners)

/** An island in the den, its middle at the plan's origin. */
function withIslands(
  corners: Corners,
  ...islands: readonly { label: string; wide: number; at: number }[]
) {
  const obstacles = islands.map(({ label, wide, at }) => ({
    kind: 'island' as const,
    label,
    gap: null,
    span,
    ring: ring([-wide / 2, at], [wide / 2, at], [wide / 2, at + 6], [-wide / 2, at + 6]),
  }))
  return shaped('den', corners, { surveyed: { obstacles } })
}

/** No side of it rises less than twice its run. */
const UPRIGHT: Corners = [
  [-50, 0],
  [0, 100],
  [50, 0],
  [0, -100],
]

describe('where no start is said', () => {
  test('it is along the longest wall, from the left end of a lock laid so', () => {
    const { said, wall, fromRight } = started(room('den', [0, 0, 144, 108]))
    expect(said).toBe('not said')
    // North and south wall look alike: the one of lower v is first.
    expect(wall).toMatchObject([{ label: 'south of den', floor: 'below', from: -inch(144), to: 0 }])
    expect(fromRight).toBe(false)
  })

  test('nothing is found in a room whose walls all run across', () => {
    expect(started(den(...UPRIGHT))).toEqual({
      frame: EAST_WEST,
      walls: [],
      wall: [],
      fromRight: false,
      said: 'not said',
    })
  })

  test('the longest island is taken if no wall runs along the planks', () => {
    const stove = { label: 'stove', wide: 10, at: 20 }
    const found = started(withIslands(UPRIGHT, { label: 'bar', wide: 20, at: -20 }, stove))
    expect(found.wall).toMatchObject([
      { label: 'bar in den', wall: null, floor: 'below', from: -inch(10), to: inch(10) },
    ])
  })

  test('a wall is taken before a longer island', () => {
    const waisted: Corners = [
      [-20, 100],
      [20, 100],
      [110, 0],
      [20, -100],
      [-20, -100],
      [-110, 0],
    ]
    const found = started(withIslands(waisted, { label: 'bar', wide: 100, at: -3 }))
    expect(found.wall).toMatchObject([{ label: 'wall 3 of den', from: -inch(20), to: inch(20) }])
  })

  test('a wall at an angle is taken before an island that is level with the planks', () => {
    const wide: Corners = [
      [-100, 0],
      [0, 50],
      [100, 0],
      [0, -50],
    ]
    const found = started(withIslands(wide, { label: 'bar', wide: 20, at: -3 }))
    expect(found.wall).toMatchObject([{ level: false, room: 'den' }])
    expect(found.wall[0]!.label).toMatch(/^wall \d of den$/)
  })
})

test('a wall level with the planks is taken before a longer one at an angle', () => {
  const found = started(den([-20, 50], [20, 50], [120, 0], [20, -50], [-20, -50], [-120, 0]))
  expect(found.wall).toMatchObject([{ level: true, from: -inch(20), to: inch(20) }])
})

/** North walls 0 and 2, each 50 long, in two steps; no south wall is as long. */
const STEPS: Corners = [
  [0, 100],
  [50, 100],
  [50, 80],
  [100, 80],
  [100, 0],
  [60, 0],
  [60, 10],
  [30, 10],
  [30, 0],
  [0, 0],
]

/** Two arms, each with a north wall of 60 that begins at the same place: 2 the upper one, 8 the lower. */
const ARMS: Corners = [
  [0, 90],
  [40, 90],
  [40, 100],
  [100, 100],
  [100, 65],
  [70, 65],
  [70, 60],
  [40, 60],
  [40, 40],
  [100, 40],
  [100, 0],
  [70, 0],
  [70, -5],
  [40, -5],
  [40, 0],
  [0, 0],
]

const HALF_A_TURN = (corners: Corners): Corners => corners.map(([x, y]) => [0 - x, 0 - y])

describe('of equal walls on one side', () => {
  // Seen from a wall's end, the floor's farthest edge lies the further to the left the later the wall begins.
  test.each([
    ['the one that begins last', 'left to right', STEPS, 'wall 2 of den'],
    ['the one that ends first', 'right to left', STEPS, 'wall 0 of den'],
    ['the nearer one, where both begin alike', 'left to right', ARMS, 'wall 8 of den'],
  ] as const)('%s, laid %s, however the house is turned', (_, laid, corners, label) => {
    for (const each of [corners, HALF_A_TURN(corners)]) {
      expect(started(den(...each), { laid }).wall.map((wall) => wall.label)).toEqual([label])
    }
  })
})

describe('a start that is said', () => {
  test('is taken though a longer wall is there, and faced', () => {
    const found = started(den(...STEPS), { start: along('den', 4) })
    expect(found.said).toBe('said')
    expect(found.wall).toMatchObject([{ label: 'wall 4 of den', from: -inch(100), to: -inch(60) }])
    expect(found.frame).toEqual(reversed(EAST_WEST))
  })

  test('takes only what of a wall is faced, where that turns back on itself', () => {
    const arms = shaped('den', ARMS)
    const one = arms.edges.map(({ wall }) => ({
      wall: 2 <= wall && wall <= 6 ? 2 : wall,
      recess: null,
    }))
    const found = started({ ...arms, edges: one }, { start: along('den', 2) })
    expect(found.wall).toMatchObject([{ from: inch(40), to: inch(100), high: inch(99.75) }])
  })

  test('may lie at an angle to the planks, either way round', () => {
    // 80 by 50 in, turned; its long walls run 4 east and 3 north, the planks 3 east and 4 north.
    const turned = den([0, 0], [80, 60], [110, 20], [30, -40])
    const run = { east: 3, north: 4 }
    const one = started(turned, { run, start: along('den', 0) })
    expect([one.said, one.frame, one.wall[0]!.label]).toEqual(['said', run, 'wall 0 of den'])
    const other = started(turned, { run, start: along('den', 2) })
    const back = { east: -3, north: -4 }
    expect([other.said, other.frame, other.wall[0]!.label]).toEqual(['said', back, 'wall 2 of den'])
    const level = started(turned, { run: { east: 30, north: 0 }, start: along('den', 0) })
    expect([level.said, level.wall[0]!.label]).toEqual(['said', 'wall 0 of den'])
  })

  const attic = room('attic', [0, 200, 300, 100])

  test.each([
    ['across the planks', den(...STEPS), 'den', 3],
    ['that bounds another floor', den(...STEPS), 'attic', 0],
    ['of a room without a shape', den(...STEPS), 'loft', 0],
  ] as const)('gives way to the longest wall if it names one %s', (_, at, text, wall) => {
    const loft = room('loft', [0, 0, 1, 1], { surveyed: { status: 'broken', corners: [] } })
    const run = { east: 30, north: 0 }
    const found = started(at, { run, start: along(text, wall), others: [attic, loft] })
    expect(found).toEqual({ ...started(at, { run }), said: 'said, but across the planks' })
  })
})
