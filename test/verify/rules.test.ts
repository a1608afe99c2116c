import { describe, expect, test } from 'vitest'
import { checkDisjoint } from '../../server/src/verify/disjoint.ts'
import { boxesOverlap, turn } from '../../server/src/verify/exact.ts'
import type { Found } from '../../server/src/verify/found.ts'
import type { Floor, Ring, Vertex } from '../../server/src/verify/layout.ts'
import { checkParted } from '../../server/src/verify/parted.ts'
import { sections, widthDown, widthUp } from '../../server/src/verify/sections.ts'
import { whereNotSimple } from '../../server/src/verify/simple-ring.ts'
import { checkUnsplit } from '../../server/src/verify/unsplit.ts'

const rectangle = (u: number, v: number, toU: number, toV: number): Ring => [
  [u, v],
  [toU, v],
  [toU, toV],
  [u, toV],
]

describe('the area with its crossings keeps to the area without', () => {
  /** A room of 400 by 300 whose last wall slants: 3 along for 4 up. */
  const ROOM: Ring = [
    [0, 0],
    [400, 0],
    [400, 300],
    [225, 300],
  ]

  const at = (...ring: Ring): Vertex | undefined => {
    const area = { rings: [ring], unsplit: [ROOM] }
    const [fault, ...more] = checkUnsplit({ area } as unknown as Floor)
    expect(more).toEqual([])
    return fault?.at
  }
  const [a, b, c, d] = ROOM as [Vertex, Vertex, Vertex, Vertex]

  test('the same ring, and one with vertices on its edges', () => {
    expect(at(a, b, c, d)).toBeUndefined()
    expect(at(a, [1, 0], [399, 0], b, [400, 150], c, [300, 300], d, [150, 200])).toBeUndefined()
  })

  test('a vertex a nanometre off its edge is rounded, one further off is not', () => {
    expect(at(a, [100, 1], b, c, d)).toBeUndefined()
    expect(at(a, [100, -1], b, c, d)).toBeUndefined()
    expect(at(a, [100, 2], b, c, d)).toEqual([100, 2])
    expect(at(a, [100, -2], b, c, d)).toEqual([100, -2])
    // Off the slanting wall 4u = 3v by 4/5 and by 8/5 of a nanometre.
    expect(at(a, b, c, d, [151, 200])).toBeUndefined()
    expect(at(a, b, c, d, [152, 200])).toEqual([152, 200])
  })

  test('no vertex lies behind the one before, before its edge or past it', () => {
    expect(at(a, [200, 0], [100, 0], b, c, d)).toEqual([100, 0])
    expect(at(a, [100, 0], [100, 0], b, c, d)).toBeUndefined()
    expect(at(a, [-1, 0], b, c, d)).toEqual([-1, 0])
    expect(at(a, [401, 0], b, c, d)).toEqual([401, 0])
    expect(at(a, b, c, d, [-3, -4])).toEqual([-3, -4])
  })

  test('its corners are all there, in order, from the same one', () => {
    expect(at(a, c, d)).toEqual(c)
    expect(at(b, c, d, a)).toEqual(a)
    expect(at(a, b, c)).toEqual(d)
    expect(at(a, b, d, c)).toEqual(d)
    expect(at([0, 1], b, c, d)).toEqual(a)
  })

  test('each ring is told by its number', () => {
    const hole = rectangle(10, 10, 20, 20)
    const area = { rings: [ROOM, hole.with(1, [21, 10])], unsplit: [ROOM, hole] }
    expect(checkUnsplit({ area } as unknown as Floor).map(({ text }) => text)).toEqual([
      'Ring 1 of the area leaves its unsplit edges near 0.000021 mm along, 0.00001 mm across.',
    ])
  })
})

