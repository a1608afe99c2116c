import type { Point, Ring } from '../../geometry/point.ts'
import type { SurveyedRoom } from '../../survey/survey.ts'
import type { Nm, UnitStyle } from '../../units/length.ts'
import { printLength } from '../../units/print.ts'
import { roundToNm } from '../../units/round.ts'
import type { Dimension } from '../scene.ts'
import { groundOf, letter, widthOf } from './letter.ts'
import type { Occupied } from './occupied.ts'
import { sizesSaid } from './same-size.ts'
import {
  type Direction,
  direction,
  distance,
  left,
  middle,
  moved,
  opposite,
  plate,
  readable,
} from './vector.ts'

export interface DimensionOptions {
  readonly units: UnitStyle
  readonly em: Nm
  /** Thickness of drawn walls: a dimension outside stands clear of it. */
  readonly thickness: Nm
  /** Rooms and their walls: nothing that belongs outside may touch them. */
  readonly house: Occupied
  /** Lettering that is there already. */
  readonly taken: Occupied
}

/** One wall between its corners, the room on the right of the way from `from` to `to`. */
interface WallLine {
  readonly room: SurveyedRoom
  readonly wall: number
  readonly from: Point
  readonly to: Point
  readonly length: Nm
}

/**
 * Each wall's reading, outside the house where it is free. In rooms of four walls the label gives the
 * size of what is hidden between rooms; in others a wall is then dimensioned inside its room, unless a
 * parallel one already says about the same.
 */
export function dimensions(rooms: readonly SurveyedRoom[], options: DimensionOptions): Dimension[] {
  const walls = rooms.flatMap(wallLines)
  const outside = new Map<WallLine, Dimension>()
  for (const wall of walls.toSorted((a, b) => b.length - a.length)) {
    const made = placed(wall, outsideOffsets(options), options)
    if (made !== null) outside.set(wall, made)
  }
  const said = new Map(rooms.map((room) => [room, sizesSaid()]))
  const say = ({ room, from, to, length }: WallLine) =>
    said.get(room)!.add(direction(from, to), length)
  const shown = walls.filter((wall) => outside.has(wall))
  for (const wall of shown) say(wall)
  const inside = walls.flatMap((wall) => {
    const { room, from, to, length } = wall
    if (isFourSided(room) || said.get(room)!.has(direction(from, to), length)) return []
    const made = placed(wall, insideOffsets(options), options)
    if (made !== null) say(wall)
    return made === null ? [] : [made]
  })
  return [...shown.flatMap((wall) => outside.get(wall) ?? []), ...inside]
}

export function isFourSided(room: SurveyedRoom): boolean {
  return room.corners.length === 4
}

function wallLines(room: SurveyedRoom): WallLine[] {
  return room.corners.map((from, wall) => {
    const to = room.corners[(wall + 1) % room.corners.length] ?? from
    const read = room.room.walls[wall]?.reading.nm ?? null
    return { room, wall, from, to, length: read ?? roundToNm(distance(from, to)) }
  })
}

function outsideOffsets({ em, thickness }: DimensionOptions): number[] {
  return [thickness + em * 1.8, thickness + em * 3.2]
}

/** Negative offsets lie inside the room. */
function insideOffsets({ em }: DimensionOptions): number[] {
  return [-em * 1.1, -em * 2.4, -em * 3.8]
}

/** The first offset where the whole dimension is free, or null. */
function placed(
  wall: WallLine,
  offsets: readonly number[],
  options: DimensionOptions,
): Dimension | null {
  for (const offset of offsets) {
    const { shape, ground, full } = dimensionAt(wall, offset, options)
    const blocked = (ring: Ring): boolean =>
      options.taken.hits(ring) || (offset > 0 && options.house.hits(ring))
    if (ground.some(blocked)) continue
    for (const ring of full) options.taken.add(ring)
    return shape
  }
  return null
}

interface Drawn {
  readonly shape: Dimension
  /** What must be free for it: the band of its line and the ground of its lettering. */
  readonly ground: readonly Ring[]
  /** What it takes from those that come after. */
  readonly full: readonly Ring[]
}

function dimensionAt(wall: WallLine, offset: number, options: DimensionOptions): Drawn {
  const { em, thickness, units } = options
  const along = direction(wall.from, wall.to)
  const outward = left(along)
  const ends = [moved(wall.from, outward, offset), moved(wall.to, outward, offset)] as const
  const text = printLength(wall.length, units)
  const height = Math.floor(em * 0.8)
  const lettering = lettered(text, { ends, along, height, fits: distance(...ends) })
  const side = offset > 0 ? thickness + em * 0.35 : -em * 0.2
  return {
    shape: {
      kind: 'dimension',
      id: `${wall.room.room.name.key}: wall ${wall.wall} length`,
      span: wall.room.room.walls[wall.wall]?.reading.span ?? null,
      line: ends,
      extensions: [wall.from, wall.to].map((corner) =>
        extension(corner, outward, side, offset, em),
      ),
      ticks: ends.map((end) => tick(end, along, outward, em)),
      lettering,
    },
    ground: [clear(ends, along, options), groundOf(lettering)],
    full: [plate(middle(...ends), along, distance(...ends), em), groundOf(lettering)],
  }
}

/** The band of the line but for its ends: at an inner corner they run into the next wall. */
function clear(
  ends: readonly [Point, Point],
  along: Direction,
  { em, thickness }: DimensionOptions,
): Ring {
  const long = distance(...ends)
  const shortened = Math.max(long * 0.3, long - 2.1 * thickness)
  return plate(middle(...ends), along, shortened, em * 0.7)
}

interface Place {
  readonly ends: readonly [Point, Point]
  readonly along: Direction
  readonly height: Nm
  readonly fits: number
}

/** Above its line as one reads it. */
function lettered(text: string, { ends, along, height, fits }: Place): Dimension['lettering'] {
  const reads = readable(along)
  const size = Math.min(height, Math.floor((height * fits * 0.92) / widthOf(text, height)))
  const at = moved(middle(...ends), left(reads), height * 0.72)
  return letter(text, at, Math.max(size, Math.floor(height * 0.6)), { along: reads })
}

function extension(
  corner: Point,
  outward: Direction,
  from: number,
  to: number,
  em: Nm,
): readonly [Point, Point] {
  const past = to > 0 ? em * 0.3 : -em * 0.3
  return [moved(corner, outward, from), moved(corner, outward, to + past)]
}

/** A short stroke at half a right angle, as plans mark the end of a dimension. */
function tick(end: Point, along: Direction, outward: Direction, em: Nm): readonly [Point, Point] {
  const slant = { x: along.x + outward.x, y: along.y + outward.y }
  return [moved(end, opposite(slant), em * 0.22), moved(end, slant, em * 0.22)]
}
