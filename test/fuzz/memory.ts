import { setFlagsFromString } from 'node:v8'
import { runInNewContext } from 'node:vm'

setFlagsFromString('--expose-gc')
const collect: () => void = runInNewContext('gc')

/** Megabytes that are still held once everything that nobody needs is gone. */
export function heldMegabytes(): number {
  collect()
  return process.memoryUsage().heapUsed / 1_000_000
}
