import type { Point } from '../geometry/point.ts'
import { roundToNm } from '../units/round.ts'

/**
 * The frame of a run: u along the planks, v across them, right-handed, turned about the plan's origin.
 * `east` and `north` are whole numbers that give the direction of u; they need not be of unit length.
 */
export interface Frame {
  readonly east: number
  readonly north: number
}

/** Planks running east-west, and north-south. */
export const EAST_WEST: Frame = { east: 1, north: 0 }
export const NORTH_SOUTH: Frame = { east: 0, north: 1 }

/** Whether the frame is the plan turned by a whole number of quarter turns: then nothing is rounded. */
export function isQuarterTurn(frame: Frame): boolean {
  return frame.east === 0 || frame.north === 0
}

/** The plan's origin, about which the frame is turned. */
const ORIGIN: Point = { x: 0, y: 0 }

/**
 * Plan to frame, rounded once to whole nanometres (half to even); exact for quarter turns. What is
 * rounded is the way from `about` (in whole or half nanometres), so that corners round alike wherever
 * the house lies.
 */
export function intoFrame(frame: Frame, point: Point, about: Point = ORIGIN): Point {
  const { east, north } = unit(frame)
  const centre = isQuarterTurn(frame) ? ORIGIN : about
  const [x, y] = [point.x - centre.x, point.y - centre.y]
  return {
    x: roundToNm(centre.x * east + centre.y * north) + roundToNm(x * east + y * north),
    y: roundToNm(centre.y * east - centre.x * north) + roundToNm(y * east - x * north),
  }
}

/** Frame to plan, for drawing only: not rounded. */
export function outOfFrame(frame: Frame, point: Point): Point {
  const { east, north } = unit(frame)
  return {
    x: point.x * east - point.y * north + 0,
    y: point.x * north + point.y * east + 0,
  }
}

/** The direction at length one: exactly 0 and ±1 for quarter turns. */
function unit(frame: Frame): { readonly east: number; readonly north: number } {
  // Scaled first, so that the squares of a wall's nanometres neither overflow nor lose digits.
  const scale = Math.max(Math.abs(frame.east), Math.abs(frame.north))
  const east = frame.east / scale
  const north = frame.north / scale
  const length = Math.sqrt(east * east + north * north)
  return { east: east / length, north: north / length }
}
