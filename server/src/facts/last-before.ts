/** The place of the last thing that starts at or before an offset, things in order; -1 for none. */
export function lastBefore<T>(
  things: readonly T[],
  offset: number,
  startOf: (thing: T) => number,
): number {
  let low = -1
  let high = things.length
  while (high - low > 1) {
    const middle = (low + high) >>> 1
    if (startOf(things[middle]!) <= offset) low = middle
    else high = middle
  }
  return low
}
