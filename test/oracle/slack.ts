import type { Blank } from './laying.ts'
import { compare, minus, over, plus, type Ratio, ratio, size, times, ZERO } from './ratio.ts'
import { heightAt, larger, type Region, type Slice, smaller, steepness } from './region.ts'

/** How near two numbers must be: to the digit, or within so many nanometres. */
export interface Nearness {
  readonly isExact: boolean
  readonly nm: bigint
}

export const TO_THE_DIGIT: Nearness = { isExact: true, nm: 0n }

/**
 * How near places along u must be. A tip moves by more than its edges do across: by as much as its two
 * edges draw together more slowly. Where a row begins at a tip, every joint of it moves with that.
 */
export function alongSlack(piece: Region, { row }: Blank, { isExact, nm }: Nearness): Ratio {
  return isExact ? ZERO : times(ratio(nm), plus(ratio(1n), plus(keenest(piece), keenest(row))))
}

/**
 * The same across: as much as its steepest edge rises, of uprights but for rounding a thousand times; more
 * where its ends were found moved along u.
 */
export function acrossSlack(piece: Region, { isExact, nm }: Nearness, moved = ZERO): Ratio {
  if (isExact) return ZERO
  const steepest = piece.flatMap(({ low, high }) => [low, high].map(steepness)).reduce(larger)
  const rise = smaller(steepest, ratio(1000n))
  return plus(ratio(nm), times(plus(ratio(nm), moved), rise))
}

/** At most this wide a slice may end in a tip. */
const TIP = ratio(16n)

/** Of all tips the longest way in which their edges draw together by one. */
function keenest(region: Region): Ratio {
  return region.map(keenness).reduce(larger, ZERO)
}

function keenness({ from, to, low, high }: Slice): Ratio {
  const [start, end] = [from, to].map((x) => minus(heightAt(high, x), heightAt(low, x)))
  if (!start || !end || compare(smaller(start, end), TIP) > 0) return ZERO
  const narrowing = size(minus(start, end))
  return narrowing.n === 0n ? ZERO : over(minus(to, from), narrowing)
}
