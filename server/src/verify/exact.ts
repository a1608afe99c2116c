import type { Ring, Vertex } from './layout.ts'

/**
 * Which way a → b → c turns: 1 to the left, −1 to the right, 0 straight on or back. Exact: the
 * doubles decide only where the sum of their possible errors (two products and a difference, each
 * within 2⁻⁵³) is far smaller than the result; whole numbers decide the rest.
 */
export function turn(a: Vertex, b: Vertex, c: Vertex): -1 | 0 | 1 {
  const left = (b[0] - a[0]) * (c[1] - a[1])
  const right = (b[1] - a[1]) * (c[0] - a[0])
  const difference = left - right
  if (Math.abs(difference) > (Math.abs(left) + Math.abs(right)) * 2 ** -50) {
    return difference > 0 ? 1 : -1
  }
  const exact = cross(a, b, c)
  return exact > 0n ? 1 : exact < 0n ? -1 : 0
}

/** (b − a) × (c − a): twice the area of the triangle, in square nanometres. */
export function cross(a: Vertex, b: Vertex, c: Vertex): bigint {
  return BigInt(b[0] - a[0]) * BigInt(c[1] - a[1]) - BigInt(b[1] - a[1]) * BigInt(c[0] - a[0])
}

/** Twice the area inside a ring, in square nanometres: positive when it runs counter-clockwise. */
export function doubledArea(ring: Ring): bigint {
  const from = ring[0]!
  let sum = 0n
  for (let i = 2; i < ring.length; i += 1) sum += cross(from, ring[i - 1]!, ring[i]!)
  return sum
}

/** The least box around vertices, sides along the axes. */
export interface Box {
  readonly west: number
  readonly east: number
  readonly low: number
  readonly high: number
}

/** The box around vertices; u runs from `west` to `east`, v from `low` to `high`. */
export function boxAround(vertices: Ring): Box {
  const first = vertices[0]!
  let [west, low] = first
  let [east, high] = first
  for (const [u, v] of vertices) {
    west = Math.min(west, u)
    east = Math.max(east, u)
    low = Math.min(low, v)
    high = Math.max(high, v)
  }
  return { west, east, low, high }
}

/** Whether the insides of two boxes meet. */
export function boxesOverlap(a: Box, b: Box): boolean {
  return a.west < b.east && b.west < a.east && a.low < b.high && b.low < a.high
}

/** Items by key, in order of first appearance. */
export function groupBy<K, T>(items: readonly T[], keyOf: (item: T) => K): Map<K, T[]> {
  const groups = new Map<K, T[]>()
  for (const item of items) {
    const key = keyOf(item)
    const group = groups.get(key)
    if (group === undefined) groups.set(key, [item])
    else group.push(item)
  }
  return groups
}
