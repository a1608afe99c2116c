import type { Point, Ring } from '../../server/src/geometry/point.ts'
import type {
  Floor,
  FloorEdge,
  Job,
  Opening,
  Product,
  ProductRules,
  Reading,
  Recess,
  Room,
  Wall,
} from '../../server/src/job/job.ts'
import { keyOf } from '../../server/src/language/name.ts'
import type { Name } from '../../server/src/language/tree.ts'
import type { Doorway, Survey, SurveyedRoom } from '../../server/src/survey/survey.ts'
import { NM_PER_INCH } from '../../server/src/units/length.ts'
import { ratio } from '../../server/src/units/ratio.ts'

/** Jobs and surveys by hand, in inches, for tests of the layout that need no text. */

export const inch = (n: number) => n * NM_PER_INCH
const span = { file: 'test.floor', start: 0, end: 1 }
export const name = (text: string): Name => ({ text, key: keyOf(text), span })
const given = <T>(value: T) => ({ value, span: null })

const reading = (nm: number): Reading => ({
  nm,
  sigma: 0,
  text: '',
  span,
  about: false,
  doubtful: false,
  plane: 'wall',
  again: [],
})

const WAYS = ['north', 'east', 'south', 'west'] as const

function wall(index: number, length: number, more: Partial<Wall>): Wall {
  const way = WAYS[index] ?? 'north'
  return {
    index,
    label: way,
    name: null,
    heading: { kind: 'way', way },
    reading: reading(length),
    bow: null,
    openTo: null,
    stair: null,
    parts: [],
    edge: { kind: null, gap: null, trim: null, span: null },
    span,
    broken: false,
    ...more,
  }
}

export interface RoomGiven {
  readonly walls?: Partial<Record<(typeof WAYS)[number], Partial<Wall>>>
  readonly room?: Partial<Room>
  readonly surveyed?: Partial<SurveyedRoom>
}

/** A room with its south-west corner at (x, y); walls north, east, south, west. Inches. */
export function room(
  text: string,
  [x, y, width, height]: readonly [number, number, number, number],
  more: RoomGiven = {},
): SurveyedRoom {
  const [w, s, e, n] = [inch(x), inch(y), inch(x + width), inch(y + height)]
  const corner = (px: number, py: number): Point => ({ x: px, y: py })
  const walls = WAYS.map((way, i) => wall(i, inch(i % 2 ? height : width), more.walls?.[way] ?? {}))
  const itself: Room = {
    name: name(text),
    walls,
    corners: [],
    openings: [],
    recesses: [],
    obstacles: [],
    checks: [],
    outOfSquare: false,
    subfloor: [],
    existing: [],
    base: { thickness: null, fate: 'kept', span },
    notes: [],
    span,
    broken: false,
    unfinished: false,
    ...more.room,
  }
  return {
    room: itself,
    status: 'measured',
    corners: [corner(w, n), corner(e, n), corner(e, s), corner(w, s)],
    outline: [corner(w, s), corner(e, s), corner(e, n), corner(w, n)],
    edges: [2, 1, 0, 3].map((index) => ({ wall: index, recess: null })),
    closing: null,
    checks: [],
    closets: [],
    obstacles: [],
    network: 0,
    ...more.surveyed,
  }
}

/** A room of any shape from its corners as they are read, clockwise, in inches; wall 0 runs from the first. */
export function shaped(
  text: string,
  corners: readonly (readonly [number, number])[],
  more: RoomGiven = {},
): SurveyedRoom {
  const count = corners.length
  const walls = corners.map((_, i) => wall(i, inch(1), { label: `wall ${i}` }))
  const read = ring(...corners)
  return room(text, [0, 0, 1, 1], {
    room: { walls, ...more.room },
    surveyed: {
      corners: read,
      outline: read.toReversed(),
      edges: read.map((_, i) => ({ wall: (2 * count - 2 - i) % count, recess: null })),
      ...more.surveyed,
    },
  })
}

export const ring = (...corners: readonly (readonly [number, number])[]): Ring =>
  corners.map(([x, y]) => ({ x: inch(x), y: inch(y) }))

