import type { Side } from './patch.ts'
import { cross, dot, type Point, rounded, unit } from './point.ts'

/** A rim seen in the frame of the run: u along `axis`, v to its left; rounded but for quarter turns. */
export function turnedTo(axis: Point, rim: readonly Side[]): readonly Side[] {
  return rim.map((side) => ({ ...side, from: seen(axis, side.from), to: seen(axis, side.to) }))
}

function seen(axis: Point, at: Point): Point {
  const u = unit(axis)
  const place = { x: dot(u, at), y: cross(u, at) }
  return axis.x.n === 0n || axis.y.n === 0n ? place : rounded(place)
}
