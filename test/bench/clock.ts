import { setFlagsFromString } from 'node:v8'
import { runInNewContext } from 'node:vm'

setFlagsFromString('--expose-gc')
const collect = runInNewContext('gc') as () => void

/**
 * Milliseconds of this thread's own work, so that other processes on the machine do not count. What
 * earlier runs left in memory is cleared away first, outside the clock.
 */
export function work(run: () => unknown): number {
  collect()
  const before = now()
  run()
  return now() - before
}

/** Milliseconds that this thread has worked so far. */
export function now(): number {
  const { user, system } = process.threadCpuUsage()
  return (user + system) / 1000
}
