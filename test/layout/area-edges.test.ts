import { describe, expect, test } from 'vitest'
import { floorArea } from '../../server/src/layout/area.ts'
import type { FloorArea } from '../../server/src/layout/floor-area.ts'
import { NM_PER_INCH } from '../../server/src/units/length.ts'
import { breakLine, doorway, floor, job, name, ring, room, survey } from './house.ts'

/** Each edge as "what it is: from x y". */
const edgesOf = ({ rings }: FloorArea) =>
  rings.map((edges) =>
    edges.map(({ label, from }) => `${label}: ${from.x / NM_PER_INCH} ${from.y / NM_PER_INCH}`),
  )

const hall = room('hall', [0, 0, 120, 48])
const HALL = [
  'south of hall: 0 0',
  'east of hall: 120 0',
  'north of hall: 120 48',
  'west of hall: 0 48',
]

describe('a wall is one edge', () => {
  test('though a corner of another room touches it', () => {
    // A room on its point, which stands on the middle of the hall's north wall.
    const turned = room('bay', [0, 0, 1, 1], {
      surveyed: {
        outline: ring([60, 48], [90, 78], [60, 108], [30, 78]),
        corners: ring([60, 108], [90, 78], [60, 48], [30, 78]),
      },
    })
    const area = floorArea(job(), survey([hall, turned]), floor(['hall', 'bay']))
    expect(edgesOf(area)[0]).toEqual(HALL)
    expect(area.rings.map((edges) => edges.length)).toEqual([4, 4])
  })

  test('though its room is told from the middle of it', () => {
    const edges = [2, 1, 0, 3, 2].map((wall) => ({ wall, recess: null }))
    const outline = ring([70, 0], [120, 0], [120, 48], [0, 48], [0, 0])
    const told = room('hall', [0, 0, 120, 48], { surveyed: { outline, edges } })
    expect(edgesOf(floorArea(job(), survey([told]), floor(['hall'])))).toEqual([HALL])
  })

  test('but two walls in one line are two', () => {
    const edges = [3, 2, 1, 0, 3].map((wall) => ({ wall, recess: null }))
    const outline = ring([0, 0], [70, 0], [120, 0], [120, 48], [0, 48])
    const told = room('hall', [0, 0, 120, 48], { surveyed: { outline, edges } })
    expect(edgesOf(floorArea(job(), survey([told]), floor(['hall'])))).toEqual([
      [
        'west of hall: 0 0',
        'south of hall: 70 0',
        'east of hall: 120 0',
        'north of hall: 120 48',
        'west of hall: 0 48',
      ],
    ])
  })

  test('and so is one round a corner', () => {
    const edges = [2, 1, 1, 3].map((wall) => ({ wall, recess: null }))
    const round = room('hall', [0, 0, 120, 48], { surveyed: { edges } })
    expect(edgesOf(floorArea(job(), survey([round]), floor(['hall'])))[0]).toEqual([
      'south of hall: 0 0',
      'east of hall: 120 0',
      'east of hall: 120 48',
      'west of hall: 0 48',
    ])
  })
})

test('a break that the floor runs round on both sides leaves no ring of its own', () => {
  const den = room('den', [0, 52, 120, 100])
  const pass = (label: string, from: number, to: number) =>
    doorway(
      'hall',
      'den',
      [
        [from, 48],
        [to, 48],
      ],
      [
        [from, 52],
        [to, 52],
      ],
      { label, kind: 'pass-through', jambs: false, opened: { name: name(label), jambs: false } },
    )
  const side = [pass('left', 10, 40), pass('middle', 40, 80), pass('right', 80, 110)]
  const breaks = [{ ...breakLine('hall', 'den'), called: name('middle') }]
  const area = floorArea(job(), survey([hall, den], side), floor(['hall', 'den'], { breaks }))
  expect(area.transitions.map(({ label }) => label)).toEqual(['middle'])
  expect(area.rings.map((edges) => edges.length)).toEqual([12])
})

describe('a floor is complete', () => {
  test('with all its rooms', () => {
    expect(floorArea(job(), survey([hall]), floor(['hall'])).complete).toBe(true)
  })

  test('but not if a line of it cannot be read', () => {
    expect(floorArea(job(), survey([hall]), floor(['hall'], { broken: true })).complete).toBe(false)
  })

  test('nor if two rooms of one name make up the number for one without a shape', () => {
    const other = room('hall', [200, 0, 120, 48])
    const bath = room('bath', [0, 100, 10, 10], { surveyed: { status: 'unfinished' } })
    const rooms = survey([hall, other, bath])
    expect(floorArea(job(), rooms, floor(['hall', 'bath'])).complete).toBe(false)
  })
})
