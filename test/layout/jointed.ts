import type { Jointing } from '../../server/src/layout/jointing.ts'
import type { Laying, Pattern } from '../../server/src/layout/laying.ts'
import type { PlankRules } from '../../server/src/layout/problem.ts'
import { ownStarts } from '../../server/src/layout/starts.ts'
import { newStock, stockLimits } from '../../server/src/layout/stock.ts'
import type { Place } from '../../server/src/layout/stretches.ts'
import { inches } from './made-floors.ts'

/** Stretches half laid, told in inches, for tests of how the next one is jointed. */

type Span = readonly [number, number]

const spans = (of: readonly Span[]) =>
  of.map(([from, to]) => ({ from: inches(from), to: inches(to) }))

/** A stretch 7 in wide from 0 on; it touches the stretch after it all along, or where told. */
export function stretch(
  to: number,
  more: {
    readonly doorways?: readonly Span[]
    readonly posts?: readonly Span[]
    readonly narrow?: readonly Span[]
    readonly seam?: Span
  } = {},
): Place {
  const { doorways = [], posts = [], narrow = [], seam = [0, to] } = more
  const end = inches(to)
  return {
    id: 0,
    from: 0,
    to: end,
    length: end,
    course: { course: 2, low: inches(7), high: inches(14), order: 2 },
    area: end * inches(7),
    bands: [{ from: 0, to: end, low: inches(7), high: inches(14) }],
    posts: spans(posts),
    doorways: spans(doorways),
    narrow: spans(narrow),
    across: { width: inches(7), low: true, high: true },
    touches: spans([seam]).map((each) => ({ other: 1, ...each })),
    beyond: [],
    known: new Map(),
  }
}

/** Joints of the stretch beside it, of any lengths. */
export const beside = (...joints: readonly number[]): Jointing =>
  ({ joints: joints.map(inches), phase: -1 }) as unknown as Jointing

/** A pass that has come to `place`, what lies beside it laid already; `guide` is how it lay before. */
export function layingAt(
  place: Place,
  rules: PlankRules,
  more: {
    readonly beside?: Jointing
    readonly guide?: Jointing
    readonly begin?: Pattern['begin']
  } = {},
): Laying {
  const least = { shortest: 0, narrowest: 0, shortestLoose: null }
  const limits = stockLimits(rules, least)
  const other = { ...place, id: 1, touches: [] }
  return {
    field: {
      rules,
      places: [place, other],
      laying: [[other], [place]],
      limits,
      starts: [ownStarts(place, rules), []],
    },
    pattern: { words: '', begin: more.begin ?? [1, 1], keep: 0.8, calm: 0 },
    stock: newStock(limits),
    jointings: [more.guide, more.beside],
    blanks: [],
    used: rules.lengths.map(() => 0),
    usedUp: 0,
    inBox: rules.lengths.reduce((sum, each) => sum + each.length * each.perBox, 0),
    ready: [],
    order: 2,
    last: false,
  }
}
