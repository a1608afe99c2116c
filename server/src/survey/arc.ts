import type { Point } from '../geometry/point.ts'
import { atan2, cos, PI, sin } from '../units/functions.ts'
import { plus, times, toPoint, type Vector } from './vector.ts'
import { placeAt, type WallFrame } from './wall-frame.ts'

/** An arc is drawn as straight pieces of at most a 64th of a turn, as round things are, and of four at least. */
const LARGEST_PIECE = (2 * PI) / 64
const FEWEST_PIECES = 4

/**
 * The corners between the ends of a curved wall, from left to right. The floor must stay inside the
 * room: where the wall bows out, the corners lie on the arc (the pieces run inside it); where it bows
 * in, the pieces touch the arc from the room's side. `rise` is over the chord, positive out of the
 * room, at most half the chord.
 */
export function arcCorners(frame: WallFrame, rise: number): readonly Point[] {
  const height = Math.abs(rise)
  const half = frame.length / 2
  const radius = (half * half + height * height) / (2 * height)
  const side = rise > 0 ? 1 : -1
  const top = times(frame.out, side)
  const centre = placeAt(frame, half, side * (height - radius))
  const halfAngle = 2 * atan2(height, half)
  const pieces = Math.max(FEWEST_PIECES, Math.ceil((2 * halfAngle) / LARGEST_PIECE))
  const piece = (2 * halfAngle) / pieces
  const at = (angle: number, reach: number) =>
    toPoint(onArc(centre, { along: frame.along, top }, angle, reach))
  if (rise > 0) return range(pieces - 1).map((k) => at((k + 1) * piece - halfAngle, radius))
  const tangent = radius / cos(piece / 2)
  return range(pieces).map((k) => at((k + 0.5) * piece - halfAngle, tangent))
}

function onArc(
  centre: Vector,
  { along, top }: { readonly along: Vector; readonly top: Vector },
  angle: number,
  reach: number,
): Vector {
  return plus(centre, plus(times(along, reach * sin(angle)), times(top, reach * cos(angle))))
}

const range = (count: number) => Array.from({ length: count }, (_, i) => i)
