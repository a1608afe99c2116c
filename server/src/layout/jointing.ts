import type { Nm } from '../units/length.ts'
import type { Band, Interval, PlankRules } from './problem.ts'
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
  const joints: Nm[] = []
  for (let u = run.from + run.start; u < place.to; u += run.plank) joints.push(u)
  const missed = place.posts.find(
    (post) => post.from >= run.from && !joints.some((u) => post.from < u && u < post.to),
  )
  if (missed === undefined) return [{ joints, parted: [] }]
  return waysPast(missed, run).flatMap(({ at, start }) => {
    const before = joints.filter((u) => u < at)
    return runs(place, { from: at, start, plank: run.plank, anew: false }).map((rest) => ({
      joints: [...before, at, ...rest.joints],
      parted: [at, ...rest.parted],
    }))
  })
}

/** Where in a post to part, and how long the piece beyond may be: on to the next joint, or anew. */
function waysPast(post: Interval, run: Run): readonly { at: Nm; start: Nm }[] {
  const width = post.to - post.from
  const quarters = run.anew ? [2, 1, 3] : [2]
  const anew = run.anew ? [1, 2, 3].map((n) => Math.floor((run.plank * n) / 4)) : []
  const ways = quarters.flatMap((n) => {
    const at = post.from + Math.floor((width * n) / 4)
    const onward = (run.from + run.start - at) % run.plank
    return [onward < 0 ? onward + run.plank : onward, ...anew].map((start) => ({ at, start }))
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
  let from = place.from
  for (let i = 0; i < pieces; i += 1) {
    const to = joints[i] ?? place.to
    const cut = i === 0 || i === pieces - 1 || parted.includes(from) || parted.includes(to)
    if (cut && !isWhole(to - from, rules)) {
      if (to - from < rules.shortestEnd) breaches += 1
      if (to - from < rules.width) slivers += 1
    }
    if (i > 0 && stands(from, place.doorways)) breaches += 1
    if (lies(from, to, place.narrow)) breaches += 1
    if (place.across === null && isNotched(place, from, to)) hardCuts += 1
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

/** Whether a joint stands strictly inside one of the intervals. */
function stands(u: Nm, intervals: readonly Interval[]): boolean {
  for (const each of intervals) if (each.from < u && u < each.to) return true
  return false
}

/** Whether a piece has a part in one of the intervals. */
function lies(from: Nm, to: Nm, intervals: readonly Interval[]): boolean {
  for (const each of intervals) if (each.from < to && each.to > from) return true
  return false
}

/** Whether a corner of the floor is in a piece, so that it must be notched. */
function isNotched(place: Place, from: Nm, to: Nm): boolean {
  let first: Band | null = null
  for (const band of place.bands) {
    if (band.from >= to || band.to <= from) continue
    if (first === null) first = band
    else if (band.low !== first.low || band.high !== first.high) return true
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
