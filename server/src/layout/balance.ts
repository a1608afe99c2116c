import type { Nm } from '../units/length.ts'
import { add, compare, type Ratio, ratio, subtract } from '../units/ratio.ts'

/** The courses of a room across, in nm: the first, so many full ones, and the last. */
export interface CourseWidths {
  readonly way: 'all full' | 'balanced' | 'full to the last' | 'one plank'
  /** Null where the first course is one of the full ones. */
  readonly first: Ratio | null
  readonly full: number
  /** Where the room is widest; null where the last course is one of the full ones. */
  readonly last: Ratio | null
  /** The last course where the room is narrowest; not above 0 where a seam runs into its wall. */
  readonly lastAtLeast: Ratio
}

/** A room's clear width, wall to wall less the gap at each: its least and its most, which may be equal. */
export interface ClearWidth {
  readonly least: Nm
  readonly most: Nm
}

/**
 * How the courses of a room may fall, the usual way first. With w the largest clear width, n = ⌊w/p⌋ and
 * r = w − np: r = 0 takes n full courses; else the first and the last are ripped to (p + r)/2 with n − 1
 * full ones between (never under p/2), or, where r is no narrower than `narrowest`, n full courses and
 * one of r; n = 0 takes one plank ripped to w. Where the width varies, the first course gives way so
 * that the last one is `narrowest` where the room is, as far as it can. Exact. Source: computed.
 */
export function balanceCourses(
  clear: ClearWidth,
  plank: Nm,
  narrowest: Nm,
): readonly CourseWidths[] {
  const rest = clear.most % plank
  const varies = ratio(clear.most - clear.least)
  const full = (clear.most - rest) / plank
  const way = (widths: Omit<CourseWidths, 'lastAtLeast'>): CourseWidths => ({
    ...widths,
    lastAtLeast: subtract(widths.last ?? ratio(plank), varies),
  })
  if (full === 0) {
    return [way({ way: 'one plank', first: null, full: 0, last: ratio(clear.most) })]
  }
  if (rest === 0) return [way({ way: 'all full', first: null, full, last: null })]
  const last = balancedLast(plank, rest, narrowest, varies)
  const first = subtract(ratio(plank + rest), last)
  const balanced = way({ way: 'balanced', first, full: full - 1, last })
  if (rest < narrowest) return [balanced]
  return [balanced, way({ way: 'full to the last', first: null, full, last: ratio(rest) })]
}

/** Half of what both rips share; more where the last would run under its least, as the first allows. */
function balancedLast(plank: Nm, rest: Nm, narrowest: Nm, varies: Ratio): Ratio {
  const half = ratio(plank + rest, 2)
  const wanted = add(ratio(narrowest), varies)
  const most = ratio(Math.min(plank, plank + rest - narrowest))
  const more = compare(wanted, most) < 0 ? wanted : most
  return compare(half, more) < 0 ? more : half
}
