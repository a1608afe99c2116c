import type { Nm } from '../units/length.ts'
import type { Interval, PlankRules } from './problem.ts'
import { type Across, acrossOf, type Place } from './stretches.ts'

/** One way to joint a stretch, and the breaches that it has whatever lies beside it. */
export interface Jointing {
  /** Length of the piece at the stretch's left end. */
  readonly start: Nm
  /** Length of the piece at its right end: `start` again where one piece is all of it. */
  readonly end: Nm
  /** u of the joints, left to right. */
  readonly joints: readonly Nm[]
  /** Those joints that are cut through a post and glued. */
  readonly parted: readonly Nm[]
  /** The joints' u modulo the plank's length, or −1 where they do not share one. */
  readonly phase: Nm
  readonly breaches: number
  /** Pieces shorter than the plank is wide. */
  readonly slivers: number
  /** Pieces to be notched round a corner, and pieces glued at a post. */
  readonly hardCuts: number
}

/** A rectangle to be cut out of a plank, and which of the plank's ends and edges it must keep. */
export interface Blank {
  readonly from: Nm
  readonly to: Nm
  readonly across: Across
  /** Factory ends that it needs: those that meet another piece in a joint. */
  readonly left: boolean
  readonly right: boolean
  /** Ends that must not be factory ones: those glued at a post. */
  readonly cutLeft: boolean
  readonly cutRight: boolean
}

/**
 * The ways to joint a stretch with planks of one length that begin with a piece `start` long: one,
 * unless a post without a joint parts it, where the piece beyond may begin in several lengths.
 */
export function jointingsFrom(place: Place, start: Nm, rules: PlankRules): readonly Jointing[] {
  const known = place.known.get(start)
  if (known !== undefined) return known
  const plank = rules.lengths[0]!.length
  const made = runs(place, { from: place.from, start, plank, anew: true }).map(
    ({ joints, parted }) => judged(place, joints, parted, rules),
  )
  place.known.set(start, made)
  return made
}

interface Joints {
  readonly joints: readonly Nm[]
  readonly parted: readonly Nm[]
}

interface Run {
  readonly from: Nm
  readonly start: Nm
  readonly plank: Nm
  /** Whether beyond a missed post other lengths are tried: at the first one only, or they multiply. */
  readonly anew: boolean
}

/** Joints from `from` on: every plank's length, and at the first post they miss, a new beginning. */
function runs(place: Place, run: Run): readonly Joints[] {
  const missed = place.posts.find((post) => misses(run, post))
  if (missed === undefined) return [{ joints: jointsBefore(run, place.to), parted: [] }]
  return waysPast(missed, run).flatMap(({ at, start }) => {
    const rest = onward(place, { from: at, start, plank: run.plank, anew: false })
    if (rest === null) return []
    const joints = [...jointsBefore(run, at), at, ...rest.joints]
    return [{ joints, parted: [at, ...rest.parted] }]
  })
}

/**
 * The one way on behind a first post, parted at the middle of each further post that the joints miss and
 * from there to the joint that would come next. Null where a post is too thin to be parted there.
 */
function onward(place: Place, first: Run): Joints | null {
  const joints: Nm[] = []
  const parted: Nm[] = []
  let run = first
  for (const post of place.posts) {
    if (!misses(run, post)) continue
    const [way] = waysPast(post, run)
    if (way === undefined) return null
    for (const u of jointsBefore(run, way.at)) joints.push(u)
    joints.push(way.at)
    parted.push(way.at)
    run = { ...run, from: way.at, start: way.start }
  }
  for (const u of jointsBefore(run, place.to)) joints.push(u)
  return { joints, parted }
}

/** Whether a post behind the beginning of a run lies between two of its joints. */
function misses({ from, start, plank }: Run, post: Interval): boolean {
  if (post.from < from) return false
  const first = from + start
  const planks = Math.max(0, Math.floor((post.from - first) / plank) + 1)
  return first + planks * plank >= post.to
}

function jointsBefore({ from, start, plank }: Run, end: Nm): Nm[] {
  const joints: Nm[] = []
  for (let u = from + start; u < end; u += plank) joints.push(u)
  return joints
}

