import type { Nm } from '../units/length.ts'
import { type Line, samePoint } from './exact.ts'
import { type Near, near } from './near.ts'
import type { Point } from './point.ts'

/**
 * Rings that were worked out one by one and rounded each by itself miss each other by a nanometre where
 * they should touch. This puts every corner that lies within `reach` of another ring's edge into that
 * edge, and makes one of corners that lie as close: then touching rings share their corners and edges.
 * Edges keep whatever they carry. Edges that shrink to nothing fall away.
 */
export function spliced<T extends Line>(rings: readonly (readonly T[])[], reach: Nm): T[][] {
  const lines = rings.flat()
  const grid = near(lines, reach)
  const corners = lines.map((line, i) => firstCornerNear(grid, line.from, i, reach))
  // Chains of close corners end at their first: a corner is never later than what it is made one with.
  const settled: Point[] = []
  for (const [i, at] of corners.entries()) settled.push(at === i ? lines[i]!.from : settled[at]!)
  const inside = cornersInEdges(grid, settled, reach)
  let at = 0
  return rings
    .map((ring) => {
      const first = at
      at += ring.length
      return ring.flatMap((edge, i) => {
        const from = settled[first + i]!
        const to = settled[first + ((i + 1) % ring.length)]!
        return walked(edge, [from, ...alongLine(from, to, inside.get(first + i) ?? []), to])
      })
    })
    .filter((ring) => ring.length > 2)
}

function firstCornerNear(grid: Near<Line>, point: Point, self: number, reach: Nm): number {
  let first = self
  for (const i of grid.at(point)) {
    const other = grid.lines[i]!.from
    if (i < first && Math.max(Math.abs(other.x - point.x), Math.abs(other.y - point.y)) <= reach) {
      first = i
    }
  }
  return first
}

function cornersInEdges(
  grid: Near<Line>,
  corners: readonly Point[],
  reach: Nm,
): Map<number, Point[]> {
  const inside = new Map<number, Point[]>()
  for (const point of corners) {
    for (const i of grid.at(point)) {
      const line = grid.lines[i]!
      if (distanceToLine(point, line) > reach || isNearEnd(point, line, reach)) continue
      const there = inside.get(i)
      if (there) there.push(point)
      else inside.set(i, [point])
    }
  }
  return inside
}

function isNearEnd(point: Point, { from, to }: Line, reach: Nm): boolean {
  return [from, to].some(
    (end) => Math.max(Math.abs(end.x - point.x), Math.abs(end.y - point.y)) <= reach,
  )
}

/** How far a point lies off a line with ends, in nm; good to a thousandth, for finding what is near. */
export function distanceToLine(point: Point, { from, to }: Line): number {
  const east = to.x - from.x
  const north = to.y - from.y
  const x = point.x - from.x
  const y = point.y - from.y
  const along = (x * east + y * north) / (east * east + north * north)
  const at = Math.max(0, Math.min(1, along))
  const offX = x - at * east
  const offY = y - at * north
  // Inside the line the cross product loses less than the difference of two long legs.
  if (at === along) return Math.abs(x * north - y * east) / Math.sqrt(east * east + north * north)
  return Math.sqrt(offX * offX + offY * offY)
}

function alongLine(from: Point, to: Point, points: readonly Point[]): Point[] {
  const along = ({ x, y }: Point) => (x - from.x) * (to.x - from.x) + (y - from.y) * (to.y - from.y)
  return [...points].sort((a, b) => along(a) - along(b))
}

/** The edge as steps through the given points, each carrying what the edge carries. */
function walked<T extends Line>(edge: T, points: readonly Point[]): T[] {
  const steps: T[] = []
  for (const [i, from] of points.entries()) {
    const to = points[i + 1]
    if (to && !samePoint(from, to)) steps.push({ ...edge, from, to })
  }
  return steps
}
