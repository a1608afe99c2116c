import type { Patch, Side } from './patch.ts'
import { cross, dot, less, type Point } from './point.ts'
import { compare, ratio, times } from './ratio.ts'

/** As far as rounding may put a corner off the wall that it lies on, squared. */
const OFF = ratio(4n)

/** A slanted wall goes through the corners of openings in it, though these are rounded. */
export function throughCorners(patches: readonly Patch[]): readonly Patch[] {
  const corners = patches.flatMap(({ sides }) => sides.map(({ from }) => from))
  return patches.map((patch) => ({
    ...patch,
    sides: patch.sides.flatMap((side) => through(side, corners)),
  }))
}

function through(side: Side, corners: readonly Point[]): readonly Side[] {
  const { from, to } = side
  const way = less(to, from)
  if (way.x.n === 0n || way.y.n === 0n) return [side]
  const square = dot(way, way)
  const along = (at: Point) => dot(less(at, from), way)
  const inner = corners.filter((at) => {
    const [on, off] = [along(at), cross(less(at, from), way)]
    const isBetween = on.n > 0n && compare(on, square) < 0
    return isBetween && off.n !== 0n && compare(times(off, off), times(OFF, square)) <= 0
  })
  const line = [from, ...inner.toSorted((a, b) => compare(along(a), along(b))), to]
  return line.slice(1).map((end, i) => ({ ...side, from: line[i] ?? end, to: end }))
}
