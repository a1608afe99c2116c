import type { Point, Ring } from '../../server/src/geometry/point.ts'
import type { Opening, Reading, Recess, Room, Wall } from '../../server/src/job/job.ts'
import type { Name } from '../../server/src/language/tree.ts'
import type { Doorway, SurveyedRoom } from '../../server/src/survey/survey.ts'
import { NM_PER_INCH } from '../../server/src/units/length.ts'
import { printLength } from '../../server/src/units/print.ts'

/** Rooms already measured and placed, built by hand so that drawing and text need no survey. */

export const SPAN = { file: 'house.floor', start: 0, end: 4 }

/** A place in the plan from inches east and north. */
export function at(east: number, north: number): Point {
  return { x: Math.round(east * NM_PER_INCH), y: Math.round(north * NM_PER_INCH) }
}

export function name(text: string): Name {
  return { text, key: text.toLowerCase(), span: SPAN }
}

export function reading(nm: number | null): Reading {
  return {
    nm,
    sigma: NM_PER_INCH / 16,
    text: nm === null ? '?' : printLength(nm, 'feet-inches'),
    span: SPAN,
    about: false,
    doubtful: nm === null,
    plane: 'wall',
    again: [],
  }
}

/** A room from its corners in inches, clockwise from where its first wall begins. */
export function room(
  text: string,
  corners: readonly (readonly [number, number])[],
  more: Partial<SurveyedRoom> & { readonly of?: Partial<Room> } = {},
): SurveyedRoom {
  const points = corners.map(([east, north]) => at(east, north))
  const walls = points.map((from, index) => wall(index, from, points[(index + 1) % points.length]!))
  const outline = points.toReversed()
  const { of = {}, ...surveyed } = more
  return {
    room: roomSaid(text, walls, of),
    status: 'measured',
    corners: points,
    outline,
    // Edge i of the outline, walked the other way round, is wall n − 2 − i.
    edges: outline.map((_, i) => ({
      wall: (2 * points.length - 2 - i) % points.length,
      recess: null,
    })),
    closing: null,
    checks: [],
    closets: [],
    obstacles: [],
    network: 0,
    ...surveyed,
  }
}

function roomSaid(text: string, walls: readonly Wall[], of: Partial<Room>): Room {
  return {
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
    base: null,
    notes: [],
    span: SPAN,
    broken: false,
    ...of,
  } as Room
}

const WAYS: Record<string, string> = {
  '1,0': 'north',
  '0,-1': 'east',
  '-1,0': 'south',
  '0,1': 'west',
}

function wall(index: number, from: Point, to: Point): Wall {
  const [x, y] = [to.x - from.x, to.y - from.y]
  const label = WAYS[`${Math.sign(x)},${Math.sign(y)}`] ?? `slant ${index + 1}`
  return {
    index,
    label,
    name: null,
    heading: { kind: 'offset', east: x, north: y },
    reading: reading(Math.round(Math.sqrt(x * x + y * y))),
    bow: null,
    openTo: null,
    stair: null,
    parts: [],
    edge: { kind: null, gap: null, trim: null, span: null },
    span: SPAN,
    broken: false,
  }
}

/** A doorway between two rooms from its near and far left ends, looking out of `from`, in inches. */
export function doorway(
  from: string,
  to: string | null,
  faces: { readonly near: readonly [Point, Point]; readonly far: readonly [Point, Point] },
  more: Partial<Doorway> & { readonly sliding?: boolean } = {},
): Doorway {
  const { sliding = false, ...rest } = more
  const kind = more.kind ?? 'door'
  const width =
    Math.abs(faces.near[1].x - faces.near[0].x) + Math.abs(faces.near[1].y - faces.near[0].y)
  const thickness =
    Math.abs(faces.far[0].x - faces.near[0].x) + Math.abs(faces.far[0].y - faces.near[0].y)
  return {
    kind,
    label: `${from} to ${to ?? 'outside'}`,
    room: from,
    to,
    toText: to ?? 'outside',
    opening: openingSaid(kind, sliding),
    other: null,
    width,
    thickness,
    near: faces.near,
    far: faces.far,
    jambs: true,
    reaches: true,
    ...rest,
  }
}

function openingSaid(kind: Opening['kind'], sliding: boolean): Opening {
  return {
    kind,
    label: kind,
    name: null,
    place: null,
    to: null,
    thickness: null,
    jambs: true,
    sliding,
    trim: null,
    span: SPAN,
  }
}

export function closetSaid(label: string): Recess {
  return {
    kind: 'closet',
    label,
    place: null,
    deep: null,
    inside: null,
    leftReturn: null,
    rightReturn: null,
    thickness: null,
    gap: null,
    span: SPAN,
  }
}

/** A rectangle, counter-clockwise, in inches. */
export function box(west: number, south: number, east: number, north: number): Ring {
  return [at(west, south), at(east, south), at(east, north), at(west, north)]
}
