import type { Check, Room } from './job.ts'
import { pairOf } from './phrases.ts'
import {
  add,
  cross,
  length,
  less,
  type Point,
  point,
  scaled,
  toLeft,
  toRight,
  unit,
} from './point.ts'
import { compare, half, minus, over, type Ratio, root, times, ZERO } from './ratio.ts'
import { coursesOf } from './traverse.ts'
import { type Taken, taken } from './worth.ts'

/** How far apart two corners of a room are, by their places in the ring. */
interface Distance {
  readonly between: readonly [number, number]
  readonly long: Ratio
}

/**
 * The corners of a room of which the ways give the order only: the first wall keeps its way, and each
 * further corner is where two distances from corners already placed meet, on the side where the ways
 * put it.
 */
export function triangulated(room: Room, takens: readonly Taken[]): readonly Point[] | null {
  const count = room.walls.length
  const courses = coursesOf(room.walls, takens)
  const byWays = courses.map((_, i) =>
    courses
      .slice(0, i)
      .reduce((at, { along, taken: { length } }) => add(at, scaled(along, length)), ORIGIN),
  )
  const walls = takens.map(
    ({ length }, i): Distance => ({ between: [i, (i + 1) % count], long: length }),
  )
  const diagonals = room.checks.flatMap((check) => diagonalOf(room, check) ?? [])
  const known = [...walls, ...diagonals.slice(0, count - 3)]
  if (diagonals.length < count - 3) return null
  const corners = new Map([
    [0, ORIGIN],
    [1, byWays[1] ?? ORIGIN],
  ])
  for (let round = 0; round < count; round += 1) {
    for (let corner = 0; corner < count; corner += 1) {
      const place = corners.has(corner) ? null : placed(corner, corners, known, byWays)
      if (place !== null) corners.set(corner, place)
    }
  }
  const ring = Array.from({ length: count }, (_, i) => corners.get(i))
  return ring.every((corner) => corner !== undefined) ? ring : null
}

const ORIGIN = point(0n, 0n)

function diagonalOf(room: Room, { kind, readings, phrases }: Check): Distance | null {
  const read = taken(readings, room.tape)
  const ends = phrases.map((phrase) => pairOf(phrase.replace(/^from /i, ''), 'to')).find(Boolean)
  if (kind !== 'diagonal' || read === null || !ends) return null
  const between = ends.map((end) => cornerNamed(room, end))
  const [a, b] = between
  return a == null || b == null ? null : { between: [a, b], long: read.length }
}

/** A corner by its own name, or by the ways of its two walls: `north-west`. */
function cornerNamed({ walls }: Room, name: string): number | null {
  const own = walls.findIndex(({ corner }) => corner === name)
  if (own >= 0) return (own + 1) % walls.length
  const found = walls.findIndex(({ way }, i) => {
    const before = walls[(i + walls.length - 1) % walls.length]?.way
    return name === `${way}-${before}` || name === `${before}-${way}`
  })
  return found < 0 ? null : found
}

/** Where the distances from two placed corners meet. */
function placed(
  corner: number,
  corners: ReadonlyMap<number, Point>,
  known: readonly Distance[],
  byWays: readonly Point[],
): Point | null {
  const [one, two] = known.flatMap(({ between: [a, b], long }) => {
    const other = a === corner ? b : b === corner ? a : null
    const at = other === null ? undefined : corners.get(other)
    const rough = other === null ? undefined : byWays[other]
    return at === undefined || rough === undefined ? [] : [{ at, long, rough }]
  })
  const rough = byWays[corner]
  if (one === undefined || two === undefined || rough === undefined) return null
  const isOnLeft = compare(cross(less(two.rough, one.rough), less(rough, one.rough)), ZERO) > 0
  return meetingOf(one, two, isOnLeft)
}

interface Arc {
  readonly at: Point
  readonly long: Ratio
}

/** The third corner of a triangle, on the left or right of the way from one corner to the other. */
function meetingOf(one: Arc, two: Arc, isOnLeft: boolean): Point | null {
  const base = length(less(two.at, one.at))
  const longer = minus(times(two.long, two.long), times(one.long, one.long))
  const along = half(minus(base, over(longer, base)))
  const square = minus(times(one.long, one.long), times(along, along))
  if (compare(square, ZERO) < 0) return null
  const way = unit(less(two.at, one.at))
  const side = isOnLeft ? toLeft(way) : toRight(way)
  return add(one.at, add(scaled(way, along), scaled(side, root(square))))
}
