import { cross, less, type Point } from './point.ts'
import {
  compare,
  fine,
  half,
  minus,
  over,
  plus,
  type Ratio,
  ratio,
  round,
  same,
  size,
  sum,
  times,
  ZERO,
} from './ratio.ts'
import { asNumber } from './turns.ts'

/** A straight line that is nowhere upright, through two places of rising x. */
export interface Line {
  readonly a: Point
  readonly b: Point
}

export function heightAt({ a, b }: Line, x: Ratio): Ratio {
  if (same(a.y, b.y) || same(a.x, x)) return a.y
  if (same(b.x, x)) return b.y
  return fine(plus(a.y, over(times(minus(b.y, a.y), minus(x, a.x)), minus(b.x, a.x))))
}

/** What lies between two lines from one x to another. */
export interface Slice {
  readonly from: Ratio
  readonly to: Ratio
  readonly low: Line
  readonly high: Line
}

/** A region as slices side by side, none wider than need be. */
export type Region = readonly Slice[]

export interface Stretch {
  readonly from: Point
  readonly to: Point
}

interface Edge {
  readonly line: Line
  /** Which ring it belongs to; the first adds, each further one takes away. */
  readonly ring: number
}

/** What lies inside the stretches of `adds`, an odd number of them below, and outside each ring of `takes`. */
export function regionOf(adds: readonly Stretch[], takes: readonly (readonly Stretch[])[]): Region {
  const edges = [adds, ...takes].flatMap((ring, i) => ring.flatMap((side) => edgeOf(side, i)))
  const all = placesOf(edges, [adds, ...takes].flat())
  const places = all.filter(isApart)
  const across = edgesAcross(edges, all)
  const slices: Slice[] = []
  for (const [i, to] of places.slice(1).entries()) {
    const from = places[i] ?? to
    slices.push(...slicesAt(from, to, across[i] ?? []))
  }
  return merged(slices)
}

function edgeOf({ from, to }: Stretch, ring: number): readonly Edge[] {
  const way = compare(from.x, to.x)
  if (way === 0) return []
  return [{ ring, line: way < 0 ? { a: from, b: to } : { a: to, b: from } }]
}

/** Every x at which a stretch ends or two edges cross, rising. */
function placesOf(edges: readonly Edge[], stretches: readonly Stretch[]): readonly Ratio[] {
  const boxed = edges.map(({ line }) => ({ line, box: boxOf(line) }))
  const slanted = boxed.filter(({ line }) => !same(line.a.y, line.b.y))
  const crossings = slanted.flatMap((one) =>
    boxed
      .filter(({ box }) => box.every((side, i) => side <= -(one.box[(i + 2) % 4] ?? 0)))
      .flatMap(({ line }) => crossing(one.line, line) ?? []),
  )
  return distinct([...stretches.flatMap(({ from, to }) => [from.x, to.x]), ...crossings])
}

/** Least x, least y, and the opposites of most x and most y, a little outside: only to spare work. */
function boxOf({ a, b }: Line): readonly [number, number, number, number] {
  const [x, y] = [[a.x, b.x].map(asNumber), [a.y, b.y].map(asNumber)]
  const most = (all: readonly number[]) => -Math.max(...all) - 1
  return [Math.min(...x) - 1, Math.min(...y) - 1, most(x), most(y)]
}

/** Places nearer than this are one: a crossing of steep edges is found no finer. */
const GRAIN = ratio(1n, 1n << 10n)

/** The first of those places that are one. */
const isApart = (x: Ratio, i: number, all: readonly Ratio[]): boolean =>
  i === 0 || compare(minus(x, all[i - 1] ?? x), GRAIN) > 0

export function distinct(all: readonly Ratio[]): readonly Ratio[] {
  const rising = [...all].sort(compare)
  return rising.filter((x, i) => i === 0 || !same(x, rising[i - 1] ?? ZERO))
}

function crossing(one: Line, other: Line): Ratio | null {
  return crossingWithin(one, other, larger(one.a.x, other.a.x), smaller(one.b.x, other.b.x))
}

/** Where two lines cross strictly between two places. */
function crossingWithin(one: Line, other: Line, from: Ratio, to: Ratio): Ratio | null {
  if (compare(from, to) >= 0) return null
  const [start, end] = [from, to].map((x) => minus(heightAt(one, x), heightAt(other, x)))
  if (!start || !end || start.n === 0n || end.n === 0n || start.n > 0n === end.n > 0n) return null
  return fine(plus(from, times(minus(to, from), over(start, minus(start, end)))))
}

export const larger = (a: Ratio, b: Ratio): Ratio => (compare(a, b) > 0 ? a : b)
export const smaller = (a: Ratio, b: Ratio): Ratio => (compare(a, b) < 0 ? a : b)

