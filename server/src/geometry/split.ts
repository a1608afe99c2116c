import type { Nm } from '../units/length.ts'
import { crossingAt, samePoint, turn } from './exact.ts'
import { type Outline, type Part, partsOf, simpleOutlines, type Whole } from './outline.ts'
import type { Point } from './point.ts'

/**
 * Cuts a region along level lines, given by rising y. Gives one list of parts for each slab: below the
 * first line, between each two, above the last. The parts of all slabs make the region exactly: an edge
 * that crosses a line gets there a corner, the same on both sides, rounded once from the whole edge.
 *
 * Each ring falls into chains that run from line to line; along a line they open and close the floor
 * in turn, which says what is joined to what. No coordinate is compared but by order, so the only cost
 * is sorting: n log n in corners and crossings.
 */
export function cutLevel(rings: readonly Outline[], lines: readonly Nm[]): Part[][] {
  return cut(rings, lines, (whole, y) => crossingAt(whole, y))
}

/** The same along upright lines, given by rising x, from left to right. */
export function cutUpright(rings: readonly Outline[], lines: readonly Nm[]): Part[][] {
  const turned = rings.map(({ points, wholes }) => ({ points: points.map(quarterLeft), wholes }))
  return cut(turned, lines, (whole, x) => -crossingAt(mirrored(whole), x)).map((slab) =>
    slab.map(({ rim, holes }) => ({ rim: turnedBack(rim), holes: holes.map(turnedBack) })),
  )
}

/** Where a whole edge stands at a line, in the coordinates of the cut. */
type Crossing = (whole: Whole, at: Nm) => Nm

/** A run of edges inside one slab, from one line to another or back to the same. */
interface Chain {
  readonly points: Point[]
  readonly wholes: (Whole | null)[]
}

interface Slab {
  readonly chains: Chain[]
  /** Rings that no line meets. */
  readonly rings: Outline[]
}

function cut(rings: readonly Outline[], lines: readonly Nm[], crossing: Crossing): Part[][] {
  const slabs: Slab[] = Array.from({ length: lines.length + 1 }, () => ({ chains: [], rings: [] }))
  for (const ring of rings) unlink(ring, lines, crossing, slabs)
  return slabs.map(({ chains, rings: untouched }, i) =>
    partsOf([...untouched, ...relink(chains, lines[i - 1], lines[i]).flatMap(simpleOutlines)]),
  )
}

/** Parts a ring into chains and hands each to its slab. */
function unlink(
  ring: Outline,
  lines: readonly Nm[],
  crossing: Crossing,
  slabs: readonly Slab[],
): void {
  const split = withCrossings(ring, lines, crossing)
  const count = split.points.length
  const breaks = split.points.flatMap((point, i) => (isLine(lines, point.y) ? [i] : []))
  if (breaks.length === 0) {
    slabs[slabOf(lines, split.points[0]!.y)]!.rings.push(split)
    return
  }
  breaks.forEach((start, i) => {
    const end = i + 1 < breaks.length ? breaks[i + 1]! : breaks[0]! + count
    const chain: Chain = { points: [], wholes: [] }
    for (let k = start; k <= end; k++) chain.points.push(split.points[k % count]!)
    for (let k = start; k < end; k++) chain.wholes.push(split.wholes[k % count] ?? null)
    const next = chain.points[1]!.y
    // An edge along a line bounds one side of it only: it comes back when that side is closed.
    if (end === start + 1 && next === chain.points[0]!.y) return
    const inner = end === start + 1 ? (next + chain.points[0]!.y) / 2 : next
    slabs[slabOf(lines, inner)]!.chains.push(chain)
  })
}

/** The ring with a corner wherever it crosses a line. */
function withCrossings(ring: Outline, lines: readonly Nm[], crossing: Crossing): Outline {
  const points: Point[] = []
  const wholes: (Whole | null)[] = []
  ring.points.forEach((from, i) => {
    const to = ring.points[(i + 1) % ring.points.length]!
    const whole = ring.wholes[i] ?? null
    points.push(from)
    wholes.push(whole)
    for (const y of linesBetween(lines, from.y, to.y)) {
      points.push({ x: whole ? crossing(whole, y) : from.x, y })
      wholes.push(whole)
    }
  })
  return { points, wholes }
}

/** The lines strictly between two heights, in the order of walking from the first to the second. */
function linesBetween(lines: readonly Nm[], from: Nm, to: Nm): readonly Nm[] {
  if (from === to) return []
  const inside = lines.slice(slabOf(lines, Math.min(from, to)), slabOf(lines, Math.max(from, to)))
  const between = inside[0] === Math.min(from, to) ? inside.slice(1) : inside
  return from < to ? between : between.toReversed()
}

