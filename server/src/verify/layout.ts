import { flag, list, oneOf, orNull, pair, type Read, record, text, whole } from './reader.ts'

/**
 * The published layout as the proof reads it: its own reading of the format, key by key, so that a
 * slip in the part that writes it cannot hide in a type both share. Whole nanometres throughout.
 */
const LENGTH = whole(1)
const MARGIN = whole(0)
const COUNT = whole(1)
const VERTEX = pair(whole())
const RING = list(VERTEX, 3)
const SPAN = pair(whole())

const COURSE = record({ course: COUNT, low: whole(), high: whole(), order: COUNT })

const PIECE = record({
  piece: whole(0),
  course: COUNT,
  plank: whole(0),
  blank: whole(0),
  ring: RING,
  along: SPAN,
  across: SPAN,
  turned: flag,
  factory: record({ left: flag, right: flag, low: flag, high: flag }),
})

const JOINT = record({
  course: COUNT,
  at: whole(),
  low: whole(),
  high: whole(),
  leftPiece: whole(0),
  rightPiece: whole(0),
  parted: flag,
})

const ZONE = record({ doorway: text, from: whole(), to: whole(), low: whole(), high: whole() })

const BREACH = record({
  rule: oneOf('stagger', 'shortest end', 'narrowest rip', 'longest run', 'doorway joint'),
  value: whole(),
  limit: whole(),
  at: VERTEX,
  pieces: list(whole(0)),
  direction: oneOf('', 'along', 'across'),
})

const RULES = record({
  plankWidth: LENGTH,
  plankLengths: list(record({ length: LENGTH, perBox: COUNT }), 1),
  stagger: MARGIN,
  shortestEnd: MARGIN,
  narrowestRip: MARGIN,
  kerfAlong: MARGIN,
  kerfAcross: MARGIN,
  toSpare: MARGIN,
  laid: oneOf('left to right', 'right to left', 'either way'),
  longestRun: record({ along: orNull(LENGTH), across: orNull(LENGTH) }),
  pile: record({ pieces: MARGIN, courses: MARGIN }),
})

export const FLOOR = record({
  floor: text,
  product: text,
  frame: record({
    east: whole(-Number.MAX_SAFE_INTEGER, Number.MAX_SAFE_INTEGER),
    north: whole(-Number.MAX_SAFE_INTEGER, Number.MAX_SAFE_INTEGER),
  }),
  area: record({ rings: list(RING, 1), unsplit: list(RING, 1) }),
  rules: RULES,
  courses: list(COURSE, 1),
  planks: list(record({ plank: whole(0), length: LENGTH }), 1),
  pieces: list(PIECE, 1),
  joints: list(JOINT),
  doorways: list(ZONE),
  breaches: list(BREACH),
  bound: record({ planks: whole(0), boxes: whole(0) }),
})

/** The file around the floors; each floor is read by itself, so that one bad one hides no other. */
export const FILE = record({
  format: oneOf('floorscribe layout'),
  version: oneOf(1),
  unit: oneOf('nm'),
  job: text,
  floors: list((value) => ({ value })),
})

export type Floor = Read<typeof FLOOR>
export type Course = Read<typeof COURSE>
export type Piece = Read<typeof PIECE>
export type PublishedJoint = Read<typeof JOINT>
export type Zone = Read<typeof ZONE>
export type PublishedBreach = Read<typeof BREACH>
export type Vertex = readonly [u: number, v: number]
export type Ring = readonly Vertex[]
