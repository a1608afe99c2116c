import type { Room } from '../job/job.ts'
import { checkDistance, type Distance, wallDistance } from './distance.ts'
import { independentRows } from './linear.ts'
import { slopesOfAll, solveDistances } from './solve-distances.ts'
import { spreadCorners } from './spread.ts'
import { byTriangles } from './triangle.ts'
import { lengthOf, minus, type Vector } from './vector.ts'
import type { ReadWall } from './walls.ts'

/** A room whose shape comes from distances: from which ones, and where its corners then lie. */
export interface Solved {
  readonly corners: readonly Vector[]
  /** Walls in order, then the diagonals and widths that fix the shape. */
  readonly distances: readonly Distance[]
  readonly way: Vector
}

export type Fixing =
  | { readonly found: 'solved'; readonly solved: Solved }
  /** `missing` more distances are needed; `wanted` is a diagonal that would help. */
  | {
      readonly found: 'loose'
      readonly missing: number
      readonly wanted: readonly [number, number] | null
    }
  /** The distances cannot meet. */
  | { readonly found: 'apart'; readonly distances: readonly Distance[] }

/** Beyond it the solution, which costs the cube of the walls, is refused. */
export const MOST_LOOSE_WALLS = 60

/** A distance that says less than this of itself about the shape hardly holds it. */
const LEAST_HOLD = 0.05

/**
 * Fixes an out-of-square room of n walls: by the walls and, in written order, the first n − 3
 * diagonals and widths that hold it (then ties, which hold it less), the others being checks. A width
 * between parallel walls says nothing of how far they are pushed over, and so is passed by.
 */
export function fixShape(room: Room, walls: readonly ReadWall[]): Fixing {
  const start = spreadCorners(walls)
  const way = walls[0]!.direction
  const candidates = [...walls.map((wall) => wallDistance(wall, walls.length)), ...fixers(room)]
  const wanted = 2 * walls.length - 3
  const rows = candidates.map((distance) => slopesOfAll(distance, start))
  const kept = independentRows(rows, wanted, LEAST_HOLD)
  const distances = kept.map((index) => candidates[index]!)
  if (kept.length < wanted) {
    const held = kept.map((index) => rows[index]!)
    return {
      found: 'loose',
      missing: wanted - kept.length,
      wanted: wantedDiagonal(held, start),
    }
  }
  const corners = cornersFrom(distances, start, way)
  return corners === null
    ? { found: 'apart', distances }
    : { found: 'solved', solved: { corners, distances, way } }
}

/** Closed form where triangles give it, else Newton's method. */
export function cornersFrom(
  distances: readonly Distance[],
  start: readonly Vector[],
  way: Vector,
): readonly Vector[] | null {
  const n = start.length
  const fixer = distances[n]
  if (n === 3) return byTriangles(lengths(distances), null, { start, way })
  if (n === 4 && fixer?.corners.length === 2) {
    const from = Math.min(...fixer.corners)
    return byTriangles(lengths(distances.slice(0, n)), { nm: fixer.nm, from }, { start, way })
  }
  return solveDistances(distances, start, way)
}

const lengths = (distances: readonly Distance[]) => distances.map((distance) => distance.nm)

/** Diagonals and widths in written order, then corner ties. */
function fixers(room: Room): readonly Distance[] {
  const found: Distance[] = []
  const ties: Distance[] = []
  room.checks.forEach((check, index) => {
    if (check.kind === 'square' || check.kind === 'room tie') return
    const distance = checkDistance(check, index, room.walls.length)
    if (distance !== null) (check.kind === 'corner tie' ? ties : found).push(distance)
  })
  return [...found, ...ties]
}

/** The first diagonal that says something the held distances do not. */
function wantedDiagonal(
  held: readonly (readonly number[])[],
  start: readonly Vector[],
): readonly [number, number] | null {
  const n = start.length
  for (let from = 0; from < n; from++) {
    for (let to = from + 2; to < n; to++) {
      const value = (corners: readonly Vector[]) => lengthOf(minus(corners[to]!, corners[from]!))
      const row = slopesOfAll({ corners: [from, to], value }, start)
      const kept = independentRows([...held, row], held.length + 1, LEAST_HOLD)
      if (kept.length > held.length) return [from, to]
    }
  }
  return null
}