describe('a parted joint needs a hole that the course closes in', () => {
  const room = rectangle(0, 0, 900, 300)

  /** A joint at 450 from `low` to `high` in a course from 100 to 200, beside a hole. */
  const faults = (hole: Ring, low: number, high: number, parted = true) => {
    const joint = { course: 2, at: 450, low, high, parted, left: { piece: 5 }, right: { piece: 6 } }
    const courses = new Map([[2, { course: 2, low: 100, high: 200, order: 1 }]])
    const floor = { area: { rings: [room, hole] } } as unknown as Floor
    return checkParted(floor, { joints: [joint], courses } as unknown as Found)
  }

  const post: Ring = [
    [450, 120],
    [420, 150],
    [450, 180],
    [480, 150],
  ]

  test('the joint ends at the post, below it and above it', () => {
    expect(faults(post, 100, 120)).toEqual([])
    expect(faults(post, 180, 200)).toEqual([])
    expect(faults(post, 100, 119)).toEqual([
      {
        code: 'parted-without-hole',
        text: 'Pieces 5 and 6 are parted at 0.00045 mm along, where no hole closed in by the course asks for it.',
        course: 2,
        piece: 5,
        at: [450, 100],
      },
    ])
    expect(faults(post, 100, 119, false)).toEqual([])
  })

  const moved = (du: number, dv: number): Ring => post.map(([u, v]) => [u + du, v + dv])

  test('the post has to lie on both sides of the joint', () => {
    expect(faults(moved(30, 0), 100, 150)).toHaveLength(1)
    expect(faults(moved(-30, 0), 100, 150)).toHaveLength(1)
    expect(faults(moved(200, 0), 100, 120)).toHaveLength(1)
  })

  test('the post has to lie inside the course', () => {
    expect(faults(moved(0, -20), 140, 160)).toEqual([])
    expect(faults(moved(0, -21), 159, 200)).toHaveLength(1)
    expect(faults(moved(0, 20), 100, 140)).toEqual([])
    expect(faults(moved(0, 21), 100, 141)).toHaveLength(1)
  })

  test('a post with a side on a seam opens to it, one with a corner there does not', () => {
    const square = (low: number, high: number): Ring => [
      [420, low],
      [420, high],
      [450, high],
      [480, high],
      [480, low],
      [450, low],
    ]
    expect(faults(square(120, 180), 100, 120)).toEqual([])
    expect(faults(square(100, 180), 180, 200)).toHaveLength(1)
    expect(faults(square(120, 200), 100, 120)).toHaveLength(1)
    expect(faults(moved(0, -20), 160, 200)).toEqual([])
  })

  test('the rim of the area is no hole', () => {
    const joint = faults(rectangle(420, 120, 480, 180), 100, 120)
    expect(joint).toHaveLength(1)
  })
})

describe('pieces of one course', () => {
  const overlaps = (...rings: readonly Ring[]) =>
    checkDisjoint({
      pieces: rings.map((ring, i) => ({ ring, piece: i + 1, course: 1 })),
    } as unknown as Floor).map(({ at }) => at)

  test('side by side, one over the other, corner to corner', () => {
    expect(overlaps(rectangle(0, 0, 10, 10), rectangle(10, 0, 20, 10))).toEqual([])
    expect(overlaps(rectangle(0, 0, 10, 5), rectangle(0, 5, 10, 10))).toEqual([])
    expect(overlaps(rectangle(0, 5, 10, 10), rectangle(0, 0, 10, 5))).toEqual([])
    expect(overlaps(rectangle(0, 0, 10, 5), rectangle(10, 5, 20, 10))).toEqual([])
  })

  const lower: Ring = [
    [0, 0],
    [30, 0],
    [30, 10],
  ]

  test('along a slant, where their boxes overlap', () => {
    const upper: Ring = [
      [0, 0],
      [30, 10],
      [0, 10],
    ]
    expect(overlaps(lower, upper)).toEqual([])
    expect(overlaps(upper, lower)).toEqual([])
  })

  test('over the slant by less than a nanometre at each end', () => {
    const over: Ring = [
      [0, 0],
      [20, 6],
      [30, 10],
      [0, 10],
    ]
    expect(overlaps(lower, over)).toHaveLength(1)
    const under: Ring = [
      [0, 0],
      [20, 7],
      [30, 10],
      [0, 10],
    ]
    expect(overlaps(lower, under)).toEqual([])
  })

  test('crossing each other', () => {
    const falling: Ring = [
      [0, 0],
      [30, 0],
      [0, 10],
    ]
    expect(overlaps(lower, falling)).toEqual([[0, 0]])
    expect(overlaps(rectangle(0, 0, 10, 10), rectangle(9, 9, 20, 20))).toEqual([[9, 9]])
  })

  test('pieces of different courses are not held against each other', () => {
    const pieces = [rectangle(0, 0, 10, 10), rectangle(0, 0, 10, 10)].map((ring, i) => ({
      ring,
      piece: i,
      course: i,
    }))
    expect(checkDisjoint({ pieces } as unknown as Floor)).toEqual([])
  })

  test('a heap is told by twenty', () => {
    expect(overlaps(...Array(9).fill(rectangle(0, 0, 10, 10)))).toHaveLength(20)
  })
})

