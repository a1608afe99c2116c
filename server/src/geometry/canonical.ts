import { type Line, samePoint, turn } from './exact.ts'
import type { Point, Region, Ring } from './point.ts'

/**
 * One form for one region: no repeated corner, none on a straight edge (exactly), no spike; each ring
 * from its lowest, then leftmost corner; rings by their first corner, then by the rest.
 */
export function canonical(region: Region): Region {
  return region
    .map(withoutStraight)
    .filter((ring) => ring.length > 2)
    .map(fromLowest)
    .sort(compareRings)
}

/** −1, 0 or 1: lower first, then further left. */
export function comparePoints(a: Point, b: Point): number {
  return Math.sign(a.y - b.y) || Math.sign(a.x - b.x)
}

/** Without corners where the ring does not turn: straight on, back on itself, or repeated. */
export function withoutStraight(ring: Ring): Ring {
  const kept: Point[] = []
  const push = (point: Point) => {
    while (kept.length > 1 && turn(kept.at(-2)!, kept.at(-1)!, point) === 0) kept.pop()
    if (kept.length === 0 || !samePoint(kept.at(-1)!, point)) kept.push(point)
  }
  for (const point of ring) push(point)
  let start = 0
  for (;;) {
    const rest = kept.length - start
    if (rest < 3) return []
    if (
      samePoint(kept.at(-1)!, kept[start]!) ||
      turn(kept.at(-2)!, kept.at(-1)!, kept[start]!) === 0
    )
      kept.pop()
    else if (turn(kept.at(-1)!, kept[start]!, kept[start + 1]!) === 0) start++
    else return kept.slice(start)
  }
}

/** The same ring begun at its lowest, then leftmost corner. */
export function fromLowest(ring: Ring): Ring {
  const at = lowestCorner(ring)
  return [...ring.slice(at), ...ring.slice(0, at)]
}

/** Rings given edge by edge in the same order and begun at the same corners; no corner is dropped. */
export function canonicalEdges<T extends Line>(rings: readonly (readonly T[])[]): T[][] {
  const begun = rings.map((edges) => {
    const at = lowestCorner(edges.map(({ from }) => from))
    const ring = [...edges.slice(at), ...edges.slice(0, at)]
    return { ring, corners: ring.map(({ from }) => from) }
  })
  return begun.sort((a, b) => compareRings(a.corners, b.corners)).map(({ ring }) => ring)
}

function lowestCorner(ring: Ring): number {
  let at = 0
  ring.forEach((point, i) => {
    if (comparePoints(point, ring[at]!) < 0) at = i
  })
  return at
}

function compareRings(a: Ring, b: Ring): number {
  for (let i = 0; i < Math.min(a.length, b.length); i++) {
    const order = comparePoints(a[i]!, b[i]!)
    if (order !== 0) return order
  }
  return a.length - b.length
}
