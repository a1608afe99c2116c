import type { Nm } from '../units/length.ts'
import { canonical } from './canonical.ts'
import type { Line } from './exact.ts'
import type { Region } from './point.ts'
import { spliced } from './splice.ts'
import { boundary } from './trace.ts'

/** Corners and edges of a region that come this near to each other, in nm, are one. */
const REACH: Nm = 2

/**
 * The region without slits and slivers of a nanometre or two, which rounding leaves where edges all but
 * coincide. After it no corner lies within `REACH` of an edge of which it is not an end: whatever is
 * then rounded by half a nanometre, no two edges cross that did not cross before.
 */
export function healed(region: Region): Region {
  const rings = region.map((ring) =>
    ring.map((from, i): Line => ({ from, to: ring[(i + 1) % ring.length]! })),
  )
  const lines = spliced(rings, REACH).flat()
  return canonical(boundary(lines).map((ring) => ring.map(({ from }) => from)))
}
