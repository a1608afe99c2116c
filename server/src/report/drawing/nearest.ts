import type { Point } from '../../geometry/point.ts'
import { distance, extent } from './vector.ts'

/**
 * Answers how far a place lies from the nearest of some points; Infinity without any. They are sorted
 * along the longer side of the ground that they cover, and looked at from the place outward both ways
 * until what is left lies further off along that side alone.
 */
export function distanceToNearest(points: readonly Point[]): (from: Point) => number {
  const { low, high } = extent(points)
  const axis = high.x - low.x >= high.y - low.y ? 'x' : 'y'
  const sorted = points.toSorted((a, b) => a[axis] - b[axis])
  return (from) => {
    let after = firstFrom(sorted, from[axis], axis)
    let before = after - 1
    let least = Infinity
    while (before >= 0 && from[axis] - sorted[before]![axis] < least)
      least = Math.min(least, distance(from, sorted[before--]!))
    while (after < sorted.length && sorted[after]![axis] - from[axis] < least)
      least = Math.min(least, distance(from, sorted[after++]!))
    return least
  }
}

function firstFrom(sorted: readonly Point[], value: number, axis: 'x' | 'y'): number {
  let low = 0
  let high = sorted.length
  while (low < high) {
    const middle = (low + high) >>> 1
    if (sorted[middle]![axis] < value) low = middle + 1
    else high = middle
  }
  return low
}