/** For each gap between neighbouring places that lie apart the edges that go across it. */
function edgesAcross(edges: readonly Edge[], all: readonly Ratio[]): readonly (readonly Edge[])[] {
  const across: Edge[][] = all.map(() => [])
  let apart = -1
  const place = new Map(
    all.map((x, i) => {
      if (isApart(x, i, all)) apart += 1
      return [`${x.n}/${x.d}`, apart]
    }),
  )
  const placeOf = ({ n, d }: Ratio) => place.get(`${n}/${d}`) ?? 0
  for (const edge of edges) {
    for (let i = placeOf(edge.line.a.x); i < placeOf(edge.line.b.x); i += 1) across[i]?.push(edge)
  }
  return across
}

/** What is thinner comes of rounding; along the axes nothing is. */
const HAIR = ratio(1n, 2n)
/** What is thinner between two slanted lines comes of rounding their ends, off either axis. */
const SPUR = ratio(2n)

function thinnest(low: Line, high: Line): Ratio {
  const slope = smaller(steepness(low), steepness(high))
  return slope.n === 0n ? HAIR : times(SPUR, plus(slope, ratio(1n)))
}

/** How far a line rises or falls, in parts of its run. */
export const steepness = ({ a, b }: Line): Ratio => size(over(minus(b.y, a.y), minus(b.x, a.x)))

/** From below upwards: inside while an odd number of added edges and no open ring of takes lie below. */
function slicesAt(from: Ratio, to: Ratio, edges: readonly Edge[]): readonly Slice[] {
  const at = half(plus(from, to))
  const upwards = edges
    .map((edge) => ({ edge, height: heightAt(edge.line, at) }))
    .sort((a, b) => compare(a.height, b.height))
  const open = new Set<number>()
  const slices: Slice[] = []
  let low: { line: Line; height: Ratio } | null = null
  for (const { edge, height } of upwards) {
    if (!open.delete(edge.ring)) open.add(edge.ring)
    const isInside = open.has(0) && open.size === 1
    if (isInside && low === null) low = { line: edge.line, height }
    if (isInside || low === null) continue
    if (compare(plus(low.height, thinnest(low.line, edge.line)), height) < 0)
      slices.push({ from, to, low: low.line, high: edge.line })
    low = null
  }
  return joined(slices, at)
}

/** Slices that touch along a line at one place are one. */
function joined(slices: readonly Slice[], at: Ratio): readonly Slice[] {
  const done: Slice[] = []
  for (const slice of slices) {
    const last = done.at(-1)
    const touches =
      last && compare(minus(heightAt(slice.low, at), heightAt(last.high, at)), HAIR) < 0
    if (touches) done[done.length - 1] = { ...last, high: slice.high }
    else done.push(slice)
  }
  return done
}

/** Neighbouring slices between the same two lines are one. */
export function merged(slices: readonly Slice[]): Region {
  const done: Slice[] = []
  let open: Slice[] = []
  for (const slice of slices) {
    const [ended, going] = parted(open, ({ to }) => compare(to, slice.from) < 0)
    done.push(...ended)
    const before = going.find((one) => same(one.to, slice.from) && areAlike(one, slice))
    open = before
      ? going.map((one) => (one === before ? { ...one, to: slice.to } : one))
      : [...going, slice]
  }
  return [...done, ...open].sort((a, b) => compare(a.from, b.from) || compare(a.low.a.y, b.low.a.y))
}

/** Those that are so, and those that are not. */
export function parted<T>(all: readonly T[], isFirst: (one: T) => boolean): readonly [T[], T[]] {
  return [all.filter(isFirst), all.filter((one) => !isFirst(one))]
}

const areAlike = (a: Slice, b: Slice): boolean =>
  isOneLine(a.low, b.low) && isOneLine(a.high, b.high)

/** Whether one line goes on as the other, but for what fine places round away. */
export function goesOnAs(one: Line, other: Line): boolean {
  const [long, short] =
    compare(minus(one.b.x, one.a.x), minus(other.b.x, other.a.x)) > 0 ? [one, other] : [other, one]
  return [short.a, short.b].every(
    ({ x, y }) =>
      compare(size(minus(heightAt(long, x), y)), times(GRAIN, plus(steepness(long), ratio(1n)))) <
      0,
  )
}

function isOneLine(one: Line, other: Line): boolean {
  if (one === other) return true
  const way = less(one.b, one.a)
  return cross(way, less(other.a, one.a)).n === 0n && cross(way, less(other.b, one.a)).n === 0n
}

/** Exact where all edges run along the axes, else to a thousandth of a square nanometre a slice. */
export function areaOf(region: Region): Ratio {
  const areas = region.map(({ from, to, low, high }) => {
    const tall = plus(
      minus(heightAt(high, from), heightAt(low, from)),
      minus(heightAt(high, to), heightAt(low, to)),
    )
    return half(times(minus(to, from), tall))
  })
  return sum(
    areas.map((area) => (area.d < 1000n ? area : ratio(round(times(area, ratio(1000n))), 1000n))),
  )
}

