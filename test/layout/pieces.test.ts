import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { twiceAreaOf } from '../../server/src/geometry/exact.ts'
import type { Region } from '../../server/src/geometry/point.ts'
import { floorArea } from '../../server/src/layout/area.ts'
import { EAST_WEST, type Frame, intoFrame } from '../../server/src/layout/frame.ts'
import { netInFrame } from '../../server/src/layout/net.ts'
import { piecesOf } from '../../server/src/layout/pieces.ts'
import { problemOf } from '../../server/src/layout/problem-of.ts'
import { publishFloor } from '../../server/src/layout/publish.ts'
import type { PublishedFloor } from '../../server/src/layout/published.ts'
import { verify } from '../../server/src/verify/verify.ts'
import { comb, rectangle, someFloor } from '../geometry/regions.ts'
import { breakLine, doorway, floor, inch, job, ring, room, survey } from './house.ts'
import { naivePlan, rules } from './naive.ts'

function laid(
  net: Region,
  seam = 0,
  frame: Frame = EAST_WEST,
  minds: 'posts' | 'nothing' = 'posts',
): PublishedFloor {
  const cut = problemOf(net, { seam, start: seam, onward: 'up' }, rules, [])
  return publishFloor({ floor: 'upstairs', product: 'larch' }, frame, cut, naivePlan(cut, minds))
}

const proof = (layout: PublishedFloor) =>
  verify(
    JSON.parse(
      JSON.stringify({
        format: 'floorscribe layout',
        version: 1,
        unit: 'nm',
        job: 'Test',
        floors: [layout],
      }),
    ),
  )

const hall = room('hall', [0, 0, 120, 48])
const inInches = (pairs: readonly (readonly [number, number])[]) =>
  pairs.map(([u, v]) => [u / inch(1), v / inch(1)])