/** Where in a post to part, and how long the piece beyond may be: on to the next joint, or anew. */
function waysPast(post: Interval, run: Run): readonly { at: Nm; start: Nm }[] {
  const width = post.to - post.from
  const quarters = run.anew ? [2, 1, 3] : [2]
  const anew = run.anew ? [1, 2, 3].map((n) => Math.floor((run.plank * n) / 4)) : []
  const ways = quarters.flatMap((n) => {
    const at = post.from + Math.floor((width * n) / 4)
    const next = (run.from + run.start - at) % run.plank
    return [next < 0 ? next + run.plank : next, ...anew].map((start) => ({ at, start }))
  })
  return ways.filter(({ at, start }) => post.from < at && start > 0)
}

/**
 * A jointing with the breaches it has by itself: short ends, narrow pieces, joints in doorways. Every
 * start piece tried comes through here, so it goes over the pieces once and keeps nothing.
 */
export function judged(
  place: Place,
  joints: readonly Nm[],
  parted: readonly Nm[],
  rules: PlankRules,
): Jointing {
  const pieces = joints.length + 1
  let breaches = 0
  let slivers = 0
  let hardCuts = 2 * parted.length
  const at = { parted: 0, doorway: 0, narrow: 0, band: 0 }
  let from = place.from
  for (let i = 0; i < pieces; i += 1) {
    const to = joints[i] ?? place.to
    while (at.parted < parted.length && parted[at.parted]! < from) at.parted += 1
    const glued =
      parted[at.parted] === from || parted[at.parted] === to || parted[at.parted + 1] === to
    if ((i === 0 || i === pieces - 1 || glued) && !isWhole(to - from, rules)) {
      if (to - from < rules.shortestEnd) breaches += 1
      if (to - from < rules.width) slivers += 1
    }
    at.doorway = firstPast(place.doorways, at.doorway, from)
    if (i > 0 && (place.doorways[at.doorway]?.from ?? from) < from) breaches += 1
    at.narrow = firstPast(place.narrow, at.narrow, from)
    if ((place.narrow[at.narrow]?.from ?? to) < to) breaches += 1
    at.band = firstPast(place.bands, at.band, from)
    if (place.across === null && isNotched(place, at.band, to)) hardCuts += 1
    from = to
  }
  return {
    start: (joints[0] ?? place.to) - place.from,
    end: place.to - (joints.at(-1) ?? place.from),
    joints,
    parted,
    phase: phaseOf(joints, parted, rules),
    breaches,
    slivers,
    hardCuts,
  }
}

/** The first of intervals from left to right, at or after a place in their list, that ends beyond u. */
function firstPast(intervals: readonly Interval[], start: number, u: Nm): number {
  let i = start
  while (i < intervals.length && intervals[i]!.to <= u) i += 1
  return i
}

/** Whether a corner of the floor is in a piece, so that it must be notched; `at` is its first band. */
function isNotched({ bands }: Place, at: number, to: Nm): boolean {
  const first = bands[at]
  if (first === undefined || first.from >= to) return false
  for (let i = at + 1; i < bands.length && bands[i]!.from < to; i += 1) {
    if (bands[i]!.low !== first.low || bands[i]!.high !== first.high) return true
  }
  return false
}

function phaseOf(joints: readonly Nm[], parted: readonly Nm[], rules: PlankRules): Nm {
  if (rules.lengths.length > 1 || parted.length > 0 || joints.length === 0) return -1
  const plank = rules.lengths[0]!.length
  return ((joints[0]! % plank) + plank) % plank
}

/** Whether a piece can be a plank at its full length. */
export function isWhole(length: Nm, rules: PlankRules): boolean {
  for (const each of rules.lengths) if (each.length === length) return true
  return false
}

/** The blanks of a jointed stretch, left to right. */
export function blanksOf(place: Place, jointing: Jointing): readonly Blank[] {
  const edges = [place.from, ...jointing.joints, place.to]
  const parted = new Set(jointing.parted)
  return edges.slice(1).map((to, i) => {
    const from = edges[i]!
    const cutLeft = parted.has(from)
    const cutRight = parted.has(to)
    return {
      from,
      to,
      across: acrossOf(place, from, to),
      left: from !== place.from && !cutLeft,
      right: to !== place.to && !cutRight,
      cutLeft,
      cutRight,
    }
  })
}
