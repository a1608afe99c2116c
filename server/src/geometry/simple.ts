import { type Line, samePoint, turn } from './exact.ts'
import { meeting } from './meet.ts'
import type { Point, Ring } from './point.ts'

/** Two edges of a ring that meet where they should not; edge i runs from point i to the next. */
export interface Fault {
  readonly first: number
  readonly second: number
}

/**
 * The leftmost place where a ring crosses or touches itself, or null for a simple ring. No two points
 * that follow each other may be equal. M. I. Shamos and D. Hoey, Geometric Intersection Problems,
 * FOCS 1976: a line sweeps from left to right, and only edges that become neighbours on it are held
 * against each other, so that the cost grows as n log n whatever the shape.
 */
export function firstFault(ring: Ring): Fault | null {
  const edges = ring.map((from, i) => edgeOf(from, ring[(i + 1) % ring.length]!, i))
  const onSweep: Edge[] = []
  for (const event of eventsOf(edges)) {
    const { edge } = event
    const at = placeOf(edge, onSweep)
    const below = onSweep[at - 1]
    if (event.starts) {
      const fault = faultOf(below, edge, ring.length) ?? faultOf(edge, onSweep[at], ring.length)
      if (fault) return fault
      onSweep.splice(at, 0, edge)
    } else {
      const fault = faultOf(below, onSweep[at + 1], ring.length)
      if (fault) return fault
      onSweep.splice(at, 1)
    }
  }
  return null
}

/** An edge with its ends in the order in which the sweep meets them. */
interface Edge extends Line {
  readonly index: number
  readonly left: Point
  readonly right: Point
}

function edgeOf(from: Point, to: Point, index: number): Edge {
  return before(from, to) < 0
    ? { from, to, index, left: from, right: to }
    : { from, to, index, left: to, right: from }
}

const before = (a: Point, b: Point) => a.x - b.x || a.y - b.y

interface SweepEvent {
  readonly at: Point
  readonly starts: boolean
  readonly edge: Edge
}

/** At one point edges start before others end, so that all that touch there are held together. */
function eventsOf(edges: readonly Edge[]): SweepEvent[] {
  return edges
    .flatMap((edge) => [
      { at: edge.left, starts: true, edge },
      { at: edge.right, starts: false, edge },
    ])
    .sort((a, b) => before(a.at, b.at) || rank(a) - rank(b) || a.edge.index - b.edge.index)
}

const rank = (event: SweepEvent) => (event.starts ? 0 : 1)

/** Where an edge stands, or would stand, among those on the sweep, from below. */
function placeOf(edge: Edge, onSweep: readonly Edge[]): number {
  let low = 0
  let high = onSweep.length
  while (low < high) {
    const middle = (low + high) >>> 1
    if (isBelow(onSweep[middle]!, edge)) low = middle + 1
    else high = middle
  }
  return low
}

/** Whether `a`, which no edge of the sweep crosses so far, lies below `b` where both are. */
function isBelow(a: Edge, b: Edge): boolean {
  if (before(a.left, b.left) <= 0) {
    const side = turn(a.left, a.right, b.left) || turn(a.left, a.right, b.right)
    return side > 0 || (side === 0 && a.index < b.index)
  }
  const side = turn(b.left, b.right, a.left) || turn(b.left, b.right, a.right)
  return side < 0 || (side === 0 && a.index < b.index)
}

function faultOf(a: Edge | undefined, b: Edge | undefined, count: number): Fault | null {
  if (!a || !b) return null
  const how = meeting(a, b)
  if (how === 'apart') return null
  const gap = Math.abs(a.index - b.index)
  if (how === 'end to end' && (gap === 1 || gap === count - 1) && meetInTurn(a, b)) return null
  const first = Math.min(a.index, b.index)
  return { first, second: Math.max(a.index, b.index) }
}

/** Neighbours in the ring share the point between them, not their far ends. */
function meetInTurn(a: Edge, b: Edge): boolean {
  return samePoint(a.to, b.from) || samePoint(b.to, a.from)
}
