import type { Ring, Vertex } from './layout.ts'

/**
 * A whole number and an exact rest, 0 ≤ rest/of < 1: where a slanted edge crosses a line of whole
 * nanometres.
 */
export interface Height {
  readonly whole: number
  readonly rest: bigint
  readonly of: bigint
}

/** One interval of a cross-section, at the left and at the right side of its slab. */
export interface Interval {
  readonly low: readonly [Height, Height]
  readonly high: readonly [Height, Height]
}

/** Between two neighbouring cuts no vertex lies, so every interval is a trapezium. */
export interface Slab {
  readonly from: number
  readonly to: number
  readonly intervals: readonly Interval[]
}

interface Edge {
  readonly a: Vertex
  readonly b: Vertex
  /** 1 where the inside is above, −1 where it is below. */
  readonly winding: 1 | -1
}

interface Spanning {
  readonly winding: 1 | -1
  readonly at: readonly [Height, Height]
}

/**
 * Cuts a region at the u of each of its vertices, and at the further `cuts`, into slabs. Edges of one
 * region do not cross, so in a slab they keep one order; the inside is where the edges below add up
 * to something. All heights are exact.
 */
export function sections(rings: readonly Ring[], cuts: readonly number[] = []): readonly Slab[] {
  const edges = rings.flatMap(edgesOf).sort((e, f) => e.a[0] - f.a[0])
  const all = new Set([...rings.flatMap((ring) => ring.map(([u]) => u)), ...cuts])
  const lines = [...all].sort((a, b) => a - b)
  const slabs: Slab[] = []
  let active: Edge[] = []
  let next = 0
  for (let i = 0; i + 1 < lines.length; i += 1) {
    const [from, to] = [lines[i]!, lines[i + 1]!]
    active = active.filter(({ b }) => b[0] > from)
    while (next < edges.length && edges[next]!.a[0] <= from) {
      active.push(edges[next]!)
      next += 1
    }
    slabs.push({ from, to, intervals: intervals(active, from, to) })
  }
  return slabs
}

/** The region with u and v exchanged: its sections are those across. */
export function exchanged(rings: readonly Ring[]): readonly Ring[] {
  return rings.map((ring) => ring.map(([u, v]): Vertex => [v, u]))
}

/** high − low at a side of the slab (0 left, 1 right), rounded down. */
export function widthDown({ low, high }: Interval, side: 0 | 1): number {
  return high[side].whole - low[side].whole - (compareRests(high[side], low[side]) < 0 ? 1 : 0)
}

/** high − low at a side of the slab, rounded up. */
export function widthUp({ low, high }: Interval, side: 0 | 1): number {
  return high[side].whole - low[side].whole + (compareRests(high[side], low[side]) > 0 ? 1 : 0)
}

/** Below zero where a is lower than b, above zero where it is higher. */
export function compareHeights(a: Height, b: Height): number {
  return a.whole - b.whole || compareRests(a, b)
}

function compareRests(a: Height, b: Height): number {
  const difference = a.rest * b.of - b.rest * a.of
  return difference < 0n ? -1 : difference > 0n ? 1 : 0
}

function edgesOf(ring: Ring): Edge[] {
  return ring.flatMap((a, i): Edge[] => {
    const b = ring[(i + 1) % ring.length]!
    if (a[0] === b[0]) return []
    return a[0] < b[0] ? [{ a, b, winding: 1 }] : [{ a: b, b: a, winding: -1 }]
  })
}

function intervals(active: readonly Edge[], from: number, to: number): Interval[] {
  const spanning = active
    .map(
      ({ a, b, winding }): Spanning => ({
        winding,
        at: [heightAt(a, b, from), heightAt(a, b, to)],
      }),
    )
    .sort((e, f) => compareHeights(e.at[0], f.at[0]) || compareHeights(e.at[1], f.at[1]))
  const found: Interval[] = []
  let winding = 0
  let low: Spanning['at'] | null = null
  for (const edge of spanning) {
    winding += edge.winding
    if (low === null) low = edge.at
    else if (winding === 0) {
      found.push({ low, high: edge.at })
      low = null
    }
  }
  return found
}

/** v where the edge a → b, not upright, has this u. The double is a first guess; whole numbers settle it. */
function heightAt(a: Vertex, b: Vertex, u: number): Height {
  if (u === a[0] || a[1] === b[1]) return { whole: a[1], rest: 0n, of: 1n }
  if (u === b[0]) return { whole: b[1], rest: 0n, of: 1n }
  const of = BigInt(b[0] - a[0])
  let rise = Math.floor((b[1] - a[1]) * ((u - a[0]) / (b[0] - a[0])))
  let rest = BigInt(b[1] - a[1]) * BigInt(u - a[0]) - BigInt(rise) * of
  for (; rest < 0n; rest += of) rise -= 1
  for (; rest >= of; rest -= of) rise += 1
  return { whole: a[1] + rise, rest, of }
}