/** The part of a region between two heights. */
export function between(region: Region, low: Ratio, high: Ratio): Region {
  const flat = (slice: Slice, y: Ratio): Line => ({
    a: { x: slice.from, y },
    b: { x: slice.to, y },
  })
  return merged(
    region.flatMap((slice) => {
      const [floor, roof] = [flat(slice, low), flat(slice, high)]
      const inner = [slice.low, slice.high].flatMap((line) => [
        crossingWithin(line, floor, slice.from, slice.to),
        crossingWithin(line, roof, slice.from, slice.to),
      ])
      const cuts = distinct([slice.from, ...inner.flatMap((x) => x ?? []), slice.to])
      return cuts.slice(1).flatMap((to, i): Slice[] => {
        const from = cuts[i] ?? to
        const at = half(plus(from, to))
        const kept = (line: Line) => within(line, [from, to], [low, high])
        const bottom = compare(heightAt(slice.low, at), low) > 0 ? kept(slice.low) : floor
        const top = compare(heightAt(slice.high, at), high) < 0 ? kept(slice.high) : roof
        return compare(plus(heightAt(bottom, at), hairBetween(bottom, top)), heightAt(top, at)) < 0
          ? [{ from, to, low: bottom, high: top }]
          : []
      })
    }),
  )
}

/** Beside a slanted line; along the axes nothing is rounded. */
const hairBetween = (low: Line, high: Line): Ratio =>
  [low, high].every((line) => same(line.a.y, line.b.y)) ? ratio(0n) : HAIR

/** Where a steep line crosses a height is found so fine only: its ends go no further than the heights. */
function within(
  line: Line,
  [from, to]: readonly [Ratio, Ratio],
  [low, high]: readonly [Ratio, Ratio],
): Line {
  const ends = [from, to].map((x) => heightAt(line, x))
  const [a, b] = ends.map((y) => larger(low, smaller(high, y)))
  const isWithin = a && b && same(a, ends[0] ?? a) && same(b, ends[1] ?? b)
  return !a || !b || isWithin ? line : { a: { x: from, y: a }, b: { x: to, y: b } }
}

/** The part of a region from one x to another. */
export function alongFrom(region: Region, from: Ratio, to: Ratio): Region {
  return region.flatMap((slice) => {
    const cut = { ...slice, from: larger(slice.from, from), to: smaller(slice.to, to) }
    return compare(cut.from, cut.to) < 0 ? [cut] : []
  })
}

/** The parts of a region that hang together: neighbouring slices that share more than a place. */
export function hangingTogether(region: Region): readonly Region[] {
  const group = region.map((_, i) => i)
  const leader = (i: number): number => (group[i] === i ? i : leader(group[i] ?? i))
  for (const [i, one] of region.entries()) {
    for (const [j, other] of region.entries()) {
      if (same(one.to, other.from) && shareMore(one, other, one.to)) group[leader(j)] = leader(i)
    }
  }
  const groups = new Map<number, Slice[]>()
  for (const [i, slice] of region.entries())
    groups.set(leader(i), [...(groups.get(leader(i)) ?? []), slice])
  return [...groups.values()]
}

function shareMore(one: Slice, other: Slice, x: Ratio): boolean {
  const low = larger(heightAt(one.low, x), heightAt(other.low, x))
  return compare(plus(low, HAIR), smaller(heightAt(one.high, x), heightAt(other.high, x))) < 0
}

/** The box around a region. */
export function extentOf(region: Region): {
  readonly u: readonly [Ratio, Ratio]
  readonly v: readonly [Ratio, Ratio]
} {
  const ends = region.flatMap(({ from, to, low, high }) => [
    heightAt(low, from),
    heightAt(low, to),
    heightAt(high, from),
    heightAt(high, to),
  ])
  return {
    u: [region.map(({ from }) => from).reduce(smaller), region.map(({ to }) => to).reduce(larger)],
    v: [ends.reduce(smaller), ends.reduce(larger)],
  }
}

/** The same region with x and y exchanged. */
export function exchanged(region: Region): Region {
  const sides = region.flatMap((slice) => {
    const at = (line: Line, x: Ratio): Point => ({ x: heightAt(line, x), y: x })
    const [a, b] = [at(slice.low, slice.from), at(slice.low, slice.to)]
    const [c, d] = [at(slice.high, slice.to), at(slice.high, slice.from)]
    return [a, b, c, d].map((from, i) => ({ from, to: [b, c, d, a][i] ?? from }))
  })
  return regionOf(sides, [])
}
