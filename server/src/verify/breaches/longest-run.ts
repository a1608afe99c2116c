import type { Floor, Ring, Vertex } from '../layout.ts'
import type { Breach } from '../report.ts'
import { exchanged, type Height, sections, widthUp } from '../sections.ts'

/** A straight line inside the area: `line` is the coordinate it keeps, `from` where it begins. */
interface Run {
  readonly length: number
  readonly line: number
  readonly from: number
}

/**
 * The longest straight run of floor without a break, along the planks and across them. Cut at every
 * vertex, the area falls into trapeziums, and a line through one is longest at one of its two sides;
 * a straight line inside the area never leaves a trapezium but into the next, at such a side.
 */
export function longestRunBreaches({ area, rules }: Floor): readonly Breach[] {
  const { along, across } = rules.longestRun
  return [
    ...breach('along', along, longest(exchanged(area.rings)), ({ from, line }) => [from, line]),
    ...breach('across', across, longest(area.rings), ({ from, line }) => [line, from]),
  ]
}

function breach(
  direction: 'along' | 'across',
  limit: number | null,
  run: Run,
  atOf: (run: Run) => Vertex,
): Breach[] {
  if (limit === null || run.length <= limit) return []
  const value = run.length
  return [{ rule: 'longest run', value, limit, at: atOf(run), pieces: [], direction }]
}

/** The longest upright line; of equal ones that of lowest u, then of lowest v. */
function longest(rings: readonly Ring[]): Run {
  let best: Run = { length: 0, line: 0, from: 0 }
  for (const { from, to, intervals } of sections(rings)) {
    for (const interval of intervals) {
      best = longer(best, runAt(from, interval.low[0], widthUp(interval, 0)))
      best = longer(best, runAt(to, interval.low[1], widthUp(interval, 1)))
    }
  }
  return best
}

function runAt(line: number, low: Height, length: number): Run {
  return { length, line, from: low.whole }
}

function longer(a: Run, b: Run): Run {
  const order = b.length - a.length || a.line - b.line || a.from - b.from
  return order > 0 ? b : a
}
