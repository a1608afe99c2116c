import { Broken } from './fault.ts'
import type { Target } from './targets.ts'

/** Texts up to this length must be answered at once. */
const SHORT = 4096
/** What "at once" is, in milliseconds of one thread's own work. */
const AT_ONCE = 100
/**
 * A floor is cut corner by corner, and written and drawn piece by piece, so its size is paid for, however
 * short its text: 0.05 ms a piece of planks of one length, 0.3 of five lengths; a round post has 64 corners.
 */
const PER_PIECE = 0.5
const PER_CORNER = 0.1

/** How large the floors are that a text lays. */
export interface Size {
  readonly pieces: number
  readonly corners: number
}

/** Milliseconds that this thread has worked: other programs on the machine do not count. */
export function worked(): number {
  const { user, system } = process.threadCpuUsage()
  return (user + system) / 1000
}

/** Breaks off when a text that was slow once stays so: the median of five more runs, warm. */
export function holdSpeed(target: Target, text: string, first: number, size: Size): void {
  const { pieces, corners } = size
  const allowed = AT_ONCE + PER_PIECE * pieces + PER_CORNER * corners
  if (text.length > SHORT || first <= allowed) return
  const times = Array.from({ length: 5 }, () => {
    const started = worked()
    target.run(text)
    return worked() - started
  }).sort((a, b) => a - b)
  if (times[2]! <= allowed) return
  throw new Broken(
    `${target.name} is slow`,
    `${times[2]!.toFixed(0)} ms for ${text.length} characters and ${pieces} pieces, ${corners} corners`,
  )
}
