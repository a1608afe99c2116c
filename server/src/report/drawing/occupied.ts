import type { Point, Ring } from '../../geometry/point.ts'

/**
 * What is already drawn where, so that lettering finds a free place. Only placing depends on it:
 * floating point is good enough, and it is the same on every machine.
 */
export interface Occupied {
  add(ring: Ring): void
  /** True where the convex ring overlaps something already there. */
  hits(ring: Ring): boolean
}

export function occupied(): Occupied {
  const taken: { readonly ring: Ring; readonly box: Box }[] = []
  return {
    add: (ring) => void taken.push({ ring, box: boxOf(ring) }),
    hits: (ring) => {
      const box = boxOf(ring)
      return taken.some((other) => boxesMeet(box, other.box) && overlap(ring, other.ring))
    },
  }
}

interface Box {
  readonly left: number
  readonly right: number
  readonly bottom: number
  readonly top: number
}

function boxOf(ring: Ring): Box {
  let [left, right, bottom, top] = [Infinity, -Infinity, Infinity, -Infinity]
  for (const { x, y } of ring) {
    left = Math.min(left, x)
    right = Math.max(right, x)
    bottom = Math.min(bottom, y)
    top = Math.max(top, y)
  }
  return { left, right, bottom, top }
}

function boxesMeet(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.bottom < b.top && b.bottom < a.top
}

/** Two rings overlap where an edge crosses an edge or one holds a corner of the other. */
export function overlap(a: Ring, b: Ring): boolean {
  if (a.some((point) => holds(b, point)) || b.some((point) => holds(a, point))) return true
  return edgesOf(a).some(([p, q]) => edgesOf(b).some(([r, s]) => cross(p, q, r, s)))
}

function edgesOf(ring: Ring): (readonly [Point, Point])[] {
  return ring.map((point, i) => [point, ring[(i + 1) % ring.length] ?? point] as const)
}

/** True strictly inside the ring, by counting crossings to the east. */
export function holds(ring: Ring, point: Point): boolean {
  let inside = false
  for (const [a, b] of edgesOf(ring)) {
    if (a.y > point.y === b.y > point.y) continue
    if (point.x < a.x + ((b.x - a.x) * (point.y - a.y)) / (b.y - a.y)) inside = !inside
  }
  return inside
}

function cross(p: Point, q: Point, r: Point, s: Point): boolean {
  return side(p, q, r) * side(p, q, s) < 0 && side(r, s, p) * side(r, s, q) < 0
}

function side(a: Point, b: Point, c: Point): number {
  return Math.sign((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x))
}