/** How many lines lie below y: the slab that y is in, or that begins above the line it is on less one. */
function slabOf(lines: readonly Nm[], y: number): number {
  let low = 0
  let high = lines.length
  while (low < high) {
    const middle = (low + high) >> 1
    if (lines[middle]! < y) low = middle + 1
    else high = middle
  }
  return low
}

function isLine(lines: readonly Nm[], y: Nm): boolean {
  return lines[slabOf(lines, y)] === y
}

/** One end of a chain on a line. `opens` where the floor lies to its right along the line. */
interface End {
  readonly chain: Chain
  readonly at: Point
  readonly next: Point
  readonly opens: boolean
}

/** Joins the chains of a slab to rings, along the line below and the line above. */
function relink(chains: readonly Chain[], low: Nm | undefined, high: Nm | undefined): Outline[] {
  const follower = new Map<Chain, Chain>()
  const [first, second] = chains
  if (chains.length === 2 && leadsThrough(first!, low, high) && leadsThrough(second!, low, high)) {
    return followed(chains, follower.set(first!, second!).set(second!, first!))
  }
  const ends = chains.flatMap((chain) => [endOf(chain, low, false), endOf(chain, low, true)])
  for (const [open, close] of pairs(
    ends.filter((end) => end.at.y === low),
    1,
  )) {
    follower.set(open.chain, close.chain)
  }
  for (const [open, close] of pairs(
    ends.filter((end) => end.at.y === high),
    -1,
  )) {
    follower.set(close.chain, open.chain)
  }
  return followed(chains, follower)
}

/** Two chains that lead from line to line, as in most slabs, bound one part between them. */
function leadsThrough({ points }: Chain, low: Nm | undefined, high: Nm | undefined): boolean {
  const [from, to] = [points[0]!.y, points.at(-1)!.y]
  return (from === low && to === high) || (from === high && to === low)
}

/** The floor lies on the left of a chain: on the lower line it opens where a chain comes down. */
function endOf(chain: Chain, low: Nm | undefined, last: boolean): End {
  const at = last ? chain.points.at(-1)! : chain.points[0]!
  const next = last ? chain.points.at(-2)! : chain.points[1]!
  return { chain, at, next, opens: (at.y === low) === last }
}

/** Each opening with the closing that follows it along the line; `up` is 1 where the slab lies above it. */
function pairs(ends: readonly End[], up: 1 | -1): (readonly [End, End])[] {
  const sorted = [...ends].sort((a, b) => a.at.x - b.at.x || -up * turn(a.at, b.next, a.next))
  const found: (readonly [End, End])[] = []
  let open: End | null = null
  for (let i = 0; i < sorted.length; ) {
    let after = i
    while (after < sorted.length && sorted[after]!.at.x === sorted[i]!.at.x) after++
    // Ends in one point take turns, from the left to the right.
    const opening = sorted.slice(i, after).filter((end) => end.opens)
    const closing = sorted.slice(i, after).filter((end) => !end.opens)
    while (open ? closing.length > 0 : opening.length > 0) {
      if (open) {
        found.push([open, closing.shift()!])
        open = null
      } else open = opening.shift()!
    }
    i = after
  }
  return found
}

function followed(chains: readonly Chain[], follower: ReadonlyMap<Chain, Chain>): Outline[] {
  const used = new Set<Chain>()
  const rings: Outline[] = []
  for (const start of chains) {
    if (used.has(start)) continue
    const points: Point[] = []
    const wholes: (Whole | null)[] = []
    let chain: Chain | undefined = start
    while (chain && !used.has(chain)) {
      used.add(chain)
      // One by one: a chain may be longer than a call may have arguments.
      for (const [i, whole] of chain.wholes.entries()) {
        points.push(chain.points[i]!)
        wholes.push(whole)
      }
      const next = follower.get(chain)
      const end = chain.points.at(-1)!
      if (next && !samePoint(end, next.points[0]!)) {
        points.push(end)
        wholes.push(null)
      }
      chain = next
    }
    rings.push({ points, wholes })
  }
  return rings
}

const quarterLeft = ({ x, y }: Point): Point => ({ x: -y + 0, y: x })
const quarterRight = ({ x, y }: Point): Point => ({ x: y, y: -x + 0 })

function turnedBack({ points, wholes }: Outline): Outline {
  return { points: points.map(quarterRight), wholes }
}

function mirrored({ id, from, to }: Whole): Whole {
  return { id, from: { x: from.y, y: from.x }, to: { x: to.y, y: to.x } }
}
