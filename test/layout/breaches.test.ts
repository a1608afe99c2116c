import { describe, expect, test } from 'vitest'
import { touchesOf } from '../../server/src/layout/breach-joints.ts'
import { breachesOf, type Laid } from '../../server/src/layout/breaches.ts'
import { narrowestOf } from '../../server/src/layout/narrowest.ts'
import type {
  PublishedJoint,
  PublishedPiece,
  PublishedRing,
} from '../../server/src/layout/published.ts'
import { inch } from './house.ts'
import { rules } from './naive.ts'

const corners = (...pairs: readonly (readonly [number, number])[]): PublishedRing =>
  pairs.map(([u, v]) => [inch(u), inch(v)])

function piece(
  number: number,
  ring: PublishedRing,
  more: Partial<PublishedPiece> = {},
): PublishedPiece {
  return {
    piece: number,
    course: 1,
    plank: 1,
    blank: number,
    ring,
    along: [0, inch(20)],
    across: [0, inch(7)],
    turned: false,
    factory: { left: true, right: false, low: true, high: true },
    ...more,
  }
}

const joint = (course: number, at: number, leftPiece: number): PublishedJoint => ({
  course,
  at: inch(at),
  low: inch(7 * (course - 1)),
  high: inch(7 * course),
  leftPiece,
  rightPiece: leftPiece + 1,
  parted: false,
})

const NOTHING: Laid = {
  rules,
  pieces: [],
  joints: [],
  planks: [{ plank: 1, length: inch(48) }],
  touches: [],
  rings: [],
  doorways: [],
}

const breaches = (laid: Partial<Laid>) =>
  breachesOf({ ...NOTHING, ...laid }).map(({ rule, value, at, pieces, direction }) => [
    rule,
    value / inch(1),
    at.map((x) => x / inch(1)),
    pieces,
    direction,
  ])

describe('the stagger', () => {
  const joints = [joint(1, 20, 1), joint(1, 60, 2), joint(2, 26, 11), joint(2, 68, 12)]
  const touch = (from: number, to: number) => [{ seam: inch(7), from: inch(from), to: inch(to) }]

  test('is short where joints of neighbours stand nearer than asked', () => {
    expect(breaches({ joints, touches: touch(0, 100) })).toEqual([
      ['stagger', 6, [20, 3.5], [1, 11], ''],
    ])
  })

  test('counts only where both lie strictly inside one interval along which the courses touch', () => {
    expect(breaches({ joints, touches: touch(20, 100) })).toEqual([])
    expect(breaches({ joints, touches: touch(0, 26) })).toEqual([])
    expect(breaches({ joints, touches: [...touch(0, 22), ...touch(24, 99)] })).toEqual([])
  })

  test('is looked for among all joints of two courses, in whatever order they are told', () => {
    const many = [
      joint(1, 60, 2),
      joint(1, 20, 1),
      joint(2, 90, 13),
      joint(2, 26, 11),
      joint(2, 66, 12),
    ]
    expect(breaches({ joints: many, touches: touch(0, 100) })).toEqual([
      ['stagger', 6, [20, 3.5], [1, 11], ''],
      ['stagger', 6, [60, 3.5], [2, 12], ''],
    ])
  })

  test('never takes joints in line for a small stagger', () => {
    expect(
      breaches({ joints: [joint(1, 20, 1), joint(2, 20, 11)], touches: touch(0, 100) }),
    ).toEqual([])
  })

  test('runs on where contacts of two stretches go on into each other', () => {
    const contacts = [
      { below: 0, above: 2, from: 0, to: 5 },
      { below: 0, above: 3, from: 5, to: 9 },
      { below: 1, above: 3, from: 10, to: 12 },
    ]
    expect(touchesOf(contacts, () => 7)).toEqual([
      { seam: 7, from: 0, to: 9 },
      { seam: 7, from: 10, to: 12 },
    ])
    const seamOf = ({ below }: { readonly below: number }) => 7 * (below + 1)
    const apart = [
      { below: 0, above: 1, from: 0, to: 5 },
      { below: 1, above: 2, from: 5, to: 9 },
    ]
    expect(touchesOf(apart, seamOf)).toEqual([
      { seam: 7, from: 0, to: 5 },
      { seam: 14, from: 5, to: 9 },
    ])
  })
})

