import { cross, directionOf, leftOf, lengthOf, minus, plus, times, type Vector } from './vector.ts'

/**
 * The corner of a triangle at distance `fromA` from a and `fromB` from b, on the side of a → b where
 * `near` lies. Null where the three lengths make no triangle.
 */
function apex(
  a: Vector,
  b: Vector,
  { fromA, fromB, near }: { readonly fromA: number; readonly fromB: number; readonly near: Vector },
): Vector | null {
  const base = lengthOf(minus(b, a))
  if (base === 0) return null
  const along = (fromA * fromA - fromB * fromB + base * base) / (2 * base)
  const height = fromA * fromA - along * along
  if (!(height > 0)) return null
  const way = directionOf(a, b)
  const side = cross(way, minus(near, a)) >= 0 ? 1 : -1
  return plus(plus(a, times(way, along)), times(leftOf(way), side * Math.sqrt(height)))
}

/**
 * The corners of a room of three walls, or of four walls and a diagonal, in closed form: the first
 * wall along its way, the other corners as apexes, bent to the sides on which `start` has them. Null
 * where the lengths make no triangle. The diagonal joins corner 0 and 2, or 1 and 3.
 */
export function byTriangles(
  walls: readonly number[],
  diagonal: { readonly nm: number; readonly from: number } | null,
  { start, way }: { readonly start: readonly Vector[]; readonly way: Vector },
): readonly Vector[] | null {
  const first: Vector = { x: 0, y: 0 }
  const second = times(way, walls[0]!)
  const [, right, far, left] = walls
  if (diagonal === null) {
    const third = apex(first, second, { fromA: far!, fromB: right!, near: start[2]! })
    return third && [first, second, third]
  }
  if (diagonal.from === 0) {
    const third = apex(first, second, { fromA: diagonal.nm, fromB: right!, near: start[2]! })
    const fourth = third && apex(first, third, { fromA: left!, fromB: far!, near: start[3]! })
    return third && fourth && [first, second, third, fourth]
  }
  const fourth = apex(first, second, { fromA: left!, fromB: diagonal.nm, near: start[3]! })
  const third = fourth && apex(second, fourth, { fromA: right!, fromB: far!, near: start[2]! })
  return third && fourth && [first, second, third, fourth]
}
