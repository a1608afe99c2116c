import type { Floor, Ring, Vertex } from './layout.ts'
import type { Finding } from './report.ts'
import { place } from './say.ts'

/**
 * The area that is tiled is the area that was asked for, but for vertices put into its edges, each at
 * most 1 nm off: ring by ring, the unsplit vertices come in order, and between two of them only
 * vertices beside the edge that joins them, none behind the one before.
 */
export function checkUnsplit(floor: Floor): readonly Finding[] {
  const { rings, unsplit } = floor.area
  if (rings.length !== unsplit.length) {
    const text = `The area has ${rings.length} rings with its crossings and ${unsplit.length} without.`
    return [{ code: 'area-off-unsplit', text }]
  }
  return rings.flatMap((ring, i) => {
    const at = whereOff(ring, unsplit[i]!)
    if (at === null) return []
    const text = `Ring ${i} of the area leaves its unsplit edges near ${place(at)}.`
    return [{ code: 'area-off-unsplit', text, at }]
  })
}

function whereOff(ring: Ring, unsplit: Ring): Vertex | null {
  let next = 0
  for (const [i, a] of unsplit.entries()) {
    if (!same(ring[next], a)) return a
    const b = unsplit[(i + 1) % unsplit.length]!
    const isLast = i + 1 === unsplit.length
    let before = 0n
    for (next += 1; isLast ? next < ring.length : !same(ring[next], b); next += 1) {
      const p = ring[next]
      if (p === undefined) return b
      const along = dot(a, b, p)
      if (along < before || !isBeside(a, b, p)) return p
      before = along
    }
  }
  return null
}

function same(a: Vertex | undefined, b: Vertex): boolean {
  return a !== undefined && a[0] === b[0] && a[1] === b[1]
}

/** Whether p lies between a and b and at most 1 nm from the line through them. */
function isBeside(a: Vertex, b: Vertex, p: Vertex): boolean {
  const length = dot(a, b, b)
  const off = BigInt(b[0] - a[0]) * BigInt(p[1] - a[1]) - BigInt(b[1] - a[1]) * BigInt(p[0] - a[0])
  return dot(a, b, p) <= length && off * off <= length
}

/** (b − a) · (p − a) */
function dot(a: Vertex, b: Vertex, p: Vertex): bigint {
  return BigInt(b[0] - a[0]) * BigInt(p[0] - a[0]) + BigInt(b[1] - a[1]) * BigInt(p[1] - a[1])
}