describe('the shortest end', () => {
  test('binds what was cut from a plank, not a whole one', () => {
    const ring = corners([0, 0], [7, 0], [7, 7], [0, 7])
    expect(breaches({ pieces: [piece(1, ring)] })).toEqual([['shortest end', 7, [0, 0], [1], '']])
    expect(breaches({ pieces: [piece(1, ring, { along: [0, inch(48)] })] })).toEqual([])
  })
})

describe('the narrowest rip', () => {
  const narrowest = (...pairs: readonly (readonly [number, number])[]) => {
    const value = narrowestOf(corners(...pairs), inch(2))
    return value === null ? null : value / inch(1)
  }

  test('is the leg beside a notch', () => {
    expect(narrowest([0, 0], [20, 0], [20, 7], [14, 7], [14, 1.5], [8, 1.5], [8, 7], [0, 7])).toBe(
      1.5,
    )
  })

  test('is the neck between two slanted edges, at a corner', () => {
    expect(narrowest([0, 0], [10, 3], [20, 0], [20, 7], [0, 7])).toBe(4)
  })

  test('of a taper to a point is its wider side', () => {
    expect(narrowest([0, 0], [20, 0], [20, 3])).toBe(3)
  })

  test('of a taper that follows a wide part is that part', () => {
    expect(narrowest([0, 0], [27, 0], [20, 7], [0, 7])).toBe(7)
    expect(narrowest([0, 0], [40, 0], [20, 0.5], [0, 0.5])).toBe(0.5)
  })

  test('of a strip that ends in a point is the strip', () => {
    // 3 in of a plank beside a hearth, then 12 in of 1 in, tapering to nothing over 8 in more.
    expect(narrowest([0, 0], [20, 0], [12, 1], [3, 1], [3, 7], [0, 7])).toBe(1)
  })

  test('is not a corner no longer than the narrowest rip, cut where a wall turns away', () => {
    expect(narrowest([0, 0], [20, 0], [20, 5.5], [21.5, 7], [0, 7])).toBe(7)
    expect(narrowest([0, 0], [1.5, 0], [0, 1.5])).toBe(null)
    expect(narrowest([0, 0], [2.5, 0], [0, 1.5])).toBe(1.5)
  })

  test('is the neck under a round notch, not the corners beside it', () => {
    const round = [
      [12, 7],
      [10.5, 3.5],
      [7, 2],
      [3.5, 3.5],
      [2, 7],
    ] as const
    expect(narrowest([0, 0], [20, 0], [20, 7], ...round, [0, 7])).toBe(2)
    // The same notch through the whole course: what is left on either side narrows to points.
    expect(narrowest([0, 0], [4.8, 0], [3.5, 3.5], [4.8, 7], [0, 7])).toBe(7)
  })

  test('is nothing where all of it comes to a point', () => {
    expect(
      narrowestOf(
        [
          [0, 0],
          [inch(20), 0],
          [inch(20), 1000],
        ],
        inch(2),
      ),
    ).toBe(null)
  })

  test('is rounded down to whole nanometres', () => {
    // At u = 100 the upper edge from (0, 1000000) to (300, 1000100) stands at 1000033 1/3.
    expect(
      narrowestOf(
        [
          [0, 0],
          [100, 0],
          [100, 500_000],
          [300, 500_000],
          [300, 1_000_100],
          [0, 1_000_000],
        ],
        0,
      ),
    ).toBe(500_033)
  })
})

