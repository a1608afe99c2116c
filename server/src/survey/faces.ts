import type { Point } from '../geometry/point.ts'
import type { Opening } from '../job/job.ts'
import type { Places } from './places.ts'
import type { Stretch } from './stretch.ts'
import { middleOf, type Vector } from './vector.ts'
import { pointAt, type WallFrame } from './wall-frame.ts'

/** An opening as its own room has it: the face towards that room. */
export interface Face {
  readonly opening: Opening
  readonly frame: WallFrame
  readonly stretch: Stretch
  /** Its ends as seen from the room. */
  readonly left: Point
  readonly right: Point
  readonly middle: Vector
}

/** The openings of a room that have a place on a wall. */
export function facesOf(places: Places): readonly Face[] {
  return places.openings.map(({ thing, frame, stretch }) => {
    const left = pointAt(frame, stretch.left)
    const right = pointAt(frame, stretch.right)
    return { opening: thing, frame, stretch, left, right, middle: middleOf(left, right) }
  })
}