describe('pieces', () => {
  test('of a room: whole planks, and the two ends that meet the walls', () => {
    const layout = laid([rectangle(0, 0, inch(100), inch(7))])
    expect(
      layout.pieces.map(({ ring: corners, along, factory }) => [
        inInches(corners),
        along.map((x) => x / inch(1)),
        factory,
      ]),
    ).toEqual([
      [
        [
          [0, 0],
          [48, 0],
          [48, 7],
          [0, 7],
        ],
        [0, 48],
        { left: true, right: true, low: true, high: true },
      ],
      [
        [
          [48, 0],
          [96, 0],
          [96, 7],
          [48, 7],
        ],
        [0, 48],
        { left: true, right: true, low: true, high: true },
      ],
      [
        [
          [96, 0],
          [100, 0],
          [100, 7],
          [96, 7],
        ],
        [0, 4],
        { left: true, right: false, low: true, high: true },
      ],
    ])
    expect(
      layout.joints.map(({ at, low, high, leftPiece, rightPiece, parted }) => [
        at / inch(1),
        low,
        high / inch(1),
        leftPiece,
        rightPiece,
        parted,
      ]),
    ).toEqual([
      [48, 0, 7, 1, 2, false],
      [96, 0, 7, 2, 3, false],
    ])
    expect(
      layout.breaches.map(({ rule, value, pieces }) => [rule, value / inch(1), pieces]),
    ).toEqual([['shortest end', 4, [3]]])
  })

  test('of a blank that a wall end parts are two, each with its own length of the plank', () => {
    // A wall end 4 in wide comes down through the course of 7 in to its lower seam.
    const net = [ring([0, 0], [48, 0], [48, 14], [24, 14], [24, 7], [20, 7], [20, 14], [0, 14])]
    const pieces = laid(net).pieces.filter(({ course }) => course === 2)
    expect(pieces.length).toBe(2)
    const layout = laid(
      [ring([0, 0], [48, 0], [48, 7], [24, 7], [24, 1], [20, 1], [20, 7], [0, 7])],
      inch(1),
    )
    const upper = layout.pieces.filter(({ course }) => course === 2)
    expect(upper.map(({ along }) => along.map((x) => x / inch(1)))).toEqual([
      [0, 20],
      [0, 24],
    ])
  })

  test.each([
    [
      'as it lies',
      false,
      [
        [5, 35],
        [5, 15],
        [19, 35],
      ],
    ],
    [
      'turned, from its other end',
      true,
      [
        [5, 35],
        [25, 35],
        [5, 21],
      ],
    ],
  ] as const)(
    'of one blank that a wall end parts take their own lengths of it, %s',
    (_, turned, along) => {
      // Down from the wall at 30 to 34 comes a wall end, on which a bar lies across from 10 to 60.
      const t = ring(
        ...([
          [0, 0],
          [80, 0],
          [80, 7],
          [34, 7],
          [34, 4],
          [60, 4],
          [60, 3],
        ] as const),
        ...([
          [10, 3],
          [10, 4],
          [30, 4],
          [30, 7],
          [0, 7],
        ] as const),
      )
      const cut = problemOf([t], { seam: 0, start: 0, onward: 'up' }, rules, [])
      const blank = (from: number, to: number, plank: number) => ({
        ...{ stretch: 0, course: 1, from: inch(from), to: inch(to), plank, turned },
        along: [inch(5), inch(5 + to - from)] as const,
        across: [0, inch(7)] as const,
      })
      const blanks = [blank(50, 80, 3), blank(20, 50, 2), blank(0, 20, 1)]
      const planks = [1, 2, 3].map((plank) => ({ plank, length: inch(48) }))
      const made = piecesOf(cut, { ...naivePlan(cut, 'posts'), blanks, planks }).pieces
      const middle = made.filter(({ plank }) => plank === 2)
      expect(middle.map((piece) => piece.along.map((u) => u / inch(1)))).toEqual(along)
      expect(new Set(middle.map((piece) => piece.blank)).size).toBe(1)
      expect(made.map(({ plank }) => plank)).toEqual([1, 2, 2, 2, 3])
    },
  )

  test('are parted at each post that no joint falls into, from left to right', () => {
    const post = (at: number, low: number) =>
      ring([at, low], [at, low + 1], [at + 2, low + 1], [at + 2, low])
    const net = [rectangle(0, 0, inch(40), inch(7)), post(30, 2), post(10, 2), post(10, 5)]
    const { joints, pieces } = laid(net, 0, EAST_WEST, 'nothing')
    expect(
      joints.map(({ at, low, high, parted }) =>
        [at, low, high].map((v) => v / inch(1)).concat(parted ? 1 : 0),
      ),
    ).toEqual([
      [11, 0, 2, 1],
      [11, 3, 5, 1],
      [11, 6, 7, 1],
      [31, 0, 2, 1],
      [31, 3, 7, 1],
    ])
    expect(pieces.map(({ along }) => along.map((u) => u / inch(1)))).toEqual([
      [0, 11],
      [11, 31],
      [31, 40],
    ])
  })

  test('around a post are notched where a joint opens it, else parted and glued', () => {
    const post = (at: number) => ring([at, 2], [at, 5], [at + 3, 5], [at + 3, 2])
    const opened = laid([rectangle(0, 0, inch(96), inch(7)), post(40)])
    expect(
      opened.joints.map(({ at, low, high, parted }) => [
        at / inch(1),
        low / inch(1),
        high / inch(1),
        parted,
      ]),
    ).toEqual([
      [42.5, 0, 2, false],
      [42.5, 5, 7, false],
      [90.5, 0, 7, false],
    ])
    expect(proof(opened).faults).toEqual([])
    const glued = laid([rectangle(0, 0, inch(30), inch(7)), post(10)], 0, EAST_WEST, 'nothing')
    expect(glued.joints.map(({ at, parted }) => [at / inch(1), parted])).toEqual([
      [11.5, true],
      [11.5, true],
    ])
    expect(new Set(glued.pieces.map(({ blank }) => blank)).size).toBe(1)
    expect(proof(glued).faults).toEqual([])
  })

  test('tile every floor exactly, as the checker proves from the numbers alone', () => {
    fc.assert(
      fc.property(someFloor, fc.integer({ min: 0, max: inch(7) }), (net, seam) => {
        const layout = laid(net, seam)
        const area = twiceAreaOf(layout.area.rings.map((one) => one.map(([x, y]) => ({ x, y }))))
        const pieces = twiceAreaOf(layout.pieces.map((one) => one.ring.map(([x, y]) => ({ x, y }))))
        expect(pieces).toBe(area)
        expect(proof(layout).faults).toEqual([])
      }),
      { seed: 20261125, numRuns: 50 },
    )
  })

  test('tile floors with posts that no joint minds', () => {
    fc.assert(
      fc.property(someFloor, (net) => {
        const layout = laid(net, 0, EAST_WEST, 'nothing')
        expect(proof(layout).faults).toEqual([])
      }),
      { seed: 20261126, numRuns: 30 },
    )
  })

  test('tile floors laid at an angle', () => {
    const ways = fc.tuple(fc.integer({ min: -9, max: 9 }), fc.integer({ min: 1, max: 9 }))
    fc.assert(
      fc.property(someFloor, ways, (net, [east, north]) => {
        const frame = { east, north }
        const turned = net.map((ring) => ring.map((point) => intoFrame(frame, point)))
        expect(proof(laid(turned, 0, frame)).faults).toEqual([])
      }),
      { seed: 20261125, numRuns: 30 },
    )
  })

  test('tile a house with doors, a break and a column at any angle', () => {
    const column = { kind: 'column', label: 'column', gap: null, span: hall.room.span } as const
    const den = room('den', [0, 52, 120, 100], {
      surveyed: { obstacles: [{ ...column, ring: ring([50, 80], [58, 80], [58, 88], [50, 88]) }] },
    })
    const doors = [
      doorway(
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
      ),
      doorway(
        'hall',
        'bath',
        [
          [120, 40],
          [120, 10],
        ],
        [
          [124, 40],
          [124, 10],
        ],
      ),
      doorway(
        'hall',
        null,
        [
          [60, 0],
          [30, 0],
        ],
        [
          [60, -5],
          [30, -5],
        ],
      ),
    ]
    const bath = room('bath', [124, -20, 60, 90])
    const area = floorArea(
      job(),
      survey([hall, den, bath], doors),
      floor(['hall', 'den', 'bath'], { breaks: [breakLine('hall', 'bath')] }),
    )
    const ways = fc.tuple(fc.integer({ min: -40, max: 40 }), fc.integer({ min: -40, max: 40 }))
    fc.assert(
      fc.property(
        ways.filter(([east, north]) => east !== 0 || north !== 0),
        ([east, north]) => {
          const frame = { east, north }
          const net = netInFrame(area, frame)
          expect(net.map((corners) => corners.length)).toEqual(expect.arrayContaining([4, 4]))
          expect(proof(laid(net, 0, frame)).faults).toEqual([])
        },
      ),
      { seed: 20261125, numRuns: 20, examples: [[[1, 1]], [[-1, 1]], [[1, 0]], [[0, -1]]] },
    )
  })

  test('tile combs', () => {
    for (const sideways of [false, true]) {
      const layout = laid(comb(12, sideways), inch(1.5))
      expect(proof(layout).faults).toEqual([])
    }
  })
})
