import { turn } from './exact.ts'
import type { Ring, Vertex } from './layout.ts'

interface Edge {
  readonly index: number
  readonly a: Vertex
  readonly b: Vertex
  readonly low: number
  readonly high: number
}

/**
 * Where a ring touches or crosses itself, or null if nowhere.
 *
 * A ring is simple when no edge is a point, no edge runs back over the one before it, and edges that
 * do not follow one another have no point in common: then it is a closed curve without double points,
 * and splits the plane into one inside and one outside. Every such pair whose heights overlap is
 * tried; sorted by their low ends, the others are never reached.
 */
export function whereNotSimple(ring: Ring): Vertex | null {
  const edges = ring.map((a, index): Edge => {
    const b = ring[(index + 1) % ring.length]!
    return { index, a, b, low: Math.min(a[1], b[1]), high: Math.max(a[1], b[1]) }
  })
  for (const edge of edges) {
    const next = ring[(edge.index + 2) % ring.length]!
    if (isPoint(edge) || runsBack(edge.a, edge.b, next)) return edge.b
  }
  edges.sort((a, b) => a.low - b.low || a.index - b.index)
  for (const [i, edge] of edges.entries()) {
    for (let j = i + 1; j < edges.length && edges[j]!.low <= edge.high; j += 1) {
      const other = edges[j]!
      if (!follow(edge, other, ring.length) && meet(edge, other)) return edge.a
    }
  }
  return null
}

function isPoint({ a, b }: Edge): boolean {
  return a[0] === b[0] && a[1] === b[1]
}

function runsBack(a: Vertex, b: Vertex, c: Vertex): boolean {
  if (turn(a, b, c) !== 0) return false
  const opposite = (i: 0 | 1) => Math.sign(b[i] - a[i]) * Math.sign(c[i] - b[i]) < 0
  return opposite(0) || opposite(1)
}

function follow(a: Edge, b: Edge, count: number): boolean {
  const apart = Math.abs(a.index - b.index)
  return apart === 1 || apart === count - 1
}

/** Whether two edges have a point in common, ends included. */
function meet(e: Edge, f: Edge): boolean {
  const apart =
    Math.max(e.a[0], e.b[0]) < Math.min(f.a[0], f.b[0]) ||
    Math.max(f.a[0], f.b[0]) < Math.min(e.a[0], e.b[0]) ||
    e.high < f.low ||
    f.high < e.low
  if (apart) return false
  return (
    turn(e.a, e.b, f.a) * turn(e.a, e.b, f.b) <= 0 && turn(f.a, f.b, e.a) * turn(f.a, f.b, e.b) <= 0
  )
}
