import type { Check } from '../job/job.ts'
import {
  directionOf,
  dot,
  leftOf,
  lengthOf,
  meet,
  middleOf,
  minus,
  plus,
  times,
  type Vector,
} from './vector.ts'

export type ShapeCheck = Exclude<Check, { kind: 'room tie' }>
export type Across = Extract<Check, { kind: 'across' }>
type Tie = Extract<Check, { kind: 'corner tie' }>

/**
 * What a shape makes a check reading, in nanometres, not rounded: the corner-to-corner distance, the
 * width square off a wall, the distance between two marks; for a tested corner, how far the shorter
 * of its walls lies out of square at its end. Null for a width whose line never meets its far wall.
 */
export function checkValue(check: ShapeCheck, corners: readonly Vector[]): number | null {
  switch (check.kind) {
    case 'diagonal':
      return lengthOf(minus(corners[check.to]!, corners[check.from]!))
    case 'across':
      return acrossFrom(check, corners)?.width ?? null
    case 'corner tie':
      return lengthOf(
        minus(
          markOn(check.second, check.alongSecond, check, corners),
          markOn(check.first, check.alongFirst, check, corners),
        ),
      )
    case 'square':
      return outOfSquare(check.corner, corners)
  }
}

/** The corners whose places a check depends on. */
export function cornersIn(check: ShapeCheck, count: number): readonly number[] {
  const next = (corner: number) => (corner + 1) % count
  switch (check.kind) {
    case 'diagonal':
      return [check.from, check.to]
    case 'across':
      return [check.from, next(check.from), check.to, next(check.to)]
    case 'corner tie':
      return [check.first, next(check.first), check.second, next(check.second)]
    case 'square':
      return [(check.corner + count - 1) % count, check.corner, next(check.corner)]
  }
}

/** A width: where it starts, how long it is, and where it ends along the far wall from its left. */
export function acrossFrom(
  check: Across,
  corners: readonly Vector[],
): { readonly width: number; readonly endsAt: number } | null {
  const [left, right] = endsOf(check.from, corners)
  const along = directionOf(left, right)
  const start = placeAlong(check.at, left, right)
  const [farLeft, farRight] = endsOf(check.to, corners)
  const found = meet(start, times(leftOf(along), -1), farLeft, directionOf(farLeft, farRight))
  return found === null ? null : { width: Math.abs(found[0]), endsAt: found[1] }
}

function placeAlong(at: Across['at'], left: Vector, right: Vector): Vector {
  const along = directionOf(left, right)
  if (at.kind === 'middle') return middleOf(left, right)
  return at.kind === 'left'
    ? plus(left, times(along, at.distance))
    : minus(right, times(along, at.distance))
}

/** A mark read along a wall from the corner that is tied. */
function markOn(wall: number, distance: number, tie: Tie, corners: readonly Vector[]): Vector {
  const [left, right] = endsOf(wall, corners)
  const along = directionOf(left, right)
  return wall === tie.corner
    ? plus(left, times(along, distance))
    : minus(right, times(along, distance))
}

function outOfSquare(corner: number, corners: readonly Vector[]): number {
  const at = corners[corner]!
  const before = minus(at, corners.at(corner - 1)!)
  const after = minus(corners[(corner + 1) % corners.length]!, at)
  const [a, b] = [lengthOf(before), lengthOf(after)]
  return a === 0 || b === 0 ? 0 : Math.abs(dot(before, after)) / Math.max(a, b)
}

/** The left and right end of a wall as you face it. */
export function endsOf(wall: number, corners: readonly Vector[]): readonly [Vector, Vector] {
  return [corners[wall]!, corners[(wall + 1) % corners.length]!]
}
