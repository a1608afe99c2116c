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

/** A jointing with the breaches it has by itself: short ends, narrow pieces, joints in doorways. */
export function judged(
  place: Place,
  joints: readonly Nm[],
  parted: readonly Nm[],
  rules: PlankRules,
): Jointing {
  const first = joints[0] ?? place.to
  const last = joints.at(-1) ?? place.from
  const ends = endPieces(place, joints, parted)
  const cut = ends.filter((length) => !isWhole(length, rules))
  return {
    start: first - place.from,
    end: place.to - last,
    joints,
    parted,
    phase: phaseOf(joints, parted, rules),
    breaches:
      cut.filter((length) => length < rules.shortestEnd).length +
      narrowPieces(place, joints) +
      joints.filter((u) => place.doorways.some((zone) => zone.from < u && u < zone.to)).length,
    slivers: cut.filter((length) => length < rules.width).length,
    hardCuts: 2 * parted.length + notched(place, joints),
  }
}

function phaseOf(joints: readonly Nm[], parted: readonly Nm[], rules: PlankRules): Nm {
  if (rules.lengths.length > 1 || parted.length > 0 || joints.length === 0) return -1
  const plank = rules.lengths[0]!.length
  return ((joints[0]! % plank) + plank) % plank
}

/** Whether a piece can be a plank at its full length. */
export function isWhole(length: Nm, rules: PlankRules): boolean {
  return rules.lengths.some((each) => each.length === length)
}

/** Lengths of the pieces that end at a wall or at a parted joint: all others are whole planks. */
function endPieces(place: Place, joints: readonly Nm[], parted: readonly Nm[]): readonly Nm[] {
  if (joints.length === 0) return [place.length]
  if (parted.length === 0) return [joints[0]! - place.from, place.to - joints.at(-1)!]
  const edges = [place.from, ...joints, place.to]
  const cut = new Set([place.from, ...parted, place.to])
  return edges
    .slice(1)
    .flatMap((to, i) => (cut.has(to) || cut.has(edges[i]!) ? [to - edges[i]!] : []))
}

/** How many of the pieces hold a part that is narrower than the narrowest rip. */
function narrowPieces(place: Place, joints: readonly Nm[]): number {
  if (place.narrow.length === 0) return 0
  const edges = [place.from, ...joints, place.to]
  return edges
    .slice(1)
    .filter((to, i) => place.narrow.some((part) => part.from < to && part.to > edges[i]!)).length
}

/** How many of the pieces have a corner of the floor in them, and so must be notched. */
function notched(place: Place, joints: readonly Nm[]): number {
  if (place.across !== null) return 0
  const edges = [place.from, ...joints, place.to]
  return edges.slice(1).filter((to, i) => {
    const under = place.bands.filter((band) => band.from < to && band.to > edges[i]!)
    return under.some((band) => band.low !== under[0]!.low || band.high !== under[0]!.high)
  }).length
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