describe('the longest run', () => {
  const ell = [corners([0, 0], [300, 0], [300, 50], [100, 50], [100, 200], [0, 200])]
  const limit = (along: number | null, across: number | null) => ({
    ...rules,
    longestRun: { along: along && inch(along), across: across && inch(across) },
  })

  test('is the longest straight line inside the floor, both ways', () => {
    expect(breaches({ rings: ell, rules: limit(250, 150) })).toEqual([
      ['longest run', 300, [0, 0], [], 'along'],
      ['longest run', 200, [0, 0], [], 'across'],
    ])
    expect(breaches({ rings: ell, rules: limit(300, 200) })).toEqual([])
    expect(breaches({ rings: ell, rules: limit(null, null) })).toEqual([])
  })

  test('is none in a floor that has none', () => {
    expect(breaches({ rings: [], rules: limit(0, 0) })).toEqual([])
  })

  test('may be just as long as the product allows, in a floor that is higher', () => {
    const steps = [
      corners([0, 0], [50, 0], [50, 50], [100, 50], [100, 200], [50, 200], [50, 150], [0, 150]),
    ]
    expect(breaches({ rings: steps, rules: limit(null, 150) })).toEqual([])
    expect(breaches({ rings: steps, rules: limit(null, 149) })).toEqual([
      ['longest run', 150, [0, 0], [], 'across'],
    ])
  })

  test.each([
    [
      'the right side of a taper',
      [
        [0, 5],
        [50, 0],
        [50, 10],
      ],
      [],
      [50, 0],
    ],
    [
      'of two alike the one further left',
      [
        [0, 5],
        [50, 0],
        [50, 10],
      ],
      [
        [0, 20],
        [50, 25],
        [0, 30],
      ],
      [0, 20],
    ],
    [
      'of two in one line the lower',
      [
        [0, 25],
        [50, 20],
        [50, 30],
      ],
      [
        [50, 0],
        [100, 5],
        [50, 10],
      ],
      [50, 0],
    ],
    [
      'a lower one further right comes second',
      [
        [0, 20],
        [50, 20],
        [50, 30],
        [0, 30],
      ],
      [
        [50, 0],
        [90, 0],
        [90, 10],
        [50, 10],
      ],
      [0, 20],
    ],
  ] as const)('across is told at %s', (_, one, other, at) => {
    const rings = [one, other].filter((ring) => ring.length > 0).map((ring) => corners(...ring))
    expect(breaches({ rings, rules: limit(null, 9) })).toEqual([
      ['longest run', 10, at, [], 'across'],
    ])
  })

  test('is rounded up to whole nanometres', () => {
    // At u = 100 the upper edge from (0, 1000000) to (300, 1000100) stands at 1000033 1/3.
    const rings: PublishedRing[] = [
      [
        [0, 0],
        [100, -500_000],
        [300, 0],
        [300, 1_000_100],
        [0, 1_000_000],
      ],
    ]
    const longestRun = { along: null, across: 9 }
    const [found] = breachesOf({ ...NOTHING, rules: { ...rules, longestRun }, rings })
    expect(found).toMatchObject({ value: 1_500_034, at: [100, -500_000] })
  })

  test('ends at a hearth', () => {
    const hearth = corners([140, 0], [140, 50], [160, 50], [160, 0])
    const parted = [
      corners(
        [0, 0],
        [140, 0],
        [140, 40],
        [160, 40],
        [160, 0],
        [300, 0],
        [300, 40],
        [300, 50],
        [0, 50],
      ),
    ]
    expect(breaches({ rings: parted, rules: limit(139, null) })).toEqual([
      ['longest run', 300, [0, 40], [], 'along'],
    ])
    expect(
      breaches({
        rings: [corners([0, 0], [300, 0], [300, 50], [0, 50]), hearth],
        rules: limit(139, null),
      }),
    ).toEqual([['longest run', 140, [0, 0], [], 'along']])
  })
})

describe('joints in doorways', () => {
  const zone = { doorway: 'hall to den', from: inch(30), to: inch(70), low: inch(2), high: inch(6) }

  test('are told with their distance to the nearer side', () => {
    const joints = [joint(1, 60, 4), joint(1, 35, 3)]
    expect(breaches({ joints, doorways: [zone] })).toEqual([
      ['doorway joint', 10, [60, 3.5], [4], ''],
      ['doorway joint', 5, [35, 3.5], [3], ''],
    ])
  })

  test('are told for each zone, in the order of the zones', () => {
    const wide = { ...zone, from: inch(10), to: inch(69) }
    expect(breaches({ joints: [joint(1, 60, 4)], doorways: [zone, wide] })).toEqual([
      ['doorway joint', 10, [60, 3.5], [4], ''],
      ['doorway joint', 9, [60, 3.5], [4], ''],
    ])
    expect(
      breaches({ joints: [joint(1, 60, 4)], doorways: [wide, zone] }).map(([, value]) => value),
    ).toEqual([9, 10])
  })

  test('that only touch it from above or below are none', () => {
    const above = { ...zone, low: inch(7), high: inch(10) }
    expect(breaches({ joints: [joint(1, 50, 1)], doorways: [above] })).toEqual([])
    expect(
      breaches({ joints: [joint(2, 50, 1)], doorways: [{ ...zone, low: 0, high: inch(7) }] }),
    ).toEqual([])
  })

  test('outside it, at its side, or in another course are none', () => {
    const joints = [joint(1, 20, 1), joint(1, 30, 2), joint(2, 50, 9)]
    expect(breaches({ joints, doorways: [zone] })).toEqual([])
  })
})
