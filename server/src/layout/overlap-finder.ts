import type { Interval } from './problem.ts'

/**
 * Finds which of a list of intervals overlap a given one, in the order of the list. Quick where they lie
 * about from left to right, as neighbours along a seam do: only those are looked at that do not all end
 * before the given one, with all before them, or begin after it, with all behind them.
 */
export function overlapFinder<T extends Interval>(
  intervals: readonly T[],
): (of: Interval) => readonly T[] {
  const reached: number[] = []
  for (const { to } of intervals) reached.push(Math.max(to, reached.at(-1) ?? -Infinity))
  const begun: number[] = new Array(intervals.length)
  for (let i = intervals.length - 1; i >= 0; i -= 1)
    begun[i] = Math.min(intervals[i]!.from, begun[i + 1] ?? Infinity)
  return (of) => {
    const found: T[] = []
    for (let i = firstAbove(reached, of.from); i < intervals.length && begun[i]! < of.to; i += 1) {
      const each = intervals[i]!
      if (each.from < of.to && each.to > of.from) found.push(each)
    }
    return found
  }
}

/** The first place in a rising list whose value is more than this one. */
export function firstAbove(rising: readonly number[], value: number): number {
  let low = 0
  let high = rising.length
  while (low < high) {
    const middle = (low + high) >>> 1
    if (rising[middle]! <= value) low = middle + 1
    else high = middle
  }
  return low
}
