import type { Nm } from '../units/length.ts'
import { ALIGNED, IN_LINE } from './clash.ts'
import { type Blank, isWhole, type Jointing, judged } from './jointing.ts'
import { breachesHere, type Laying } from './laying.ts'
import { unaligned } from './one-length.ts'
import type { PlankRules } from './problem.ts'
import { acrossOf, type Place } from './stretches.ts'
import { priceOf, woodFor } from './wood.ts'

/** Places beside neighbours' joints at which a run may begin: only a comb of a floor offers more. */
const MOST_NEAR = 48

/** How many part-laid stretches are followed at once: six, and fewer where each goes on in many lengths. */
const BEAM = 6
const LEAST_BEAM = 2
const MOST_AT_ONCE = 48

/** A stretch laid from its left end up to a joint: a list back to the wall, shared by all that go on. */
interface PartLaid {
  readonly at: Nm
  readonly parted: boolean
  readonly before: PartLaid | null
  readonly breaches: number
  readonly cost: number
}

/**
 * How a stretch is jointed with planks of several lengths: a beam search from its left end, plank by
 * plank, for the fewest breaches and then the least cost, where a length costs more the faster it is
 * used up. Cost: planks in the stretch × beam × lengths × neighbours' joints.
 */
export function jointRandomLengths(laying: Laying, place: Place): Jointing {
  const { rules } = laying.field
  const guided = laying.jointings[place.id]
  const found = guided === undefined ? [] : [guided]
  let beam: readonly PartLaid[] = [
    { at: place.from, parted: false, before: null, breaches: 0, cost: 0 },
  ]
  let best: PartLaid | null = null
  while (beam.length > 0) {
    const next: PartLaid[] = []
    for (const part of beam) {
      const whole = finished(laying, place, part)
      if (whole !== null && (best === null || isBetter(whole, best))) best = whole
      next.push(...extended(laying, place, part))
    }
    beam = narrowed(place, next, best, beamOf(rules))
  }
  if (best !== null) found.push(jointingOf(place, best.before, rules))
  return found.length === 0 ? unaligned(laying, place) : fewest(laying, place, found)
}

function jointingOf(place: Place, last: PartLaid | null, rules: PlankRules): Jointing {
  const joints: Nm[] = []
  const parted: Nm[] = []
  for (let part = last; part !== null && part.before !== null; part = part.before) {
    joints.unshift(part.at)
    if (part.parted) parted.unshift(part.at)
  }
  return judged(place, joints, parted, rules)
}

/** The first with the fewest breaches; a guide's own jointing comes second where both are as good. */
function fewest(laying: Laying, place: Place, found: readonly Jointing[]): Jointing {
  return [...found]
    .reverse()
    .reduce((best, each) =>
      breachesHere(laying, place, each) < breachesHere(laying, place, best) ? each : best,
    )
}

function isBetter(a: PartLaid, b: PartLaid): boolean {
  return a.breaches < b.breaches || (a.breaches === b.breaches && a.cost < b.cost)
}

/** The best few, one for each joint reached; those already worse than a finished stretch are dropped. */
function narrowed(
  place: Place,
  parts: readonly PartLaid[],
  best: PartLaid | null,
  most: number,
): readonly PartLaid[] {
  // From the stretch's own end, so that where the house lies does not tell in the last digits.
  const rank = (part: PartLaid) => part.cost - (part.at - place.from)
  const sorted = parts
    .filter((part) => part.breaches < ALIGNED && (best === null || part.breaches <= best.breaches))
    .sort((a, b) => a.breaches - b.breaches || rank(a) - rank(b) || a.at - b.at)
  const kept: PartLaid[] = []
  for (const part of sorted) {
    if (kept.length === most) break
    if (!kept.some((each) => each.at === part.at)) kept.push(part)
  }
  return kept
}

function beamOf({ lengths }: PlankRules): number {
  return Math.max(LEAST_BEAM, Math.min(BEAM, Math.floor(MOST_AT_ONCE / lengths.length)))
}

/** The stretch with one last piece up to its right end, where a plank is long enough for it. */
function finished(laying: Laying, place: Place, part: PartLaid): PartLaid | null {
  const { rules } = laying.field
  const length = place.to - part.at
  const first = part.at === place.from
  const cutLeft = part.parted
  const longest = longestOf(laying)
  if (length > longest || (cutLeft && length === longest)) return null
  if (postMissed(place, part.at, place.to) !== null) return null
  const blank: Blank = {
    from: part.at,
    to: place.to,
    across: acrossOf(place, part.at, place.to),
    left: !first && !cutLeft,
    right: false,
    cutLeft,
    cutRight: false,
  }
  const short = length < rules.shortestEnd && (cutLeft || !isWhole(length, rules))
  return {
    at: place.to,
    parted: false,
    before: part,
    breaches: part.breaches + (short ? 1 : 0) + narrowIn(place, part.at, place.to),
    cost: part.cost + woodFor(laying, blank),
  }
}

