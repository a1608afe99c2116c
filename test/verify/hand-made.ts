import type {
  PublishedFloor,
  PublishedJoint,
  PublishedLayouts,
  PublishedPiece,
  PublishedRing,
  PublishedRules,
} from '../../server/src/layout/published.ts'

/**
 * Layouts made by hand, each small enough to be checked with a pencil. Planks are 7" x 48", a cross
 * cut takes 1/8", and 1/4" is kept to spare. All figures below are inches.
 */
const NM_PER_INCH = 25_400_000

export function inches(length: number): number {
  return length * NM_PER_INCH
}

const RULES: PublishedRules = {
  plankWidth: inches(7),
  plankLengths: [{ length: inches(48), perBox: 9 }],
  stagger: inches(8),
  shortestEnd: inches(10),
  narrowestRip: inches(2),
  kerfAlong: inches(1 / 8),
  kerfAcross: inches(1 / 8),
  toSpare: inches(1 / 4),
  laid: 'left to right',
  longestRun: { along: null, across: null },
  pile: { pieces: 8, courses: 6 },
}

type Span = readonly [number, number]
/** number, course, plank, ring, span along, factory sides, span across (the whole width if left out). */
type Row = readonly [number, number, number, Span[], Span, string, Span?]

function ring(vertices: readonly Span[]): PublishedRing {
  return vertices.map(([u, v]) => [inches(u), inches(v)])
}

function box(west: number, low: number, east: number, high: number): Span[] {
  return [
    [west, low],
    [east, low],
    [east, high],
    [west, high],
  ]
}

function piece([
  number,
  course,
  plank,
  vertices,
  along,
  sides,
  across = [0, 7],
]: Row): PublishedPiece {
  const has = (side: string) => sides.split(' ').includes(side)
  return {
    piece: number,
    course,
    plank,
    blank: number,
    ring: ring(vertices),
    along: [inches(along[0]), inches(along[1])],
    across: [inches(across[0]), inches(across[1])],
    turned: false,
    factory: { left: has('left'), right: has('right'), low: has('low'), high: has('high') },
  }
}

/** course, at, low, high, left piece, right piece. */
function joint(row: readonly [number, number, number, number, number, number]): PublishedJoint {
  const [course, at, low, high, leftPiece, rightPiece] = row
  return {
    course,
    at: inches(at),
    low: inches(low),
    high: inches(high),
    leftPiece,
    rightPiece,
    parted: false,
  }
}

function courses(low: number, count: number): PublishedFloor['courses'] {
  return Array.from({ length: count }, (_, i) => ({
    course: i + 1,
    low: inches(low + 7 * i),
    high: inches(low + 7 * (i + 1)),
    order: i + 1,
  }))
}

function planks(count: number): PublishedFloor['planks'] {
  return Array.from({ length: count }, (_, i) => ({ plank: i + 1, length: inches(48) }))
}

export function layouts(...floors: readonly PublishedFloor[]): PublishedLayouts {
  return { format: 'floorscribe layout', version: 1, unit: 'nm', job: 'made by hand', floors }
}

const COMMON = {
  product: 'river larch',
  frame: { east: 1, north: 0 },
  rules: RULES,
  doorways: [],
  breaches: [],
}

/**
 * 130" x 21", three courses. The first ends with 34" of plank 3, whose rest starts the second; the
 * second ends with 20 1/2" of plank 6, whose rest starts the third.
 */
export const offcuts: PublishedFloor = {
  ...COMMON,
  floor: 'offcuts',
  area: {
    unsplit: [ring(box(0, 0, 130, 21))],
    rings: [
      ring([
        [0, 0],
        [48, 0],
        [96, 0],
        [130, 0],
        [130, 7],
        [130, 14],
        [130, 21],
        [120, 21],
        [72, 21],
        [24, 21],
        [0, 21],
        [0, 14],
        [0, 7],
      ]),
    ],
  },
  courses: courses(0, 3),
  planks: planks(9),
  pieces: (
    [
      [1, 1, 1, box(0, 0, 48, 7), [0, 48], 'left right low high'],
      [2, 1, 2, box(48, 0, 96, 7), [0, 48], 'left right low high'],
      [3, 1, 3, box(96, 0, 130, 7), [0, 34], 'left low high'],
      [4, 2, 3, box(0, 7, 13.5, 14), [34.5, 48], 'right low high'],
      [5, 2, 4, box(13.5, 7, 61.5, 14), [0, 48], 'left right low high'],
      [6, 2, 5, box(61.5, 7, 109.5, 14), [0, 48], 'left right low high'],
      [7, 2, 6, box(109.5, 7, 130, 14), [0, 20.5], 'left low high'],
      [8, 3, 6, box(0, 14, 24, 21), [24, 48], 'right low high'],
      [9, 3, 7, box(24, 14, 72, 21), [0, 48], 'left right low high'],
      [10, 3, 8, box(72, 14, 120, 21), [0, 48], 'left right low high'],
      [11, 3, 9, box(120, 14, 130, 21), [0, 10], 'left low high'],
    ] satisfies Row[]
  ).map(piece),
  joints: (
    [
      [1, 48, 0, 7, 1, 2],
      [1, 96, 0, 7, 2, 3],
      [2, 13.5, 7, 14, 4, 5],
      [2, 61.5, 7, 14, 5, 6],
      [2, 109.5, 7, 14, 6, 7],
      [3, 24, 14, 21, 8, 9],
      [3, 72, 14, 21, 9, 10],
      [3, 120, 14, 21, 10, 11],
    ] as const
  ).map(joint),
  bound: { planks: 9, boxes: 1 },
}

