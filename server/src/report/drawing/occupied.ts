import { boxes } from '../../geometry/boxes.ts'
import { locatorOf } from '../../geometry/locate.ts'
import type { Point, Ring } from '../../geometry/point.ts'
import { type Box, boxesMeet, boxOf } from '../../geometry/ring.ts'

/**
 * What is already drawn where, so that lettering finds a free place. Only placing depends on it:
 * floating point is good enough, and it is the same on every machine.
 */
export interface Occupied {
  add(ring: Ring): void
  /** True where the convex ring overlaps something already there. */
  hits(ring: Ring): boolean
}

/** A ring of more corners is kept edge by edge: few of a house's walls are near any lettering. */
const MANY_CORNERS = 16

export function occupied(): Occupied {
  const plates = boxes<{ readonly ring: Ring; readonly box: Box }>()
  const edges = boxes<readonly [Point, Point]>()
  const large: { readonly box: Box; readonly holds: (point: Point) => boolean }[] = []
  return {
    add: (ring) => {
      const box = boxOf(ring)
      if (ring.length <= MANY_CORNERS) plates.add({ ring, box }, box)
      else {
        for (const edge of edgesOf(ring)) edges.add(edge, boxOf(edge))
        large.push({ box, holds: holderOf(ring) })
      }
    },
    hits: (ring) => {
      const box = boxOf(ring)
      return (
        plates.some(box, (other) => boxesMeet(box, other.box) && overlap(ring, other.ring)) ||
        edges.some(box, (edge) => reaches(edge, ring)) ||
        large.some((other) => boxesMeet(box, other.box) && ring.some(other.holds))
      )
    },
  }
}

/** Two rings overlap where an edge crosses an edge or one holds a corner of the other. */
export function overlap(a: Ring, b: Ring): boolean {
  return b.some((point) => holds(a, point)) || a.some((point) => holds(b, point)) || meet(a, b)
}

/** Whether an edge of a ring begins in another ring or crosses it. */
function reaches(edge: readonly [Point, Point], ring: Ring): boolean {
  return holds(ring, edge[0]) || meetsEdge(edge, ring)
}

function meet(a: Ring, b: Ring): boolean {
  return edgesOf(a).some((edge) => meetsEdge(edge, b))
}

function meetsEdge([p, q]: readonly [Point, Point], ring: Ring): boolean {
  for (let i = 0; i < ring.length; i += 1)
    if (cross(p, q, ring[i]!, ring[(i + 1) % ring.length]!)) return true
  return false
}

function edgesOf(ring: Ring): (readonly [Point, Point])[] {
  return ring.map((point, i) => [point, ring[(i + 1) % ring.length] ?? point] as const)
}

/** True strictly inside the ring, by counting crossings to the east. */
export function holds(ring: Ring, point: Point): boolean {
  let inside = false
  for (let i = 0; i < ring.length; i += 1) {
    const a = ring[i]!
    const b = ring[(i + 1) % ring.length]!
    if (a.y > point.y === b.y > point.y) continue
    if (point.x < a.x + ((b.x - a.x) * (point.y - a.y)) / (b.y - a.y)) inside = !inside
  }
  return inside
}

/** The same for a ring that is asked often. */
export function holderOf(ring: Ring): (point: Point) => boolean {
  if (ring.length <= MANY_CORNERS) return (point) => holds(ring, point)
  const locate = locatorOf(ring)
  return (point) => locate(point) === 'inside'
}

function cross(p: Point, q: Point, r: Point, s: Point): boolean {
  return side(p, q, r) * side(p, q, s) < 0 && side(r, s, p) * side(r, s, q) < 0
}

function side(a: Point, b: Point, c: Point): number {
  return Math.sign((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x))
}
