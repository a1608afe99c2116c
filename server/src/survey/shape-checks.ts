import type { Room } from '../job/job.ts'
import { NM_PER_FOOT } from '../units/length.ts'
import { roundToNm } from '../units/round.ts'
import { acrossFrom, checkValue, endsOf, type ShapeCheck } from './check-value.ts'
import { checkDistance } from './distance.ts'
import type { Solved } from './fixing.ts'
import { type PathVariance, pathVariance } from './path-variance.ts'
import { allowedFor, lengthFrom } from './reading.ts'
import { solvedVariance } from './solve-distances.ts'
import type { CheckResult } from './survey.ts'
import { directionOf, leftOf, lengthOf, minus, type Vector } from './vector.ts'
import type { ReadWall } from './walls.ts'

/** Each check reading of a squared-up room against its shape; those still to be taken are left out. */
export function traverseChecks(
  room: Room,
  walls: readonly ReadWall[],
  corners: readonly Vector[],
): readonly CheckResult[] {
  const variance = pathVariance(walls)
  return shapeChecks(room).flatMap(({ check }) =>
    resultOf(check, corners, () => allowedShapeDifference(check, corners, variance)),
  )
}

/** The same for a room fixed by distances: those that fix it agree by themselves. */
export function solvedChecks(
  room: Room,
  { corners, distances, way }: Solved,
): readonly CheckResult[] {
  const fixing = new Set(distances.flatMap(({ of }) => (of.kind === 'check' ? [of.index] : [])))
  const variance = solvedVariance(distances, corners, way)
  return shapeChecks(room).flatMap(({ check, index }) => {
    const found = resultOf(check, corners, () => {
      if (check.kind === 'square') return allowedSquare(check.corner, corners)
      const distance = checkDistance(check, index, corners.length)!
      const own = distance.sigma * distance.sigma
      return 2 * Math.sqrt(own + variance(distance))
    })
    return found.map((result) => ({ ...result, fixes: fixing.has(index) }))
  })
}

function shapeChecks(
  room: Room,
): readonly { readonly check: ShapeCheck; readonly index: number }[] {
  return room.checks.flatMap((check, index) =>
    check.kind === 'room tie' ? [] : [{ check, index }],
  )
}

function resultOf(
  check: ShapeCheck,
  corners: readonly Vector[],
  allowed: () => number,
): readonly CheckResult[] {
  const value = checkValue(check, corners)
  const read = check.kind === 'square' ? 0 : lengthFrom(check.reading)?.nm
  if (value === null || read === undefined) return []
  const [computed, difference] = [roundToNm(value), roundToNm(read - value)]
  return [{ check, computed, difference, allowed: roundToNm(allowed()), fixes: false }]
}

/**
 * By how much a reading may differ from a squared-up shape: two standard deviations of the reading and
 * of the way between its ends round the walls.
 */
export function allowedShapeDifference(
  check: ShapeCheck,
  corners: readonly Vector[],
  variance: PathVariance,
): number {
  if (check.kind === 'square') return allowedSquare(check.corner, corners)
  const own = lengthFrom(check.reading)?.sigma ?? 0
  return allowedFor([own, Math.sqrt(shapeVariance(check, corners, variance))])
}

function shapeVariance(
  check: Exclude<ShapeCheck, { kind: 'square' }>,
  corners: readonly Vector[],
  variance: PathVariance,
): number {
  if (check.kind === 'diagonal') {
    const [from, to] = [corners[check.from]!, corners[check.to]!]
    return variance(check.from, check.to, directionOf(from, to))
  }
  // A tie lies in one corner, which a squared-up room holds at its angle.
  if (check.kind === 'corner tie') return 0
  const off = leftOf(directionOf(...endsOf(check.from, corners)))
  return variance((check.from + 1) % corners.length, check.to, off)
}

/** One standard deviation of a mark, as common practice puts a reading in an empty room: 1/16 in. */
const MARK_SIGMA = NM_PER_FOOT / 192

/**
 * What a corner tested 3-4-5 may be out of square, along the shorter of its walls: the diagonal of the
 * largest such triangle that fits, in whole feet, is read within two standard deviations, and
 * dθ = c·dc/(a·b).
 */
function allowedSquare(corner: number, corners: readonly Vector[]): number {
  const at = corners[corner]!
  const legs = [corners.at(corner - 1)!, corners[(corner + 1) % corners.length]!]
  const [a, b] = legs.map((leg) => lengthOf(minus(leg, at))) as [number, number]
  const [shorter, longer] = [Math.min(a, b), Math.max(a, b)]
  const unit =
    Math.max(1, Math.floor(Math.min(shorter / 3, longer / 4) / NM_PER_FOOT)) * NM_PER_FOOT
  return (shorter * 2 * MARK_SIGMA * 5) / (12 * unit)
}

/** Whether a width, square off its wall, comes down beside the wall it is read to, by more than an inch. */
export function missesWall(check: ShapeCheck, corners: readonly Vector[]): boolean {
  if (check.kind !== 'across') return false
  const found = acrossFrom(check, corners)
  if (found === null) return true
  const far = lengthOf(minus(...endsOf(check.to, corners)))
  return found.endsAt < -NM_PER_FOOT / 12 || found.endsAt > far + NM_PER_FOOT / 12
}
