import {
  compare,
  minus,
  negative,
  over,
  plus,
  type Ratio,
  ratio,
  root,
  round,
  same,
  times,
  ZERO,
} from './ratio.ts'

/** A place in the plan (x east, y north) or in the frame of the run (x along the planks, y across). */
export interface Point {
  readonly x: Ratio
  readonly y: Ratio
}

export const point = (x: bigint, y: bigint): Point => ({ x: ratio(x), y: ratio(y) })
export const add = (a: Point, b: Point): Point => ({ x: plus(a.x, b.x), y: plus(a.y, b.y) })
export const less = (a: Point, b: Point): Point => ({ x: minus(a.x, b.x), y: minus(a.y, b.y) })
export const scaled = (a: Point, by: Ratio): Point => ({ x: times(a.x, by), y: times(a.y, by) })
export const dot = (a: Point, b: Point): Ratio => plus(times(a.x, b.x), times(a.y, b.y))
export const cross = (a: Point, b: Point): Ratio => minus(times(a.x, b.y), times(a.y, b.x))
/** A quarter turn to the left. */
export const toLeft = ({ x, y }: Point): Point => ({ x: negative(y), y: x })
export const toRight = ({ x, y }: Point): Point => ({ x: y, y: negative(x) })
export const sameSpot = (a: Point, b: Point): boolean => same(a.x, b.x) && same(a.y, b.y)
/** Each coordinate to the nearest nanometre. */
export const rounded = ({ x, y }: Point): Point => point(round(x), round(y))
export const middle = (a: Point, b: Point): Point => scaled(add(a, b), ratio(1n, 2n))

/** The length of a vector: exact along the axes, else to the 2⁻⁶⁰th. */
export function length({ x, y }: Point): Ratio {
  if (x.n === 0n) return compare(y, ZERO) < 0 ? negative(y) : y
  if (y.n === 0n) return compare(x, ZERO) < 0 ? negative(x) : x
  return root(plus(times(x, x), times(y, y)))
}

/** The same direction, one long. */
export function unit(a: Point): Point {
  const long = length(a)
  return { x: over(a.x, long), y: over(a.y, long) }
}

/** Where the line through `a` along `d` meets that through `b` along `e`; null where they are parallel. */
export function meeting(a: Point, d: Point, b: Point, e: Point): Point | null {
  const turn = cross(d, e)
  if (turn.n === 0n) return null
  return add(a, scaled(d, over(cross(less(b, a), e), turn)))
}

/** Twice the area inside a ring of corners, above nothing where it runs counter-clockwise. */
export function twiceArea(ring: readonly Point[]): Ratio {
  return ring.map((a, i) => cross(a, ring[(i + 1) % ring.length] ?? a)).reduce(plus, ZERO)
}
