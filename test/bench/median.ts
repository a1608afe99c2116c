/** The middle one of an odd number of times, or of the upper two of an even number. */
export function median(times: readonly number[]): number {
  const sorted = [...times].sort((a, b) => a - b)
  return sorted[Math.floor(sorted.length / 2)] ?? 0
}

/** Uncounted runs after which the engine has compiled what it will: an editor's or a server's state. */
export const WARM = 25

/** The median of five runs in milliseconds, after some that are not counted. */
export function medianOfFive(run: () => unknown, uncounted = 1): number {
  for (let i = 0; i < uncounted; i++) run()
  return median(Array.from({ length: 5 }, () => timed(run)))
}

export function timed(run: () => unknown): number {
  const started = performance.now()
  run()
  return performance.now() - started
}