/** The stretch with one more piece that is not its last. */
function extended(laying: Laying, place: Place, part: PartLaid): readonly PartLaid[] {
  const first = part.at === place.from
  const cutLeft = part.parted
  const begins = first || cutLeft
  // A piece glued on its left has that end cut, so it is shorter than its plank.
  const most = longestOf(laying) - (cutLeft ? 1 : 0)
  const ends = begins ? beginnings(laying, place, part.at) : wholes(laying, part.at)
  const once = [...new Set(ends)].filter((to) => part.at < to && to - part.at <= most)
  return once.flatMap((end) => {
    const post = postMissed(place, part.at, Math.min(end, place.to))
    const to = post ?? end
    if (to >= place.to) return []
    return [withPiece(laying, place, part, { to, begins, parted: post !== null })]
  })
}

function wholes(laying: Laying, at: Nm): readonly Nm[] {
  return laying.field.rules.lengths.map((each) => at + each.length)
}

/**
 * Where the piece that begins a run may end: a whole plank or a plain fraction of one on, a waiting
 * rest's length on, or just off a neighbour's joint.
 */
function beginnings(laying: Laying, place: Place, at: Nm): readonly Nm[] {
  const { rules } = laying.field
  const longest = longestOf(laying)
  const fractions = [1, 2, 3].map((n) => at + Math.floor((longest * n) / 4))
  const rests = laying.ready.filter((rest) => rest.right).map((rest) => at + rest.length)
  const beside = place.touches.flatMap(({ other }) =>
    (laying.jointings[other]?.joints ?? []).flatMap((joint) =>
      [rules.stagger + rules.toSpare, rules.stagger].flatMap((off) => [joint - off, joint + off]),
    ),
  )
  const near = beside.filter((to) => at < to && to - at < longest).slice(0, MOST_NEAR)
  return [...wholes(laying, at), ...rests, ...fractions, ...near]
}

interface Piece {
  readonly to: Nm
  /** It begins a run, so that its left end is cut or may be. */
  readonly begins: boolean
  readonly parted: boolean
}

function withPiece(laying: Laying, place: Place, part: PartLaid, piece: Piece): PartLaid {
  const { rules } = laying.field
  const { to, begins, parted } = piece
  const length = to - part.at
  const cutLeft = part.parted
  const blank: Blank = {
    from: part.at,
    to,
    across: acrossOf(place, part.at, to),
    left: !begins,
    right: !parted,
    cutLeft,
    cutRight: parted,
  }
  const kind = rules.lengths.findIndex((each) => each.length === length)
  const whole = kind >= 0 && !cutLeft && !parted && blank.across.width === rules.width
  const cut = (begins || parted) && !(kind >= 0 && !cutLeft && !parted)
  const short = cut && length < rules.shortestEnd
  return {
    at: to,
    parted,
    before: part,
    breaches:
      part.breaches +
      (short ? 1 : 0) +
      narrowIn(place, part.at, to) +
      breachesOfJoint(laying, place, to),
    cost:
      part.cost +
      (whole ? priceOf(laying, kind) : woodFor(laying, blank)) +
      (repeatsJoint(laying, place, to) ? laying.pattern.calm * longestOf(laying) : 0),
  }
}

/** Breaches of a joint by where it stands: in a doorway, or too near a neighbour's. */
function breachesOfJoint(laying: Laying, place: Place, u: Nm): number {
  let count = place.doorways.some((zone) => zone.from < u && u < zone.to) ? 1 : 0
  const stagger = Math.max(laying.field.rules.stagger, 1)
  for (const touch of place.touches) {
    if (u < touch.from || u > touch.to) continue
    for (const joint of laying.jointings[touch.other]?.joints ?? []) {
      if (joint === u) return ALIGNED
      if (Math.abs(joint - u) >= stagger) continue
      if (touch.from < Math.min(joint, u) && Math.max(joint, u) < touch.to) count += 1
    }
  }
  return count
}

/** Whether the course but one has a joint in line with it. */
function repeatsJoint(laying: Laying, place: Place, u: Nm): boolean {
  if (laying.pattern.calm === 0) return false
  return place.beyond.some(({ other }) =>
    laying.jointings[other]?.joints.some((joint) => Math.abs(joint - u) < IN_LINE),
  )
}

function narrowIn(place: Place, from: Nm, to: Nm): number {
  return place.narrow.some((part) => part.from < to && part.to > from) ? 1 : 0
}

/** The middle of the first post that a piece would cover whole, or null. */
function postMissed(place: Place, from: Nm, to: Nm): Nm | null {
  const post = place.posts.find((each) => each.from >= from && each.to <= to)
  return post === undefined ? null : post.from + Math.floor((post.to - post.from) / 2)
}

function longestOf(laying: Laying): Nm {
  return laying.field.rules.lengths.reduce((most, each) => Math.max(most, each.length), 0)
}
