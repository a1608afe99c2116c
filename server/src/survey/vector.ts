import type { Point } from '../geometry/point.ts'
import { roundToNm } from '../units/round.ts'

/** A displacement or place in the plan before rounding, in nanometres, or a direction of length 1. x east, y north. */
export interface Vector {
  readonly x: number
  readonly y: number
}

export const plus = (a: Vector, b: Vector): Vector => ({ x: a.x + b.x, y: a.y + b.y })
export const minus = (a: Vector, b: Vector): Vector => ({ x: a.x - b.x, y: a.y - b.y })
export const times = (a: Vector, k: number): Vector => ({ x: a.x * k, y: a.y * k })
export const dot = (a: Vector, b: Vector): number => a.x * b.x + a.y * b.y
/** Positive where b lies to the left of a. */
export const cross = (a: Vector, b: Vector): number => a.x * b.y - a.y * b.x
export const lengthOf = (a: Vector): number => Math.sqrt(a.x * a.x + a.y * a.y)
export const middleOf = (a: Vector, b: Vector): Vector => times(plus(a, b), 0.5)
/** A quarter turn to the left: walls are walked with the room on the right, so it points out of the room. */
export const leftOf = (a: Vector): Vector => ({ x: 0 - a.y, y: a.x })

/** The direction from a to b; east where they coincide. */
export function directionOf(a: Vector, b: Vector): Vector {
  const way = minus(b, a)
  const size = lengthOf(way)
  // Divided, not multiplied by 1/size: a wall along an axis has a direction of exactly 0 and 1.
  return size === 0 ? { x: 1, y: 0 } : { x: way.x / size, y: way.y / size }
}

/** The one rounding of a computed corner: half to even, to whole nanometres. */
export function toPoint(a: Vector): Point {
  return { x: roundToNm(a.x), y: roundToNm(a.y) }
}

/**
 * Where the line through a along p meets the line through b along q, as distances along p and q; null
 * where the directions are parallel within a millionth.
 */
export function meet(a: Vector, p: Vector, b: Vector, q: Vector): [number, number] | null {
  const turn = cross(p, q)
  if (Math.abs(turn) < 1e-6) return null
  const way = minus(b, a)
  return [cross(way, q) / turn, cross(way, p) / turn]
}
