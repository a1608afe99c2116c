import type { Distance } from './distance.ts'
import { solve, transpose } from './linear.ts'
import { dot, lengthOf, plus, times, type Vector } from './vector.ts'

/**
 * The corners that n walls and n − 3 further distances fix: Newton's method on the corners' places,
 * from a shape near by. The first corner stays where it is and the first wall keeps its way, which
 * leaves 2n − 3 unknowns for as many distances. Null where no such shape is found: the distances
 * cannot meet, or hardly fix it.
 */
export function solveDistances(
  distances: readonly Distance[],
  start: readonly Vector[],
  way: Vector,
): readonly Vector[] | null {
  const corners = onFirstWall(start, way)
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const rest = distances.map((distance) => distance.nm - distance.value(corners))
    const step = solve(jacobian(distances, corners, way), rest)
    if (step === null || !step.every(Number.isFinite)) return null
    const held = withinReach(step, corners)
    move(corners, held, way)
    if (held.every((part) => Math.abs(part) < SETTLED)) return settled(distances, corners)
  }
  return null
}

const MOST_ROUNDS = 60
/** A thousandth of a nanometre. */
const SETTLED = 1e-3
/** For the slope of a distance: small against a room, large against the last digit of a double. */
const NUDGE = 1000

/** The same corners with the second one on the first wall's way. */
function onFirstWall(corners: readonly Vector[], way: Vector): Vector[] {
  const placed = [...corners]
  placed[1] = plus(corners[0]!, times(way, Math.max(NUDGE, dot(way, corners[1]!))))
  return placed
}

/** How each distance grows with each unknown, by nudging it both ways. */
function jacobian(
  distances: readonly Distance[],
  corners: readonly Vector[],
  way: Vector,
): number[][] {
  return distances.map((distance) => slopes(distance, corners, way))
}

/** The unknowns are the second corner's place along the way, then east and north of each later one. */
export function slopes(
  distance: Pick<Distance, 'corners' | 'value'>,
  corners: readonly Vector[],
  way: Vector,
): number[] {
  const row: number[] = new Array(2 * corners.length - 3).fill(0)
  const slope = slopeOf(distance, corners)
  for (const corner of new Set(distance.corners)) {
    if (corner === 1) row[0] = slope(1, way)
    if (corner < 2) continue
    row[2 * corner - 3] = slope(corner, EAST)
    row[2 * corner - 2] = slope(corner, NORTH)
  }
  return row
}

/**
 * How a distance grows with east and north of every corner. No corner is held, so that what this says
 * of a shape does not hang on which of its walls is the first, nor on how long that one is.
 */
export function slopesOfAll(
  distance: Pick<Distance, 'corners' | 'value'>,
  corners: readonly Vector[],
): number[] {
  const row: number[] = new Array(2 * corners.length).fill(0)
  const slope = slopeOf(distance, corners)
  for (const corner of new Set(distance.corners)) {
    row[2 * corner] = slope(corner, EAST)
    row[2 * corner + 1] = slope(corner, NORTH)
  }
  return row
}

const EAST: Vector = { x: 1, y: 0 }
const NORTH: Vector = { x: 0, y: 1 }

/** How a distance grows as one corner moves one way, by nudging it there and back. */
function slopeOf(
  distance: Pick<Distance, 'value'>,
  corners: readonly Vector[],
): (corner: number, way: Vector) => number {
  const moved = [...corners]
  return (corner, way) => {
    const value = (sign: number) => {
      moved[corner] = plus(corners[corner]!, times(way, sign * NUDGE))
      return distance.value(moved)
    }
    const result = (value(1) - value(-1)) / (2 * NUDGE)
    moved[corner] = corners[corner]!
    return result
  }
}

/** Steps of more than a quarter of the shape's size lead astray: they are shortened. */
function withinReach(step: readonly number[], corners: readonly Vector[]): readonly number[] {
  const size = corners.reduce((most, corner) => Math.max(most, lengthOf(corner)), 1)
  const longest = step.reduce((most, part) => Math.max(most, Math.abs(part)), 0)
  const factor = longest > size / 4 ? size / 4 / longest : 1
  return factor === 1 ? step : step.map((part) => part * factor)
}

function move(corners: Vector[], step: readonly number[], way: Vector): void {
  corners[1] = plus(corners[1]!, times(way, step[0]!))
  for (let i = 2; i < corners.length; i++) {
    corners[i] = plus(corners[i]!, { x: step[2 * i - 3]!, y: step[2 * i - 2]! })
  }
}

function settled(distances: readonly Distance[], corners: Vector[]): readonly Vector[] | null {
  return distances.every((d) => Math.abs(d.value(corners) - d.nm) < 1) ? corners : null
}

/**
 * The variance of what a solved shape makes another distance, in square nanometres: the readings'
 * variances carried through the solution.
 */
export function solvedVariance(
  distances: readonly Distance[],
  corners: readonly Vector[],
  way: Vector,
): (other: Pick<Distance, 'corners' | 'value'>) => number {
  const byReading = transpose(jacobian(distances, corners, way))
  return (other) => {
    const weights = solve(byReading, slopes(other, corners, way))
    if (weights === null) return 0
    return weights.reduce((sum, weight, i) => {
      const part = weight * distances[i]!.sigma
      return sum + part * part
    }, 0)
  }
}
