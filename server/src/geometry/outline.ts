import { type Line, samePoint, twiceArea } from './exact.ts'
import { holdersAmong } from './holders.ts'
import type { Point, Region, Ring } from './point.ts'

/** An edge of a region before it was cut: `id` counts through the rings of the region. */
export interface Whole extends Line {
  readonly id: number
}

/**
 * A ring that remembers, for each edge (edge i leaves point i), the edge that it is a part of; null for
 * an edge along a cut. Crossings are always worked out on the whole edge, so that the order of the
 * cuts changes nothing and each crossing is rounded once.
 */
export interface Outline {
  readonly points: readonly Point[]
  readonly wholes: readonly (Whole | null)[]
}

/** A connected piece of a region: its rim counter-clockwise, its holes clockwise. */
export interface Part {
  readonly rim: Outline
  readonly holes: readonly Outline[]
}

/** The rings of a region, with each edge as its own whole. */
export function outlinesOf(region: Region): Outline[] {
  let id = 0
  return region.map((points) => ({
    points,
    wholes: points.map((from, i) => ({ id: id++, from, to: points[(i + 1) % points.length]! })),
  }))
}

/** Sorts rings into connected parts: each hole to the rim around it. Rings without area fall away. */
export function partsOf(outlines: readonly Outline[]): Part[] {
  const rims: { rim: Outline; holes: Outline[] }[] = []
  const holes: Outline[] = []
  for (const outline of outlines) {
    const area = twiceArea(outline.points)
    if (area > 0n) rims.push({ rim: outline, holes: [] })
    else if (area < 0n) holes.push(outline)
  }
  if (holes.length === 0) return rims
  const all = rims.map(({ rim }) => rim.points)
  const around = all.length === 1 ? () => [0] : holdersAmong(all, false)
  for (const hole of holes) rims[around(hole.points)[0] ?? -1]?.holes.push(hole)
  return rims
}

/** A ring that meets itself in corners, as the rings between these. */
export function simpleOutlines(outline: Outline): Outline[] {
  const { points } = outline
  if (points.length < 6) return [outline]
  const found: Outline[] = []
  const path: number[] = []
  const last = new Map<string, number>()
  for (let i = 0; i < points.length; i++) {
    const key = `${points[i]!.x} ${points[i]!.y}`
    const before = last.get(key)
    if (before !== undefined) {
      const loop = path.splice(before)
      for (const at of loop) last.delete(`${points[at]!.x} ${points[at]!.y}`)
      found.push(pick(outline, loop))
    }
    last.set(key, path.length)
    path.push(i)
  }
  if (found.length === 0) return [outline]
  found.push(pick(outline, path))
  return found
}

function pick({ points, wholes }: Outline, indices: readonly number[]): Outline {
  return { points: indices.map((i) => points[i]!), wholes: indices.map((i) => wholes[i] ?? null) }
}

/**
 * The rings of a region with every corner that a cut put into its edges, taken from the pieces. Ring i
 * stays ring i, from the same first corner. Edges along a cut get none: a cut is straight.
 */
export function ringsWithCrossings(region: Region, pieces: readonly Outline[]): Ring[] {
  const onEdge = new Map<number, Point[]>()
  for (const { points, wholes } of pieces) {
    wholes.forEach((whole, i) => {
      if (!whole) return
      const there = onEdge.get(whole.id) ?? []
      there.push(points[i]!, points[(i + 1) % points.length]!)
      onEdge.set(whole.id, there)
    })
  }
  return outlinesOf(region).map(({ wholes }) =>
    wholes.flatMap((whole) => (whole ? alongEdge(whole, onEdge.get(whole.id) ?? []) : [])),
  )
}

/** The start of an edge and the corners inside it, in the order of walking it, each once. */
function alongEdge({ from, to }: Line, corners: readonly Point[]): Point[] {
  const east = Math.sign(to.x - from.x)
  const north = Math.sign(to.y - from.y)
  const sorted = [from, ...corners].sort((a, b) => east * (a.x - b.x) || north * (a.y - b.y))
  return sorted.filter(
    (point, i) => !samePoint(point, to) && (i === 0 || !samePoint(point, sorted[i - 1]!)),
  )
}
