import type { Point } from '../../geometry/point.ts'
import { NM_PER_FOOT, type Nm, type UnitStyle } from '../../units/length.ts'
import { printLength } from '../../units/print.ts'
import { roundToNm } from '../../units/round.ts'
import type { Label, Shape, SketchCorner, SketchWall } from '../scene.ts'
import type { HalfRead, HalfReadWall } from './half-read.ts'
import { groundOf, letter } from './letter.ts'
import { movedBy } from './side-by-side.ts'
import { direction, extent, left, middle, moved, readable } from './vector.ts'

/** Between rooms that nothing ties together. */
const APART: Nm = 5 * NM_PER_FOOT

export interface SketchOptions {
  readonly units: UnitStyle
  readonly em: Nm
  /** The upper left corner of the first; the others stand to its right, tops level. */
  readonly corner: Point
}

/** How wide rooms beside each other come to. */
export function sketchesWidth(rooms: readonly HalfRead[]): Nm {
  return rooms.reduce((wide, room) => {
    const { low, high } = extent(cornersOf(room))
    return wide + high.x - low.x + APART
  }, 0)
}

/** Rooms that are still being read, beside the plan: nobody knows yet where they lie. */
export function sketches(rooms: readonly HalfRead[], options: SketchOptions): Shape[] {
  let { x } = options.corner
  return rooms.flatMap((room) => {
    const { low, high } = extent(cornersOf(room))
    const by = { x: x - low.x, y: options.corner.y - high.y }
    x += high.x - low.x + APART
    return sketch(movedRoom(room, by), options)
  })
}

function cornersOf({ walls }: HalfRead): Point[] {
  return walls.flatMap(({ from, to }) => [from, to])
}

function movedRoom(room: HalfRead, by: Point): HalfRead {
  const move = movedBy(by)
  return {
    ...room,
    walls: room.walls.map((wall) => ({ ...wall, from: move(wall.from), to: move(wall.to) })),
    next: room.next && move(room.next),
    back: room.back.map(([from, to]) => [move(from), move(to)]),
  }
}

function sketch(room: HalfRead, options: SketchOptions): Shape[] {
  return [
    ...room.walls.map((wall) => sketchWall(room, wall, options)),
    ...nextCorner(room, options),
    name(room, options),
  ]
}

function sketchWall(
  { room }: HalfRead,
  { wall, from, to, read }: HalfReadWall,
  { units, em }: SketchOptions,
): SketchWall {
  const said = read && wall.reading.nm !== null ? printLength(wall.reading.nm, units) : '?'
  const along = direction(from, to)
  const height = Math.floor(em * 0.8)
  return {
    kind: 'sketch wall',
    id: `${room.name.key}: wall ${wall.index} so far`,
    span: wall.span,
    line: [from, to],
    read,
    lettering: letter(said, moved(middle(from, to), left(along), em * 0.9), height, {
      along: readable(along),
      tone: read ? 'plain' : 'quiet',
    }),
    title: `${wall.label} of ${room.name.text}: ${said === '?' ? 'to be read' : said}`,
  }
}

function nextCorner({ room, next, back }: HalfRead, { em }: SketchOptions): SketchCorner[] {
  if (next === null) return []
  const id = `${room.name.key}: next corner`
  return [{ kind: 'sketch corner', id, span: null, at: next, radius: roundToNm(em * 0.55), back }]
}

/** In the middle of what is drawn so far; below the wall where there is only one. */
function name(room: HalfRead, { em }: SketchOptions): Label {
  const { low, high } = extent(cornersOf(room))
  const flat = high.y - low.y < 4 * em
  const at = {
    x: roundToNm((low.x + high.x) / 2),
    y: flat ? low.y - roundToNm(em * 2) : roundToNm((low.y + high.y) / 2),
  }
  const { key, text, span } = room.room.name
  const below = { x: at.x, y: at.y - roundToNm(em * 1.2) }
  const lines = [
    letter(text, at, Math.floor(em * 1.05), { tone: 'heading' }),
    letter(countOf(room), below, Math.floor(em * 0.8), { tone: 'quiet' }),
  ]
  const { low: corner, high: opposite } = extent(lines.flatMap(groundOf))
  return {
    kind: 'label',
    id: `${key}: label`,
    span,
    plate: [corner, { x: opposite.x, y: corner.y }, opposite, { x: corner.x, y: opposite.y }],
    lines,
  }
}

function countOf({ walls }: HalfRead): string {
  const read = walls.filter(({ read }) => read).length
  return read === walls.length
    ? `${read} ${read === 1 ? 'wall' : 'walls'} so far`
    : `${read} of ${walls.length} walls read`
}
