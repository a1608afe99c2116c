import type { Point } from '../../geometry/point.ts'
import type { Room, Wall } from '../../job/job.ts'
import { turnsOf } from '../../job/turning.ts'
import { directionsOf } from '../../survey/direction.ts'
import { NM_PER_FOOT, type Nm } from '../../units/length.ts'
import { compare, ratio, sum } from '../../units/ratio.ts'
import { roundToNm } from '../../units/round.ts'
import { type Direction, distance } from './vector.ts'

/** A room that is still being read, as far as it can be drawn: about its own first corner. */
export interface HalfRead {
  readonly room: Room
  readonly walls: readonly HalfReadWall[]
  /** Where the tape goes on: the corner that ends the walls read in one go; null once all are read. */
  readonly next: Point | null
  /** What is left open from there to the first corner, where the walls do not come round. */
  readonly back: readonly (readonly [Point, Point])[]
}

export interface HalfReadWall {
  readonly wall: Wall
  readonly from: Point
  readonly to: Point
  readonly read: boolean
}

/** What a wall counts as that stands beside no read one: a middling room's (common practice, no source). */
const MIDDLING: Nm = 10 * NM_PER_FOOT

/**
 * The walls one after the other, each as long as it was read. Walls still to be read are as long as
 * brings the room round, and else about as long as the others: for the eye, nothing is counted from it.
 * Null where no wall says which way it runs.
 */
export function halfRead(room: Room): HalfRead | null {
  const walls = room.walls.slice(0, firstWithoutWay(room.walls))
  if (walls.length === 0) return null
  const headings = walls.map(({ heading }) => heading)
  const ways = directionsOf(headings)
  const round = walls.length === room.walls.length && comesRound(walls)
  const lengths = lengthsOf(walls, ways, round)
  const corners: Point[] = [{ x: 0, y: 0 }]
  for (const [i, { x, y }] of ways.entries()) {
    const from = corners[i]!
    const length = lengths[i]!
    corners.push({ x: roundToNm(from.x + x * length), y: roundToNm(from.y + y * length) })
  }
  const [first, last] = [corners[0]!, corners.at(-1)!]
  const unread = walls.findIndex(({ reading }) => reading.nm === null)
  const closes = round && distance(first, last) < MIDDLING / 100
  return {
    room,
    walls: walls.map((wall, i) => ({
      wall,
      from: corners[i]!,
      to: corners[i + 1]!,
      read: wall.reading.nm !== null,
    })),
    next: closes && unread < 0 ? null : corners[unread < 0 ? walls.length : unread]!,
    back: closes ? [] : [[last, first]],
  }
}

/** A slant without its way stands as a turn by nothing; so does every turn where no wall says a way. */
function firstWithoutWay(walls: readonly Wall[]): number {
  const known = walls.some(({ heading }) => heading.kind !== 'turn')
  const lost = walls.findIndex(
    ({ heading }) => heading.kind === 'turn' && (heading.degreesRight.n === 0n || !known),
  )
  return lost < 0 ? walls.length : lost
}

/** Once round to the right, by the ways alone; a wall that faces its neighbour has one missing between. */
function comesRound(walls: readonly Wall[]): boolean {
  const turns = turnsOf(walls.map(({ heading }) => heading))
  const folds = turns.some((turn) => compare(turn, ratio(180)) === 0)
  return !folds && compare(sum(turns), ratio(360)) === 0
}

/**
 * Unread lengths are the middling one and a part along what the read ones leave open: of all lengths
 * that bring the room round those that differ least from it (least squares, two conditions).
 */
function lengthsOf(walls: readonly Wall[], ways: readonly Direction[], round: boolean): number[] {
  const read = walls.flatMap(({ reading }) => (reading.nm === null ? [] : [reading.nm]))
  const middling =
    read.length === 0 ? MIDDLING : read.reduce((all, nm) => all + nm, 0) / read.length
  const lengths = walls.map(({ reading }) => reading.nm ?? middling)
  if (!round || read.length === walls.length) return lengths
  const unread = ways.filter((_, i) => walls[i]!.reading.nm === null)
  const open = ways.reduce(
    (left, { x, y }, i) => ({ x: left.x - x * lengths[i]!, y: left.y - y * lengths[i]! }),
    { x: 0, y: 0 },
  )
  const pull = pullOf(unread, open)
  return lengths.map((length, i) => {
    if (walls[i]!.reading.nm !== null) return length
    const longer = ways[i]!.x * pull.x + ways[i]!.y * pull.y
    return Math.max(middling / 4, length + longer)
  })
}

/** Solves Σ d dᵀ · pull = open; where all ways are parallel, only along them. */
function pullOf(ways: readonly Direction[], open: Direction): Direction {
  const xx = ways.reduce((all, { x }) => all + x * x, 0)
  const xy = ways.reduce((all, { x, y }) => all + x * y, 0)
  const yy = ways.reduce((all, { y }) => all + y * y, 0)
  const determinant = xx * yy - xy * xy
  if (determinant < 1e-6) {
    const [{ x, y }] = ways as readonly [Direction]
    const along = (x * open.x + y * open.y) / ways.length
    return { x: x * along, y: y * along }
  }
  return {
    x: (open.x * yy - open.y * xy) / determinant,
    y: (open.y * xx - open.x * xy) / determinant,
  }
}