/**
 * 106" x 13": a first and a last course of 3". The first needs its factory edge above, the last
 * below, so each of planks 1, 2 and 3, ripped once, gives to both.
 */
export const ripped: PublishedFloor = {
  ...COMMON,
  floor: 'ripped',
  area: {
    unsplit: [ring(box(0, 0, 106, 13))],
    rings: [
      ring([
        [0, 0],
        [48, 0],
        [96, 0],
        [106, 0],
        [106, 3],
        [106, 10],
        [106, 13],
        [82, 13],
        [34, 13],
        [0, 13],
        [0, 10],
        [0, 3],
      ]),
    ],
  },
  courses: courses(-4, 3),
  planks: planks(6),
  pieces: (
    [
      [1, 1, 1, box(0, 0, 48, 3), [0, 48], 'left right high', [4, 7]],
      [2, 1, 2, box(48, 0, 96, 3), [0, 48], 'left right high', [4, 7]],
      [3, 1, 3, box(96, 0, 106, 3), [0, 10], 'left high', [4, 7]],
      [4, 2, 4, box(0, 3, 20, 10), [28, 48], 'right low high'],
      [5, 2, 5, box(20, 3, 68, 10), [0, 48], 'left right low high'],
      [6, 2, 6, box(68, 3, 106, 10), [0, 38], 'left low high'],
      [7, 3, 2, box(0, 10, 34, 13), [14, 48], 'right low', [0, 3]],
      [8, 3, 1, box(34, 10, 82, 13), [0, 48], 'left right low', [0, 3]],
      [9, 3, 3, box(82, 10, 106, 13), [0, 24], 'left low', [0, 3]],
    ] satisfies Row[]
  ).map(piece),
  joints: (
    [
      [1, 48, 0, 3, 1, 2],
      [1, 96, 0, 3, 2, 3],
      [2, 20, 3, 10, 4, 5],
      [2, 68, 3, 10, 5, 6],
      [3, 34, 10, 13, 7, 8],
      [3, 82, 10, 13, 8, 9],
    ] as const
  ).map(joint),
  bound: { planks: 5, boxes: 1 },
}

const LEFT_OF_POST: Span[] = [
  [20, 7],
  [31, 7],
  [31, 9.5],
  [30, 9.5],
  [30, 11.5],
  [31, 11.5],
  [31, 14],
  [20, 14],
]
const RIGHT_OF_POST: Span[] = [
  [31, 7],
  [68, 7],
  [68, 14],
  [31, 14],
  [31, 11.5],
  [32, 11.5],
  [32, 9.5],
  [31, 9.5],
]

/**
 * An L, 106" wide below and 60" in the third course, with a 2" post inside the second: the plank
 * there is parted through the hole and glued, and its glued joint comes within 3" of the one above.
 */
export const post: PublishedFloor = {
  ...COMMON,
  floor: 'post',
  area: {
    unsplit: [
      ring([
        [0, 0],
        [106, 0],
        [106, 14],
        [60, 14],
        [60, 21],
        [0, 21],
      ]),
      ring([
        [30, 9.5],
        [30, 11.5],
        [32, 11.5],
        [32, 9.5],
      ]),
    ],
    rings: [
      ring([
        [0, 0],
        [48, 0],
        [96, 0],
        [106, 0],
        [106, 7],
        [106, 14],
        [68, 14],
        [60, 14],
        [60, 21],
        [34, 21],
        [0, 21],
        [0, 14],
        [0, 7],
      ]),
      ring([
        [30, 9.5],
        [30, 11.5],
        [31, 11.5],
        [32, 11.5],
        [32, 9.5],
        [31, 9.5],
      ]),
    ],
  },
  courses: courses(0, 3),
  planks: planks(7),
  pieces: [
    ...(
      [
        [1, 1, 1, box(0, 0, 48, 7), [0, 48], 'left right low high'],
        [2, 1, 2, box(48, 0, 96, 7), [0, 48], 'left right low high'],
        [3, 1, 3, box(96, 0, 106, 7), [0, 10], 'left low high'],
        [4, 2, 3, box(0, 7, 20, 14), [28, 48], 'right low high'],
        [7, 2, 5, box(68, 7, 106, 14), [0, 38], 'left low high'],
        [8, 3, 6, box(0, 14, 34, 21), [14, 48], 'right low high'],
        [9, 3, 7, box(34, 14, 60, 21), [0, 26], 'left low high'],
      ] satisfies Row[]
    ).map(piece),
    { ...piece([5, 2, 4, LEFT_OF_POST, [0, 11], 'left low high']), blank: 5 },
    { ...piece([6, 2, 4, RIGHT_OF_POST, [11, 48], 'right low high']), blank: 5 },
  ],
  joints: [
    ...(
      [
        [1, 48, 0, 7, 1, 2],
        [1, 96, 0, 7, 2, 3],
        [2, 20, 7, 14, 4, 5],
        [2, 68, 7, 14, 6, 7],
        [3, 34, 14, 21, 8, 9],
      ] as const
    ).map(joint),
    { ...joint([2, 31, 7, 9.5, 5, 6]), parted: true },
    { ...joint([2, 31, 11.5, 14, 5, 6]), parted: true },
  ],
  breaches: [
    {
      rule: 'stagger',
      value: inches(3),
      limit: inches(8),
      at: [inches(31), inches(12.75)],
      pieces: [5, 8],
      direction: '',
    },
  ],
  bound: { planks: 6, boxes: 1 },
}

