import type { Floor, Ring } from '../layout.ts'
import type { Breach } from '../report.ts'
import { compareHeights, type Interval, type Slab, sections, widthDown } from '../sections.ts'

/** At most a thousandth of a millimetre wide counts as coming to a point. */
const POINT = 1000

/**
 * Pieces with a strip, leg or neck narrower than the narrowest rip. Between two neighbouring vertices
 * every strip of a piece is a trapezium, narrowest at one of its sides. Where it only narrows until it
 * comes to a point, its widest place counts; nothing where that is no longer than the narrowest rip.
 */
export function narrowestRipBreaches({ pieces, rules }: Floor): readonly Breach[] {
  const limit = rules.narrowestRip
  return pieces.flatMap(({ piece, ring }) => {
    const value = narrowest(ring, limit)
    if (value === null || value >= limit) return []
    return [{ rule: 'narrowest rip', value, limit, at: ring[0]!, pieces: [piece], direction: '' }]
  })
}

function narrowest(ring: Ring, limit: number): number | null {
  const slabs = sections([ring])
  const inPoints = new Set<Interval>()
  let least: number | null = null
  const count = (width: number) => {
    least = least === null ? width : Math.min(least, width)
  }
  slabs.forEach(({ intervals }, at) => {
    for (const interval of intervals) {
      for (const end of [0, 1] as const) {
        const point = pointEndingAt(slabs, at, interval, end)
        if (point === null) continue
        for (const part of point.parts) inPoints.add(part)
        if (point.length > limit) count(point.widest)
      }
    }
  })
  for (const interval of slabs.flatMap(({ intervals }) => intervals)) {
    const sides = [widthDown(interval, 0), widthDown(interval, 1)] as const
    if (!inPoints.has(interval) && Math.max(...sides) > POINT) count(Math.min(...sides))
  }
  return least
}

interface Point {
  readonly parts: readonly Interval[]
  readonly length: number
  readonly widest: number
}

/** Followed away from its end (side 0 left, 1 right) for as long as it gets no narrower. */
function pointEndingAt(
  slabs: readonly Slab[],
  at: number,
  first: Interval,
  end: 0 | 1,
): Point | null {
  const wide = end === 0 ? 1 : 0
  if (widthDown(first, end) > POINT || widthDown(first, wide) <= POINT) return null
  const step = end === 0 ? 1 : -1
  const parts = [first]
  let slab = slabs[at]!
  let length = slab.to - slab.from
  for (let i = at + step; i >= 0 && i < slabs.length; i += step) {
    slab = slabs[i]!
    const last = parts.at(-1)!
    const next = slab.intervals.find((other) => goesOn(last, other, wide))
    if (next === undefined || widthDown(next, wide) < widthDown(next, end)) break
    parts.push(next)
    length += slab.to - slab.from
  }
  return { parts, length, widest: widthDown(parts.at(-1)!, wide) }
}

/** Whether the whole of one interval's side is the facing side of the next. */
function goesOn(one: Interval, next: Interval, side: 0 | 1): boolean {
  const facing = side === 0 ? 1 : 0
  return (
    compareHeights(one.low[side], next.low[facing]) === 0 &&
    compareHeights(one.high[side], next.high[facing]) === 0
  )
}
