import type { Point, Ring } from '../geometry/point.ts'
import {
  directionOf,
  leftOf,
  lengthOf,
  minus,
  plus,
  times,
  toPoint,
  type Vector,
} from './vector.ts'

/** A wall as it lies after adjustment: places on it are counted from its left end and square out of the room. */
export interface WallFrame {
  readonly wall: number
  readonly left: Point
  readonly right: Point
  readonly length: number
  /** Along the wall from left to right, of length 1. */
  readonly along: Vector
  /** Square out of the room, of length 1. */
  readonly out: Vector
}

export function wallFrame(corners: Ring, wall: number): WallFrame {
  const left = corners[wall]!
  const right = corners[(wall + 1) % corners.length]!
  const along = directionOf(left, right)
  return { wall, left, right, length: lengthOf(minus(right, left)), along, out: leftOf(along) }
}

/** The place so far along a wall and so far out of the room, not rounded. */
export function placeAt(frame: WallFrame, along: number, out = 0): Vector {
  return plus(plus(frame.left, times(frame.along, along)), times(frame.out, out))
}

/** The same, rounded once to whole nanometres; the wall's own ends come out as they are. */
export function pointAt(frame: WallFrame, along: number, out = 0): Point {
  if (out === 0 && along === 0) return frame.left
  if (out === 0 && along === frame.length) return frame.right
  return toPoint(placeAt(frame, along, out))
}

/** A rectangle on a wall, counter-clockwise: from `along[0]` to `along[1]`, from `out[0]` to `out[1]`. */
export function rectangleOn(
  frame: WallFrame,
  along: readonly [number, number],
  out: readonly [number, number],
): Ring {
  return [
    pointAt(frame, along[0], out[0]),
    pointAt(frame, along[1], out[0]),
    pointAt(frame, along[1], out[1]),
    pointAt(frame, along[0], out[1]),
  ]
}
