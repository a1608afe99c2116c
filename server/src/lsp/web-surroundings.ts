import type { Surroundings } from './surroundings.ts'

/** A worker's own turns. It has no files: those come from the client. */
export function webSurroundings(): Surroundings {
  const runs: (() => void)[] = []
  const { port1, port2 } = new MessageChannel()
  port1.onmessage = () => runs.shift()?.()
  const after = (ms: number, run: () => void) => {
    const timer = setTimeout(run, ms)
    return () => clearTimeout(timer)
  }
  return {
    readBelow: () => null,
    // A timer would wait four milliseconds between two slices.
    soon(run) {
      runs.push(run)
      port2.postMessage(null)
    },
    quiet: (run) => after(0, run),
    after,
    now: () => performance.now(),
    exit() {},
  }
}
