import type { Point } from '../geometry/point.ts'
import { exchanged, heightOf, sectionsOf } from '../geometry/sections.ts'
import type { Nm } from '../units/length.ts'
import type { Laid } from './breaches.ts'
import type { PublishedBreach } from './published.ts'

/** The longest straight line inside the floor along the planks, and across them, where it is too long. */
export function longRuns({ rules, rings }: Laid): PublishedBreach[] {
  const { along, across } = rules.longestRun
  const upright = rings.map((ring) => ring.map(([x, y]) => ({ x, y })))
  const level = upright.map((ring) => ring.map(exchanged))
  return [
    ...longRun('along', along, level, (run) => [run.from, run.line]),
    ...longRun('across', across, upright, (run) => [run.line, run.from]),
  ]
}

/** A straight line inside the floor: the coordinate that it keeps, where it begins and how long it is. */
interface Run {
  readonly line: Nm
  readonly from: Nm
  readonly length: Nm
}

function longRun(
  direction: 'along' | 'across',
  limit: Nm | null,
  rings: readonly (readonly Point[])[],
  atOf: (run: Run) => readonly [Nm, Nm],
): PublishedBreach[] {
  if (limit === null || reachOf(rings) <= limit) return []
  const run = longestUpright(rings)
  if (!run || run.length <= limit) return []
  return [{ rule: 'longest run', value: run.length, limit, at: atOf(run), pieces: [], direction }]
}

/** No upright line is longer than the floor is high: that saves looking as a rule. */
function reachOf(rings: readonly (readonly Point[])[]): Nm {
  const heights = rings.flat().map(({ y }) => y)
  if (heights.length === 0) return 0
  return heights.reduce((a, b) => Math.max(a, b)) - heights.reduce((a, b) => Math.min(a, b))
}

/** The longest upright line inside the rings; of equal ones the leftmost, then the lowest. */
function longestUpright(rings: readonly (readonly Point[])[]): Run | null {
  let best: Run | null = null
  for (const { from, to, intervals } of sectionsOf(rings)) {
    for (const interval of intervals) {
      for (const side of [0, 1] as const) {
        const run = {
          line: side === 0 ? from : to,
          from: interval.low[side].whole,
          length: heightOf(interval, side, 'up'),
        }
        if (!best || isBetter(run, best)) best = run
      }
    }
  }
  return best
}

function isBetter(run: Run, best: Run): boolean {
  return (
    run.length > best.length ||
    (run.length === best.length &&
      (run.line < best.line || (run.line === best.line && run.from < best.from)))
  )
}
