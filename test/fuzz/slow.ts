import { Broken } from './fault.ts'
import type { Target } from './targets.ts'

/** Texts up to this length must be answered at once. */
const SHORT = 4096
/** What "at once" is, in milliseconds of one thread's own work. */
const AT_ONCE = 100
/**
 * A floor is cut, written and drawn piece by piece, so its size is paid for, however short its text:
 * 0.05 ms a piece of planks of one length, 0.3 of five lengths.
 */
const PER_PIECE = 0.5

/** Milliseconds that this thread has worked: other programs on the machine do not count. */
export function worked(): number {
  const { user, system } = process.threadCpuUsage()
  return (user + system) / 1000
}

/** Breaks off when a text that was slow once stays so: the median of five more runs, warm. */
export function holdSpeed(target: Target, text: string, first: number, pieces: number): void {
  const allowed = AT_ONCE + PER_PIECE * pieces
  if (text.length > SHORT || first <= allowed) return
  const times = Array.from({ length: 5 }, () => {
    const started = worked()
    target.run(text)
    return worked() - started
  }).sort((a, b) => a - b)
  if (times[2]! <= allowed) return
  throw new Broken(
    `${target.name} is slow`,
    `${times[2]!.toFixed(0)} ms for ${text.length} characters and ${pieces} pieces`,
  )
}