/**
 * As `offcuts`, but the right wall leans from 130" in to 126": it crosses the seams at 128 2/3" and
 * 127 1/3", which the grid of whole nanometres does not hold. The last end is 9 5/6", under 10".
 */
const [CROSSING_7, CROSSING_14] = [3_268_133_333, 3_234_266_667]

export const leaning: PublishedFloor = {
  ...COMMON,
  floor: 'leaning',
  area: {
    unsplit: [
      ring([
        [0, 0],
        [130, 0],
        [126, 21],
        [0, 21],
      ]),
    ],
    rings: [
      [
        ...ring([
          [0, 0],
          [48, 0],
          [96, 0],
          [130, 0],
        ]),
        [CROSSING_7, inches(7)],
        [CROSSING_14, inches(14)],
        ...ring([
          [126, 21],
          [117.5, 21],
          [69.5, 21],
          [21.5, 21],
          [0, 21],
          [0, 14],
          [0, 7],
        ]),
      ],
    ],
  },
  courses: courses(0, 3),
  planks: planks(9),
  pieces: (
    [
      [1, 1, 1, box(0, 0, 48, 7), [0, 48], 'left right low high'],
      [2, 1, 2, box(48, 0, 96, 7), [0, 48], 'left right low high'],
      [3, 1, 3, box(96, 0, 130, 7), [0, 34], 'left low high'],
      [4, 2, 3, box(0, 7, 13.5, 14), [34.5, 48], 'right low high'],
      [5, 2, 4, box(13.5, 7, 61.5, 14), [0, 48], 'left right low high'],
      [6, 2, 5, box(61.5, 7, 109.5, 14), [0, 48], 'left right low high'],
      [7, 2, 6, box(109.5, 7, 130, 14), [0, 20.5], 'left low high'],
      [8, 3, 6, box(0, 14, 21.5, 21), [26.5, 48], 'right low high'],
      [9, 3, 7, box(21.5, 14, 69.5, 21), [0, 48], 'left right low high'],
      [10, 3, 8, box(69.5, 14, 117.5, 21), [0, 48], 'left right low high'],
      [11, 3, 9, box(117.5, 14, 126, 21), [0, 10], 'left low high'],
    ] satisfies Row[]
  )
    .map(piece)
    .map(lean),
  joints: (
    [
      [1, 48, 0, 7, 1, 2],
      [1, 96, 0, 7, 2, 3],
      [2, 13.5, 7, 14, 4, 5],
      [2, 61.5, 7, 14, 5, 6],
      [2, 109.5, 7, 14, 6, 7],
      [3, 21.5, 14, 21, 8, 9],
      [3, 69.5, 14, 21, 9, 10],
      [3, 117.5, 14, 21, 10, 11],
    ] as const
  ).map(joint),
  breaches: [
    {
      rule: 'shortest end',
      value: CROSSING_14 - inches(117.5),
      limit: inches(10),
      at: [inches(117.5), inches(14)],
      pieces: [11],
      direction: '',
    },
  ],
  bound: { planks: 8, boxes: 1 },
}

/** Moves the two right corners of an end piece onto the leaning wall. */
function lean(piece: PublishedPiece): PublishedPiece {
  const ends: Record<number, Span> = {
    3: [inches(130), CROSSING_7],
    7: [CROSSING_7, CROSSING_14],
    11: [CROSSING_14, inches(126)],
  }
  const end = ends[piece.piece]
  if (end === undefined) return piece
  const [first, second, third, fourth] = piece.ring
  return { ...piece, ring: [first!, [end[0], second![1]], [end[1], third![1]], fourth!] }
}

export const HAND_MADE: readonly PublishedFloor[] = [offcuts, ripped, post, leaning]
