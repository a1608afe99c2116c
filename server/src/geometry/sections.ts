import type { Nm } from '../units/length.ts'
import { crossingAt, type Line, turn } from './exact.ts'
import type { Point, Ring } from './point.ts'

/** A height on a slanted edge, exactly: `whole` and the part `over`/`of` of a nanometre above it. */
interface Height {
  readonly whole: Nm
  readonly over: bigint
  readonly of: bigint
}

/** One interval of an upright section at the left and at the right side of its slab. */
export interface Interval {
  readonly low: readonly [Height, Height]
  readonly high: readonly [Height, Height]
}

/** A region between two upright lines with no corner between them: each interval is a trapezium. */
export interface Section {
  readonly from: Nm
  readonly to: Nm
  readonly intervals: readonly Interval[]
}

/** Cuts a region at the x of each corner. The time grows with the corners times the edges over each. */
export function sectionsOf(rings: readonly Ring[]): Section[] {
  const edges = rings.flatMap(edgesOf).sort((a, b) => a.from.x - b.from.x)
  const places = [...new Set(rings.flat().map(({ x }) => x))].sort((a, b) => a - b)
  const sections: Section[] = []
  let active: Edge[] = []
  let next = 0
  for (let i = 0; i + 1 < places.length; i++) {
    const from = places[i]!
    active = active.filter((edge) => edge.to.x > from)
    while (next < edges.length && edges[next]!.from.x <= from) active.push(edges[next++]!)
    sections.push({
      from,
      to: places[i + 1]!,
      intervals: intervalsOf(active, from, places[i + 1]!),
    })
  }
  return sections
}

/** How high an interval is at its left (0) or right (1) side, in whole nanometres. */
export function heightOf({ low, high }: Interval, side: 0 | 1, rounding: 'down' | 'up'): Nm {
  const whole = high[side].whole - low[side].whole
  const order = compareParts(high[side], low[side])
  if (rounding === 'down') return order < 0 ? whole - 1 : whole
  return order > 0 ? whole + 1 : whole
}

/** Whether the right side of one interval is the whole left side of another, exactly. */
export function sameSide(left: Interval, right: Interval): boolean {
  return (
    compareHeights(left.low[1], right.low[0]) === 0 &&
    compareHeights(left.high[1], right.high[0]) === 0
  )
}

/** An edge turned to run right; `opens` where the region lies above it. */
interface Edge extends Line {
  readonly opens: boolean
}

function edgesOf(ring: Ring): Edge[] {
  return ring.flatMap((a, i): Edge[] => {
    const b = ring[(i + 1) % ring.length]!
    if (a.x === b.x) return []
    return a.x < b.x ? [{ from: a, to: b, opens: true }] : [{ from: b, to: a, opens: false }]
  })
}

function intervalsOf(edges: readonly Edge[], from: Nm, to: Nm): Interval[] {
  const crossed = edges
    .map((edge) => ({ opens: edge.opens, at: [heightAt(edge, from), heightAt(edge, to)] as const }))
    .sort((a, b) => compareHeights(a.at[0], b.at[0]) || compareHeights(a.at[1], b.at[1]))
  const found: Interval[] = []
  let depth = 0
  let low: Interval['low'] | null = null
  for (const { opens, at } of crossed) {
    depth += opens ? 1 : -1
    low ??= at
    if (depth !== 0) continue
    found.push({ low, high: at })
    low = null
  }
  return found
}

const ON_THE_GRID = { over: 0n, of: 1n }

function heightAt(edge: Edge, x: Nm): Height {
  const { from, to } = edge
  if (x === from.x || from.y === to.y) return { whole: from.y, ...ON_THE_GRID }
  if (x === to.x) return { whole: to.y, ...ON_THE_GRID }
  const near = crossingAt({ from: exchanged(from), to: exchanged(to) }, x)
  const side = turn(from, to, { x, y: near })
  if (side === 0) return { whole: near, ...ON_THE_GRID }
  const whole = side > 0 ? near - 1 : near
  const of = BigInt(to.x - from.x)
  const over = BigInt(to.y - from.y) * BigInt(x - from.x) - BigInt(whole - from.y) * of
  return { whole, over, of }
}

/** A point with x and y exchanged: upright sections of exchanged rings are level ones. */
export function exchanged({ x, y }: Point): Point {
  return { x: y, y: x }
}

function compareHeights(a: Height, b: Height): number {
  return Math.sign(a.whole - b.whole) || compareParts(a, b)
}

function compareParts(a: Height, b: Height): -1 | 0 | 1 {
  const difference = a.over * b.of - b.over * a.of
  return difference < 0n ? -1 : difference > 0n ? 1 : 0
}
