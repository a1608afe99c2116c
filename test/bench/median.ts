/** The middle one of an odd number of times, or of the upper two of an even number. */
export function median(times: readonly number[]): number {
  const sorted = [...times].sort((a, b) => a - b)
  return sorted[Math.floor(sorted.length / 2)] ?? 0
}

/** The median of five runs in milliseconds, after one that is not counted. */
export function medianOfFive(run: () => unknown): number {
  run()
  return median(Array.from({ length: 5 }, () => timed(run)))
}

export function timed(run: () => unknown): number {
  const started = performance.now()
  run()
  return performance.now() - started
}
