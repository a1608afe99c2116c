import { describe, expect, test } from 'vitest'
import type { Region } from '../../server/src/geometry/point.ts'
import { floorArea } from '../../server/src/layout/area.ts'
import { EAST_WEST, NORTH_SOUTH } from '../../server/src/layout/frame.ts'
import { netInFrame } from '../../server/src/layout/net.ts'
import type { SetOut } from '../../server/src/layout/problem.ts'
import { problemOf } from '../../server/src/layout/problem-of.ts'
import { zonesOf } from '../../server/src/layout/zones.ts'
import { rectangle } from '../geometry/regions.ts'
import { doorway, floor, inch, job, ring, room, survey } from './house.ts'
import { rules } from './naive.ts'

/** Longer than any doorway here with its 6 in on both sides. */
const LONG = inch(48)

const cut = (net: Region, setOut: Partial<SetOut> = {}) =>
  problemOf(net, { seam: 0, start: 0, onward: 'up', ...setOut }, rules, [])
const inches = (interval: { readonly from: number; readonly to: number }) => [
  interval.from / inch(1),
  interval.to / inch(1),
]

describe('courses', () => {
  test('cover the floor from seam to seam', () => {
    const { courses } = cut([rectangle(0, inch(3), inch(100), inch(20))]).problem
    expect(courses.map(({ course, low, high }) => [course, low / inch(1), high / inch(1)])).toEqual(
      [
        [1, 0, 7],
        [2, 7, 14],
        [3, 14, 21],
        [4, 21, 28],
      ],
    )
  })

  test('are laid from the start outward, then backwards behind it', () => {
    const orders = (setOut: Partial<SetOut>) =>
      cut([rectangle(0, 0, inch(100), inch(35))], setOut).problem.courses.map(({ order }) => order)
    expect(orders({ start: 0, onward: 'up' })).toEqual([1, 2, 3, 4, 5])
    expect(orders({ start: inch(35), onward: 'down' })).toEqual([5, 4, 3, 2, 1])
    expect(orders({ start: inch(14), onward: 'up' })).toEqual([5, 4, 1, 2, 3])
    expect(orders({ start: inch(14), onward: 'down' })).toEqual([2, 1, 3, 4, 5])
    expect(orders({ start: inch(-50), onward: 'up' })).toEqual([1, 2, 3, 4, 5])
    expect(orders({ start: inch(99), onward: 'down' })).toEqual([5, 4, 3, 2, 1])
  })

  test('take no notice of a thousandth of a millimetre beyond a seam', () => {
    const net = [
      [
        { x: 0, y: -900 },
        { x: inch(50), y: 700 },
        { x: inch(50), y: inch(14) + 1000 },
        { x: 0, y: inch(14) - 3 },
      ],
    ]
    const { problem, area } = cut(net)
    expect(problem.courses.length).toBe(2)
    expect(area).toEqual([rectangle(0, 0, inch(50), inch(14))])
  })

  test('of a floor without area are none', () => {
    expect(cut([]).problem).toMatchObject({ courses: [], stretches: [], contacts: [] })
  })
})

describe('stretches', () => {
  test('part where a wall comes down, and touch what lies below', () => {
    // A U: two legs above a bottom course.
    const net = [ring([0, 0], [100, 0], [100, 14], [60, 14], [60, 7], [40, 7], [40, 14], [0, 14])]
    const { stretches, contacts } = cut(net).problem
    expect(stretches.map((stretch) => [stretch.id, stretch.course, ...inches(stretch)])).toEqual([
      [0, 1, 0, 100],
      [1, 2, 0, 40],
      [2, 2, 60, 100],
    ])
    expect(
      contacts.map(({ below, above, ...interval }) => [below, above, ...inches(interval)]),
    ).toEqual([
      [0, 1, 0, 40],
      [0, 2, 60, 100],
    ])
  })

  test('say what lies in them across, band by band', () => {
    const net = [ring([0, 0], [50, 0], [50, 3], [70, 3], [70, 7], [30, 7], [30, 5], [0, 5])]
    expect(
      cut(net).problem.stretches[0]!.bands.map((band) => [
        ...inches(band),
        band.low / inch(1),
        band.high / inch(1),
      ]),
    ).toEqual([
      [0, 30, 0, 5],
      [30, 50, 0, 7],
      [50, 70, 3, 7],
    ])
  })

  test('a slanted wall reaches as far as it does anywhere in the band', () => {
    const net = [ring([0, 0], [30, 0], [30, 6], [10, 6], [0, 3])]
    const { bands } = cut(net).problem.stretches[0]!
    expect(bands).toEqual([{ from: 0, to: inch(30), low: 0, high: inch(6) }])
  })

  test('a post inside a course is told, a column across a seam notches both', () => {
    const net = [
      rectangle(0, 0, inch(100), inch(14)),
      rectangle(inch(20), inch(2), inch(3), inch(3)).toReversed(),
      rectangle(inch(60), inch(5), inch(4), inch(4)).toReversed(),
    ]
    const { stretches, contacts } = cut(net).problem
    expect(stretches.map(({ posts }) => posts.map(inches))).toEqual([[[20, 23]], []])
    expect(contacts.map(inches)).toEqual([
      [0, 60],
      [64, 100],
    ])
  })
})

describe('doorways', () => {
  const hall = room('hall', [0, 0, 120, 48])
  const den = room('den', [0, 52, 120, 100])
  const door = doorway(
    'hall',
    'den',
    [
      [40, 48],
      [70, 48],
    ],
    [
      [40, 52],
      [70, 52],
    ],
  )
  const area = floorArea(job(), survey([hall, den], [door]), floor(['hall', 'den']))

  test('are kept clear of joints for 6 in at both sides: common practice, no source', () => {
    expect(
      zonesOf(area, EAST_WEST, LONG).map((zone) => [
        zone.doorway,
        ...inches(zone),
        zone.low / inch(1),
        zone.high / inch(1),
      ]),
    ).toEqual([['hall to den', 33.5, 76.5, 48, 52]])
    // Planks through the door: the zone is the wall and 6 in before and behind it.
    expect(zonesOf(area, NORTH_SOUTH, LONG).map((zone) => inches(zone))).toEqual([[42, 58]])
  })

  test('concern the stretches that lie in them', () => {
    const { problem } = problemOf(
      netInFrame(area, EAST_WEST),
      { seam: inch(0.25), start: 0, onward: 'up' },
      rules,
      zonesOf(area, EAST_WEST, LONG),
    )
    const concerned = problem.stretches.filter(({ doorways }) => doorways.length > 0)
    // The courses from 42 1/4 to 56 1/4 in reach the wall at 48 to 52; there the door is 31 in wide.
    expect(concerned.map(({ course, doorways }) => [course, doorways.map(inches)])).toEqual([
      [7, [[39.5, 70.5]]],
      [8, [[39.5, 70.5]]],
    ])
  })
})
