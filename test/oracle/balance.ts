import type { Product } from './job.ts'
import type { Side } from './patch.ts'
import { length, less, point } from './point.ts'
import {
  compare,
  floor,
  half,
  minus,
  over,
  plus,
  type Ratio,
  ratio,
  size,
  times,
  ZERO,
} from './ratio.ts'
import { larger, smaller } from './region.ts'
import { LEVEL, longOf, type Run, rises, wallsOf } from './run.ts'

/**
 * From the start wall to the longest wall of its room that faces it and lies beyond it, less both gaps;
 * null where there is none. `start` is where the first course ends at the start wall.
 */
export interface ClearWidth {
  readonly start: Ratio
  readonly most: Ratio | null
  readonly varies: Ratio
}

/** `turned` is the rim in the frame of the run, side for side. */
export function clearWidth(
  { start }: Run,
  rim: readonly Side[],
  turned: readonly Side[],
): ClearWidth {
  const edges = turned.filter((_, i) => start.edges.includes(rim[i] as Side))
  const high = endsOf(edges, -1n)
  const [most, least] = [high.reduce(larger), high.reduce(smaller)]
  if (!edges.every(isLevel)) return { start: most, most: null, varies: ZERO }
  const others = turned.filter(({ wall }) => wall !== null && wall.room === start.room)
  const facing = wallsOf(others.filter(faces), () => true)
    .map((wall) => ({ long: longOf(wall, ALONG), low: endsOf(wall.edges, 1n) }))
    .filter(({ low }) => compare(low.reduce(larger), least) < 0)
    .toSorted(
      (a, b) => compare(b.long, a.long) || compare(a.low.reduce(smaller), b.low.reduce(smaller)),
    )[0]
  if (facing === undefined) return { start: most, most: null, varies: ZERO }
  const widest = minus(most, facing.low.reduce(smaller))
  return {
    start: most,
    most: widest,
    varies: minus(widest, minus(least, facing.low.reduce(larger))),
  }
}

/** v of the ends of edges with their gaps, measured along v, into the floor above (1) or below (-1). */
function endsOf(edges: readonly Side[], side: bigint): readonly Ratio[] {
  return edges.flatMap(({ from, to, gap }) => {
    const way = less(to, from)
    const off = over(times(ratio(gap * side), length(way)), size(way.x))
    return [from.y, to.y].map((y) => plus(y, off))
  })
}

const isLevel = ({ from, to }: Side): boolean => rises(less(to, from), ALONG, LEVEL)

/** Floor at higher v, along the planks. */
const faces = (side: Side): boolean => less(side.to, side.from).x.n > 0n && isLevel(side)

const ALONG = point(1n, 0n)

/**
 * How the width is shared between first and last course, with so many full ones between them; a single
 * course is taken for a full one, which reaches over the wall that it faces.
 */
export interface Balance {
  readonly full: bigint
  readonly first: Ratio
  readonly last: Ratio
}

export function balanceOf(clear: Ratio, varies: Ratio, { width, narrowestRip }: Product): Balance {
  const plank = ratio(width)
  const whole = floor(over(clear, plank))
  const rest = minus(clear, ratio(whole * width))
  if (rest.n === 0n) return { full: whole - 2n, first: plank, last: plank }
  if (whole === 0n) return { full: 0n, first: plank, last: plank }
  const shared = plus(plank, rest)
  const wished = larger(half(shared), plus(ratio(narrowestRip), varies))
  const most = larger(minus(shared, ratio(narrowestRip)), half(shared))
  const last = smaller(smaller(wished, plank), most)
  return { full: whole - 1n, first: minus(shared, last), last }
}
