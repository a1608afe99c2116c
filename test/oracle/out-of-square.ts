import type { Check, Room } from './job.ts'
import { pairOf } from './phrases.ts'
import { add, length, less, type Point, point, rounded, scaled, toRight, unit } from './point.ts'
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
 * further corner is where two distances from corners already placed meet, the room on the right.
 */
export function triangulated(room: Room, takens: readonly Taken[]): readonly Point[] | null {
  const count = room.walls.length
  const [first] = coursesOf(room.walls, takens)
  const walls = takens.map(
    ({ length }, i): Distance => ({ between: [i, (i + 1) % count], long: length }),
  )
  const diagonals = room.checks.flatMap((check) => diagonalOf(room, check) ?? [])
  const known = [...walls, ...diagonals.slice(0, count - 3)]
  if (first === undefined || diagonals.length < count - 3) return null
  const corners = new Map([
    [0, point(0n, 0n)],
    [1, scaled(first.along, first.taken.length)],
  ])
  for (let round = 0; round < count; round += 1) {
    for (let corner = 0; corner < count; corner += 1) {
      const place = corners.has(corner) ? null : placed(corner, corners, known)
      if (place !== null) corners.set(corner, place)
    }
  }
  const ring = Array.from({ length: count }, (_, i) => corners.get(i))
  return ring.every((corner) => corner !== undefined) ? ring.map(rounded) : null
}

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

/** Where the distances from two placed corners meet; the ring runs clockwise. */
function placed(
  corner: number,
  corners: Map<number, Point>,
  known: readonly Distance[],
): Point | null {
  const from = known.flatMap(({ between: [a, b], long }) => {
    const other = a === corner ? b : b === corner ? a : null
    const at = other === null ? undefined : corners.get(other)
    return other === null || at === undefined ? [] : [{ other, at, long }]
  })
  const order = (place: number) => (place < corner ? place : place - 1000)
  const [one, two] = from.sort((a, b) => order(a.other) - order(b.other))
  if (one === undefined || two === undefined) return null
  return meetingOnRight(one, two)
}

interface Arc {
  readonly at: Point
  readonly long: Ratio
}

/** The corner of a triangle on the right of the way from one corner to the other. */
function meetingOnRight(one: Arc, two: Arc): Point | null {
  const base = length(less(two.at, one.at))
  const along = half(
    minus(base, over(minus(times(two.long, two.long), times(one.long, one.long)), base)),
  )
  const square = minus(times(one.long, one.long), times(along, along))
  if (compare(square, ZERO) < 0) return null
  const way = unit(less(two.at, one.at))
  return add(one.at, add(scaled(way, along), scaled(toRight(way), root(square))))
}
