import type { Nm } from '../units/length.ts'
import { crossingAt, type Line, turn } from './exact.ts'
import type { Part } from './outline.ts'

/** Between two values of x, the least and the greatest y that a part reaches there. */
export interface Extent {
  readonly from: Nm
  readonly to: Nm
  readonly low: Nm
  readonly high: Nm
}

/**
 * The part from left to right in bands without a corner inside, with its extreme heights over each;
 * neighbours with equal heights are one. Heights on a slanted edge are rounded outward. The time is
 * n log n plus the edges that each band meets.
 */
export function bandsOf(part: Part): Extent[] {
  const edges = [part.rim, ...part.holes]
    .flatMap(({ points }) =>
      points.map((from, i) => rightward(from, points[(i + 1) % points.length]!)),
    )
    .filter(({ from, to }) => from.x < to.x)
    .sort((a, b) => a.from.x - b.from.x)
  const places = [...new Set(edges.flatMap(({ from, to }) => [from.x, to.x]))].sort((a, b) => a - b)
  const bands: Extent[] = []
  let active: Line[] = []
  let next = 0
  for (let i = 0; i + 1 < places.length; i++) {
    const from = places[i]!
    const to = places[i + 1]!
    active = active.filter((edge) => edge.to.x > from)
    while (next < edges.length && edges[next]!.from.x <= from) active.push(edges[next++]!)
    const band = {
      from,
      to,
      low: extreme(active, from, to, 'down'),
      high: extreme(active, from, to, 'up'),
    }
    const before = bands.at(-1)
    if (before && before.low === band.low && before.high === band.high) {
      bands[bands.length - 1] = { ...before, to }
    } else bands.push(band)
  }
  return bands
}

function rightward(a: Line['from'], b: Line['from']): Line {
  return a.x < b.x ? { from: a, to: b } : { from: b, to: a }
}

function extreme(edges: readonly Line[], from: Nm, to: Nm, way: 'down' | 'up'): Nm {
  const pick = way === 'down' ? Math.min : Math.max
  return edges.reduce(
    (best, edge) => pick(best, heightOn(edge, from, way), heightOn(edge, to, way)),
    way === 'down' ? Infinity : -Infinity,
  )
}

/** The height of an edge that runs to the right, at x, rounded down or up. */
export function heightOn(edge: Line, x: Nm, way: 'down' | 'up'): Nm {
  if (x === edge.from.x || edge.from.y === edge.to.y) return edge.from.y
  if (x === edge.to.x) return edge.to.y
  const y = crossingAt(
    { from: { x: edge.from.y, y: edge.from.x }, to: { x: edge.to.y, y: edge.to.x } },
    x,
  )
  const side = turn(edge.from, edge.to, { x, y })
  if (way === 'down') return side > 0 ? y - 1 : y
  return side < 0 ? y + 1 : y
}
