import { turn } from './exact.ts'
import type { Point, Ring } from './point.ts'
import { placeInRing } from './ring.ts'

/** Says where a point lies by a ring that was looked through once. */
export type Locate = (point: Point) => 'inside' | 'rim' | 'outside'

/** A shorter ring is gone through as quickly corner by corner. */
const FEW_CORNERS = 24

/**
 * Prepares a simple ring of either orientation for many questions where points lie. Exact, and the same
 * answer as `placeInRing`, but in log² n steps instead of n. The heights of the corners part the ring
 * into slabs, and the slabs make a tree: each edge is kept by the largest nodes that it runs through
 * from side to side. Edges of one node do not cross and so have an order from left to right, in which
 * those to the left of a point are counted by halving (J. L. Bentley's segment tree, from memory).
 * Memory: n log n.
 */
export function locatorOf(ring: Ring): Locate {
  if (ring.length < FEW_CORNERS) return (point) => placeInRing(point, ring)
  const levels = [...new Set(ring.map(({ y }) => y))].sort((a, b) => a - b)
  const slabs = levels.length - 1
  const size = powerAbove(slabs)
  const nodes: Rising[][] = Array.from({ length: 2 * size }, () => [])
  const onLevel = new Map<number, Span[]>(levels.map((y) => [y, []]))
  ring.forEach((from, i) => {
    const to = ring[(i + 1) % ring.length]!
    onLevel.get(from.y)!.push(spanOf(from, from.y === to.y ? to : from))
    if (from.y !== to.y) hang(nodes, rising(from, to), levels, size)
  })
  for (const edges of nodes) if (edges.length > 1) edges.sort(leftFirst)
  const spans = new Map([...onLevel].map(([y, found]) => [y, inOrder(found)]))
  return (point) => {
    if (isOnSpan(spans.get(point.y), point.x)) return 'rim'
    const slab = slabOf(levels, point.y)
    if (slab < 0 || slab >= slabs) return 'outside'
    let inside = false
    for (let at = size + slab; at > 0; at >>= 1) {
      const edges = nodes[at]
      if (edges === undefined || edges.length === 0) continue
      const left = toTheLeft(edges, point)
      if (left < 0) return 'rim'
      if (left % 2 === 1) inside = !inside
    }
    return inside ? 'inside' : 'outside'
  }
}

/** An edge that is not level, from its lower end to its upper one. */
interface Rising {
  readonly low: Point
  readonly high: Point
}

function rising(a: Point, b: Point): Rising {
  return a.y < b.y ? { low: a, high: b } : { low: b, high: a }
}

function powerAbove(count: number): number {
  let power = 1
  while (power < count) power *= 2
  return power
}

/** Puts an edge into the largest nodes whose slabs it runs through. */
function hang(nodes: Rising[][], edge: Rising, levels: readonly number[], size: number): void {
  let from = size + slabOf(levels, edge.low.y)
  let to = size + slabOf(levels, edge.high.y)
  for (; from < to; from >>= 1, to >>= 1) {
    if (from % 2 === 1) nodes[from++]!.push(edge)
    if (to % 2 === 1) nodes[--to]!.push(edge)
  }
}

/** The slab that begins at or below y; −1 below them all. */
function slabOf(levels: readonly number[], y: number): number {
  let low = 0
  let high = levels.length
  while (low < high) {
    const middle = (low + high) >>> 1
    if (levels[middle]! <= y) low = middle + 1
    else high = middle
  }
  return low - 1
}

/** Both run through one slab and do not cross: an end of one that is level with the other decides. */
function leftFirst(a: Rising, b: Rising): number {
  if (a === b) return 0
  const side =
    a.low.y <= b.low.y
      ? turn(a.low, a.high, b.low) || turn(a.low, a.high, b.high)
      : -turn(b.low, b.high, a.low) || -turn(b.low, b.high, a.high)
  // Left of a rising edge is the side of lower x.
  return side
}

/** How many of the edges lie to the left of a point level with them; −1 where it lies on one. */
function toTheLeft(edges: readonly Rising[], point: Point): number {
  let low = 0
  let high = edges.length
  while (low < high) {
    const middle = (low + high) >>> 1
    const side = turn(edges[middle]!.low, edges[middle]!.high, point)
    if (side === 0) return -1
    if (side < 0) low = middle + 1
    else high = middle
  }
  return low
}

interface Span {
  readonly from: number
  to: number
}

function spanOf(a: Point, b: Point): Span {
  return { from: Math.min(a.x, b.x), to: Math.max(a.x, b.x) }
}

function inOrder(spans: readonly Span[]): readonly Span[] {
  const merged: Span[] = []
  for (const span of [...spans].sort((a, b) => a.from - b.from)) {
    const last = merged.at(-1)
    if (last && span.from <= last.to) last.to = Math.max(last.to, span.to)
    else merged.push({ ...span })
  }
  return merged
}

function isOnSpan(spans: readonly Span[] | undefined, x: number): boolean {
  if (spans === undefined) return false
  let low = 0
  let high = spans.length
  while (low < high) {
    const middle = (low + high) >>> 1
    if (spans[middle]!.from <= x) low = middle + 1
    else high = middle
  }
  return low > 0 && x <= spans[low - 1]!.to
}