/** A doorway in a wall; faces from left to right as seen from the room, in inches. */
export function doorway(
  from: string,
  to: string | null,
  near: readonly [readonly [number, number], readonly [number, number]],
  far: readonly [readonly [number, number], readonly [number, number]],
  more: Partial<Doorway> & { readonly opened?: Partial<Opening> } = {},
): Doorway {
  const { opened, ...rest } = more
  const points = (pair: typeof near) => ring(...pair) as unknown as [Point, Point]
  const [a, b] = points(near)
  const [c] = points(far)
  const width = Math.abs(b.x - a.x) + Math.abs(b.y - a.y)
  const thickness = Math.abs(c.x - a.x) + Math.abs(c.y - a.y)
  const opening: Opening = {
    kind: 'door',
    label: 'door',
    name: null,
    place: null,
    to: to === null ? null : name(to),
    thickness: given(thickness),
    jambs: true,
    sliding: false,
    trim: null,
    span,
    ...opened,
  }
  return {
    kind: opening.kind,
    label: `${from} to ${to ?? 'outside'}`,
    room: keyOf(from),
    to: to === null ? null : keyOf(to),
    toText: to ?? 'outside',
    opening,
    other: null,
    width,
    thickness,
    near: [a, b],
    far: points(far),
    jambs: opening.jambs,
    reaches: true,
    ...rest,
  }
}

export const closet = (
  label: string,
  wallIndex: number,
  width: number,
  thickness: number,
): Recess => ({
  kind: 'closet',
  label,
  place: {
    wall: wallIndex,
    from: 'left',
    distance: reading(0),
    width: reading(inch(width)),
    far: null,
  },
  deep: reading(0),
  inside: reading(0),
  leftReturn: null,
  rightReturn: null,
  thickness: given(inch(thickness)),
  gap: null,
  span,
})

export function survey(rooms: readonly SurveyedRoom[], doorways: readonly Doorway[] = []): Survey {
  return { rooms, doorways, loops: [], messages: [] }
}

export function product(rules: Partial<ProductRules> = {}): Product {
  return {
    name: name('larch'),
    width: inch(7),
    lengths: [{ length: inch(48), perBox: 10 }],
    thickness: null,
    perBox: 10,
    pad: 'attached',
    rules: {
      stagger: given(inch(8)),
      shortestEnd: given(inch(8)),
      narrowestRip: given(inch(2)),
      gap: given(inch(1 / 4)),
      longestRun: { along: null, across: null },
      doorways: 'through',
      laid: 'left to right',
      kerfAlong: given(0),
      kerfAcross: given(0),
      toSpare: given(inch(1 / 4)),
      ...rules,
    },
    spoil: { planks: 2, percent: null, span: null },
    spares: { planks: 0, boxes: 0 },
    span,
  }
}

export function floor(rooms: readonly string[], more: Partial<Floor> = {}): Floor {
  return {
    name: name('upstairs'),
    rooms: rooms.map(name),
    product: name('larch'),
    running: null,
    start: null,
    shift: null,
    breaks: [],
    edges: [],
    expects: [],
    span,
    broken: false,
    ...more,
  }
}

export function job(rules: Partial<ProductRules> = {}): Job {
  return {
    title: 'Test',
    site: '',
    date: '',
    revision: '',
    notes: [],
    units: 'feet-inches',
    jambsUnder: given(inch(1 / 2)),
    allowance: given(ratio(1n, 10n)),
    pile: { pieces: 8, courses: 6, span: null },
    rooms: [],
    products: [product(rules)],
    floors: [],
    prices: [],
    holds: [],
    accepts: [],
  }
}

export const breakLine = (from: string, to: string): Floor['breaks'][number] => ({
  from: name(from),
  to: name(to),
  called: null,
  trim: 't moulding',
  span,
})

export const edgeBetween = (
  from: string,
  to: string,
  more: Partial<FloorEdge> = {},
): FloorEdge => ({
  where: { kind: 'doorway', from: name(from), to: name(to), called: null },
  kind: null,
  gap: null,
  trim: null,
  span,
  ...more,
})

export const edgeOfWall = (
  text: string,
  index: number,
  more: Partial<FloorEdge> = {},
): FloorEdge => ({
  where: { kind: 'wall', room: name(text), wall: index },
  kind: null,
  gap: null,
  trim: null,
  span,
  ...more,
})
