import type { WallWords } from './wall-words.ts'

const HALF_TURN = Math.PI

/** How far a wall turns to the right from the wall before, in hundredths of a degree; to the left below 0. */
export function turnOf(before: WallWords, after: WallWords): number {
  const cross = before.east * after.north - before.north * after.east
  const dot = before.east * after.east + before.north * after.north
  return Math.round((angleOf(dot, -cross) * 18_000) / HALF_TURN)
}

/**
 * The angle of a direction from the first axis, in radians. With the four operations and roots alone,
 * which round alike on every machine: the tangent is halved until a short series gives its angle.
 */
function angleOf(x: number, y: number): number {
  if (x < 0) return (y < 0 ? -HALF_TURN : HALF_TURN) - angleOf(-x, y)
  if (Math.abs(y) > x)
    return (y < 0 ? -1 : 1) * (HALF_TURN / 2) - angleOf(Math.abs(y), y < 0 ? -x : x)
  let tangent = y / x
  for (let i = 0; i < 3; i += 1) tangent /= 1 + Math.sqrt(1 + tangent * tangent)
  const square = tangent * tangent
  const series = [13, 11, 9, 7, 5, 3].reduce((sum, odd) => 1 / odd - square * sum, 1 / 15)
  return 8 * tangent * (1 - square * series)
}
