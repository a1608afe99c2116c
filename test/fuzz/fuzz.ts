import { dice } from '../generate/dice.ts'
import { type Fault, faultOf } from './fault.ts'
import { mutant } from './mutate.ts'
import { holdSpeed, worked } from './slow.ts'
import type { Target } from './targets.ts'

/** What a stretch of runs came to. */
export interface Tally {
  runs: number
  /** The first text that broke each promise. */
  readonly faults: Map<
    string,
    { readonly text: string; readonly fault: Fault; readonly run: number }
  >
  /** How many texts reached each message code. */
  readonly codes: Map<string, number>
  slowest: { readonly ms: number; readonly run: number }
  /** Runs that laid at least one piece. */
  laid: number
}

export function emptyTally(): Tally {
  return { runs: 0, faults: new Map(), codes: new Map(), slowest: { ms: 0, run: 0 }, laid: 0 }
}

/** The text of one run: made from the seed and the run's number alone, so that it can be had again. */
export function textOf(target: Target, seed: number, run: number): string {
  return mutant(target.corpus, dice(seed * 7_919 + run))
}

/**
 * Runs `count` texts from number `from` on, and adds what they came to. Keeps no text that is sound:
 * keeping those that reach new blocks of the source (V8's block coverage) was tried and does not pay.
 * Counting blocks makes a run 2.4 times as long, and reading them costs 4 to 8 ms more, so that in the
 * same time blind texts reach as many. Blocks after so many seconds of one thread's own work:
 *
 *            parser 9   parser 15   parser 23   whole jobs 6   whole jobs 21
 *   blind         965         977         981           4001               -
 *   guided        960         973         983           3885            3959
 */
export function fuzz(
  target: Target,
  { seed, from, count, timed }: Stretch,
  tally: Tally = emptyTally(),
): Tally {
  for (let run = from; run < from + count; run++) {
    const text = textOf(target, seed, run)
    const fault = tried(target, text, { timed, tally, run })
    tally.runs += 1
    if (fault !== null && !tally.faults.has(fault.promise)) {
      tally.faults.set(fault.promise, { text, fault, run })
    }
  }
  return tally
}

export interface Stretch {
  readonly seed: number
  readonly from: number
  readonly count: number
  /** Whether a text that stays slow is a fault. */
  readonly timed: boolean
}

function tried(
  target: Target,
  text: string,
  { timed, tally, run }: { timed: boolean; tally: Tally; run: number },
): Fault | null {
  return faultOf(() => {
    const started = worked()
    const ran = target.run(text)
    const ms = worked() - started
    if (ms > tally.slowest.ms) tally.slowest = { ms, run }
    for (const code of new Set(ran.codes)) tally.codes.set(code, (tally.codes.get(code) ?? 0) + 1)
    if (ran.size.pieces > 0) tally.laid += 1
    ran.hold()
    if (timed) holdSpeed(target, text, ms, ran.size)
  })
}
