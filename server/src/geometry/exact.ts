import { orient2d } from 'robust-predicates'
import type { Nm } from '../units/length.ts'
import { wholeNumber } from '../units/number.ts'
import { add, ratio } from '../units/ratio.ts'
import { roundRatio, roundToNm } from '../units/round.ts'
import type { Point, Ring } from './point.ts'

/** A straight line between two different points. */
export interface Line {
  readonly from: Point
  readonly to: Point
}

/** 1 where a → b → c turns left, −1 right, 0 straight on or back. Exact for all whole coordinates. */
export function turn(a: Point, b: Point, c: Point): -1 | 0 | 1 {
  // The library's positive sense is clockwise where y points up.
  const sign = orient2d(a.x, a.y, b.x, b.y, c.x, c.y)
  return sign < 0 ? 1 : sign > 0 ? -1 : 0
}

export function samePoint(a: Point, b: Point): boolean {
  return a.x === b.x && a.y === b.y
}

/** Twice the signed area in square nanometres, positive counter-clockwise. Exact. */
export function twiceArea(ring: Ring): bigint {
  const first = ring[0]!
  let sum = 0n
  // Taken from the first corner, so that the products stay small wherever the ring lies.
  for (let i = 1; i + 1 < ring.length; i++) {
    const b = ring[i]!
    const c = ring[i + 1]!
    sum +=
      BigInt(b.x - first.x) * BigInt(c.y - first.y) - BigInt(c.x - first.x) * BigInt(b.y - first.y)
  }
  return sum
}

/** Twice the area of a region: outer rings count positive, holes negative. */
export function twiceAreaOf(region: readonly Ring[]): bigint {
  return region.reduce((sum, ring) => sum + twiceArea(ring), 0n)
}

/** Up to this width (ten kilometres) the quick quotient is off by less than a hundredth. */
const QUICK_WIDTH = 1e13

/**
 * x where `line` stands at height `y`, rounded half to even to whole nanometres. Exact: floating point
 * answers only where its error cannot reach the next rounding. The line must not be level.
 */
export function crossingAt(line: Line, y: Nm): Nm {
  const width = line.to.x - line.from.x
  const rise = line.to.y - line.from.y
  const up = y - line.from.y
  const quick = (width * up) / rise
  const sure = Math.abs(width) < QUICK_WIDTH && Math.abs(quick - Math.floor(quick) - 0.5) > 0.01
  return sure ? line.from.x + roundToNm(quick) : exactlyAt(line, y)
}

/** The same by whole numbers alone. */
function exactlyAt({ from, to }: Line, y: Nm): Nm {
  const along = ratio(BigInt(to.x - from.x) * BigInt(y - from.y), to.y - from.y)
  return wholeNumber(roundRatio(add(ratio(from.x), along), 'half to even'))
}