describe('a ring that touches itself, turned and mirrored', () => {
  const held = (ring: Ring): Ring[] => [
    ring,
    ring.map(([u, v]): Vertex => [-v, u]),
    ring.map(([u, v]): Vertex => [-u, -v]),
    ring.map(([u, v]): Vertex => [v, -u]),
    ring.map(([u, v]): Vertex => [u + 5_000, v - 9_000]),
    ring.toReversed(),
    [...ring.slice(1), ring[0]!],
  ]

  test.each<[string, Ring, boolean]>([
    [
      'a comb',
      [
        [0, 0],
        [9, 0],
        [9, 9],
        [7, 9],
        [7, 2],
        [5, 2],
        [5, 9],
        [3, 9],
        [3, 2],
        [0, 2],
      ],
      true,
    ],
    [
      'teeth beside each other',
      [
        [0, 0],
        [20, 0],
        [20, 1],
        [2, 1],
        [2, 2],
        [20, 2],
        [20, 3],
        [0, 3],
      ],
      true,
    ],
    [
      'a corner just short of a side',
      [
        [0, 0],
        [10, 0],
        [10, 10],
        [1, 5],
        [0, 10],
      ],
      true,
    ],
    [
      'a corner on a side',
      [
        [0, 0],
        [10, 0],
        [10, 10],
        [0, 5],
        [0, 10],
      ],
      false,
    ],
    [
      'a corner past a side',
      [
        [0, 0],
        [10, 0],
        [10, 10],
        [-1, 5],
        [0, 10],
      ],
      false,
    ],
    [
      'a corner on a corner',
      [
        [0, 0],
        [10, 0],
        [10, 10],
        [0, 0],
        [-10, 10],
        [-10, 0],
      ],
      false,
    ],
    [
      'there and back on a slant',
      [
        [0, 0],
        [6, 3],
        [10, 0],
        [10, 10],
        [6, 3],
        [4, 2],
        [0, 10],
      ],
      false,
    ],
    [
      'a spur on a slant',
      [
        [0, 0],
        [8, 4],
        [6, 3],
        [0, 10],
      ],
      false,
    ],
    [
      'straight on over a slant',
      [
        [0, 0],
        [4, 2],
        [8, 4],
        [0, 10],
      ],
      true,
    ],
    [
      'two sides in line with a blank between',
      [
        [0, 0],
        [3, 0],
        [3, 2],
        [5, 2],
        [5, 0],
        [9, 0],
        [9, 9],
        [0, 9],
      ],
      true,
    ],
    [
      'two sides in line that overlap',
      [
        [0, 0],
        [6, 0],
        [6, 2],
        [5, 2],
        [5, 0],
        [9, 0],
        [9, 9],
        [0, 9],
      ],
      false,
    ],
  ])('%s', (_, ring, simple) => {
    for (const one of held(ring)) expect(whereNotSimple(one) === null).toBe(simple)
  })
})

describe('exact figures', () => {
  test('boxes that overlap have more than an edge in common', () => {
    const box = { west: 0, east: 10, low: 0, high: 10 }
    const beside = [
      { west: 10, east: 12, low: 0, high: 10 },
      { west: -4, east: 0, low: 0, high: 10 },
      { west: 0, east: 10, low: 10, high: 12 },
      { west: 0, east: 10, low: -4, high: 0 },
    ]
    for (const other of beside) {
      expect([boxesOverlap(box, other), boxesOverlap(other, box)]).toEqual([false, false])
    }
    expect(boxesOverlap(box, { west: 9, east: 12, low: 9, high: 12 })).toBe(true)
    expect(boxesOverlap(box, box)).toBe(true)
  })

  test('a turn by plain figures, and the other way', () => {
    expect(turn([0, 0], [10, 0], [5, 1])).toBe(1)
    expect(turn([0, 0], [10, 0], [5, -1])).toBe(-1)
    expect(turn([0, 0], [10, 0], [25, 0])).toBe(0)
  })

  test('a slant that falls by thirds, far from nothing', () => {
    // From 60 down to 50 over 30: 56 2/3 at a third, 53 1/3 at two; the floor below is level at 40.
    const ring: Ring = [
      [100, 40],
      [110, 40],
      [120, 40],
      [130, 40],
      [130, 50],
      [100, 60],
    ]
    const widths = sections([ring]).map(({ intervals: [one] }) => [
      widthDown(one!, 0),
      widthUp(one!, 0),
      widthDown(one!, 1),
      widthUp(one!, 1),
    ])
    expect(widths).toEqual([
      [20, 20, 16, 17],
      [16, 17, 13, 14],
      [13, 14, 10, 10],
    ])
  })

  test('the width between two slants is rounded once', () => {
    // 3 1/3 below and 7 2/3 above at a third of the way: 4 1/3 between.
    const ring: Ring = [
      [0, 0],
      [30, 10],
      [30, 19],
      [0, 2],
    ]
    const [slab] = sections([ring], [10])
    expect([widthDown(slab!.intervals[0]!, 1), widthUp(slab!.intervals[0]!, 1)]).toEqual([4, 5])
    const falling: Ring = [
      [0, 20],
      [30, 11],
      [30, 21],
      [0, 30],
    ]
    const [even] = sections([falling], [10])
    expect([widthDown(even!.intervals[0]!, 1), widthUp(even!.intervals[0]!, 1)]).toEqual([10, 10])
  })
})
