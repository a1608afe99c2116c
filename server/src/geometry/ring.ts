import { turn } from './exact.ts'
import type { Point, Ring } from './point.ts'

export { twiceArea as area2 } from './exact.ts'

/** Whether p lies on the straight line from a to b, its ends included. Exact. */
export function onSegment(p: Point, a: Point, b: Point): boolean {
  return turn(a, b, p) === 0 && between(p.x, a.x, b.x) && between(p.y, a.y, b.y)
}

const between = (value: number, a: number, b: number) =>
  Math.min(a, b) <= value && value <= Math.max(a, b)

/** Where a point lies by a simple ring of either orientation. Exact; linear in the ring's corners. */
export function placeInRing(p: Point, ring: Ring): 'inside' | 'rim' | 'outside' {
  let inside = false
  for (let i = 0; i < ring.length; i++) {
    const a = ring[i]!
    const b = ring[(i + 1) % ring.length]!
    if (onSegment(p, a, b)) return 'rim'
    // A half-open rule for heights, so that a corner level with p is counted once.
    if (a.y > p.y !== b.y > p.y && turn(a, b, p) === (b.y > a.y ? 1 : -1)) inside = !inside
  }
  return inside ? 'inside' : 'outside'
}

/** The least and greatest coordinates. The ring has at least one point. */
export interface Box {
  readonly west: number
  readonly south: number
  readonly east: number
  readonly north: number
}

export function boxOf(ring: Ring): Box {
  let [west, south, east, north] = [Infinity, Infinity, -Infinity, -Infinity]
  for (const { x, y } of ring) {
    west = Math.min(west, x)
    east = Math.max(east, x)
    south = Math.min(south, y)
    north = Math.max(north, y)
  }
  return { west, south, east, north }
}

/** Whether two boxes have more than an edge in common. */
export function boxesMeet(a: Box, b: Box): boolean {
  return a.west < b.east && b.west < a.east && a.south < b.north && b.south < a.north
}
