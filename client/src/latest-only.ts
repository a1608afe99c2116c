/**
 * Runs something for the newest value only: while a run lasts, one value waits, and a newer one takes
 * its place. The last is always run, and never two at a time.
 */
export function latestOnly<T>(run: (value: T) => Promise<void>): (value: T) => void {
  let waiting: { readonly value: T } | null = null
  let busy = false
  const work = async () => {
    busy = true
    while (waiting !== null) {
      const { value } = waiting
      waiting = null
      try {
        await run(value)
      } catch {
        // The next value is worth a try of its own.
      }
    }
    busy = false
  }
  return (value) => {
    waiting = { value }
    if (!busy) work()
  }
}
