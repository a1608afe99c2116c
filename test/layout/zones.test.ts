import { describe, expect, test } from 'vitest'
import type { FloorArea } from '../../server/src/layout/floor-area.ts'
import { EAST_WEST, NORTH_SOUTH } from '../../server/src/layout/frame.ts'
import { middleOf } from '../../server/src/layout/middle.ts'
import { aboveSeam, ontoSeams, seamsOver } from '../../server/src/layout/seams.ts'
import { inZones, zonesOf } from '../../server/src/layout/zones.ts'
import { inch, ring } from './house.ts'

const zone = (from: number, to: number, low: number, high: number) => ({
  doorway: 'hall to den',
  from,
  to,
  low,
  high,
})

describe('the zones of doorways', () => {
  const corners = [
    [0, 0],
    [100, 0],
    [100, 80],
    [0, 80],
  ] as const
  const rim = corners.map(([x, y]) => ({ from: { x: inch(x), y: inch(y) } }))
  const doorways = [
    { label: 'hall to den', ring: ring([100, 20], [104, 20], [104, 50], [100, 50]) },
  ]
  const area = { rim, doorways } as unknown as FloorArea
  const asked = {
    doorway: 'hall to den',
    from: inch(94),
    to: inch(110),
    low: inch(20),
    high: inch(50),
  }

  test('reach 6 in beyond the doorway along the planks (common practice, no source)', () => {
    expect(zonesOf(area, EAST_WEST, inch(48))).toEqual([asked])
    expect(zonesOf(area, NORTH_SOUTH, inch(48))).toEqual([
      { doorway: 'hall to den', from: inch(14), to: inch(56), low: -inch(104), high: -inch(100) },
    ])
  })

  test('are none where no plank reaches from one end to the other', () => {
    expect(zonesOf(area, EAST_WEST, inch(16))).toEqual([asked])
    expect(zonesOf(area, EAST_WEST, inch(16) - 1)).toEqual([])
  })
})

describe('where a stretch lies in zones', () => {
  // Up to u = 10 the whole course, from there to 20 its upper half, from there its lower half.
  const bands = [
    { from: 0, to: 10, low: 0, high: 7 },
    { from: 10, to: 20, low: 3, high: 7 },
    { from: 20, to: 30, low: 0, high: 3 },
  ]

  test.each([
    ['all of it inside', [zone(2, 25, 1, 6)], [[2, 25]]],
    ['nothing where the floor only touches it', [zone(5, 18, -4, 3)], [[5, 10]]],
    ['nothing below the zone either', [zone(12, 28, 3, 9)], [[12, 20]]],
    ['nothing before it', [zone(30, 40, 0, 7)], []],
    ['nothing behind it', [zone(-9, 0, 0, 7)], []],
    ['from its left end', [zone(-9, 4, 0, 7)], [[0, 4]]],
    [
      'two apart, from left to right',
      [zone(22, 25, 0, 7), zone(2, 5, 0, 7)],
      [
        [2, 5],
        [22, 25],
      ],
    ],
    ['two that meet as one', [zone(5, 8, 0, 7), zone(2, 5, 0, 7)], [[2, 8]]],
    ['one within another as that one', [zone(2, 9, 0, 7), zone(3, 5, 0, 7)], [[2, 9]]],
  ] as const)('%s', (_, zones, found) => {
    expect(inZones(bands, zones)).toEqual(found.map(([from, to]) => ({ from, to })))
  })
})

describe('seams', () => {
  test('one below another by a plank is the seam itself, without a sign', () => {
    expect([-14, -7, 0, 7].map((v) => aboveSeam(v, 0, 7))).toEqual([0, 0, 0, 0])
    expect([-1, 8, 6].map((v) => aboveSeam(v, 2, 7))).toEqual([4, 6, 4])
  })

  test('take corners that are a micrometre off, not more', () => {
    const width = inch(7)
    const square = (off: number) =>
      [
        [0, off],
        [inch(9), off],
        [inch(9), width - off],
        [0, width - off],
      ].map(([x, y]) => ({ x: x!, y: y! }))
    const heights = (off: number) =>
      ontoSeams([square(off)], 0, width)
        .flat()
        .map(({ y }) => y)
    expect(heights(1000)).toEqual([0, 0, width, width])
    expect(heights(1001)).toEqual([1001, 1001, width - 1001, width - 1001])
  })

  test('reach over the floor', () => {
    expect(seamsOver([], 0, 7)).toEqual([])
    expect(
      seamsOver(
        [
          [
            { x: 0, y: -1 },
            { x: 5, y: -1 },
            { x: 0, y: 8 },
          ],
        ],
        2,
        7,
      ),
    ).toEqual([-5, 2, 9])
  })
})

test('the middle of a floor is that of the box around it', () => {
  const rim = [{ from: { x: 4, y: 10 } }, { from: { x: 9, y: 10 } }, { from: { x: 6, y: 21 } }]
  expect(middleOf({ rim } as unknown as FloorArea)).toEqual({ x: 6.5, y: 15.5 })
})
