import type { Point } from '../geometry/point.ts'
import { exchanged, heightOf, type Interval, sectionsOf } from '../geometry/sections.ts'
import type { Nm } from '../units/length.ts'
import type { Contact, PlankRules } from './problem.ts'
import type {
  PublishedBreach,
  PublishedJoint,
  PublishedPiece,
  PublishedRing,
  PublishedZone,
} from './published.ts'

/** What the soft rules are held against. */
export interface Laid {
  readonly rules: PlankRules
  readonly pieces: readonly PublishedPiece[]
  readonly joints: readonly PublishedJoint[]
  readonly planks: readonly { readonly plank: number; readonly length: Nm }[]
  /** Where neighbouring courses touch, with the seam between them. */
  readonly touches: readonly Touch[]
  readonly rings: readonly PublishedRing[]
  readonly doorways: readonly PublishedZone[]
}

/** An interval of a seam along which floor lies on both sides. */
export interface Touch {
  readonly seam: Nm
  readonly from: Nm
  readonly to: Nm
}

/** Every breach of a soft rule, as `published.ts` defines them: rule by rule, then in the order of pieces. */
export function breachesOf(laid: Laid): PublishedBreach[] {
  return [
    ...staggers(laid),
    ...shortEnds(laid),
    ...narrowRips(laid),
    ...longRuns(laid),
    ...doorwayJoints(laid),
  ]
}

/** Contacts of stretches as intervals of their seams: those that go on into each other are one. */
export function touchesOf(contacts: readonly Contact[], seamOf: (contact: Contact) => Nm): Touch[] {
  const touches: Touch[] = []
  for (const contact of contacts) {
    const seam = seamOf(contact)
    const last = touches.at(-1)
    if (last && last.seam === seam && last.to === contact.from) {
      touches[touches.length - 1] = { ...last, to: contact.to }
    } else touches.push({ seam, from: contact.from, to: contact.to })
  }
  return touches
}

function staggers({ rules, joints, touches }: Laid): PublishedBreach[] {
  const reaching = bySeam(joints, ({ high }) => high)
  const leaving = bySeam(joints, ({ low }) => low)
  return touches.flatMap((touch) => {
    const lower = within(reaching.get(touch.seam) ?? [], touch)
    const upper = within(leaving.get(touch.seam) ?? [], touch)
    return closePairs(lower, upper, rules.stagger).map(({ below, above, value }) => ({
      rule: 'stagger' as const,
      value,
      limit: rules.stagger,
      at: middleOf(below),
      pieces: [below.leftPiece, above.leftPiece],
      direction: '' as const,
    }))
  })
}

function bySeam(joints: readonly PublishedJoint[], seamOf: (joint: PublishedJoint) => Nm) {
  const groups = new Map<Nm, PublishedJoint[]>()
  for (const joint of joints) {
    const group = groups.get(seamOf(joint))
    if (group) group.push(joint)
    else groups.set(seamOf(joint), [joint])
  }
  for (const group of groups.values()) group.sort((a, b) => a.at - b.at)
  return groups
}

/** The joints strictly inside an interval, out of a list from left to right. */
function within(joints: readonly PublishedJoint[], { from, to }: Touch): readonly PublishedJoint[] {
  const first = joints.findIndex(({ at }) => at > from)
  const after = joints.findIndex(({ at }) => at >= to)
  return first < 0 ? [] : joints.slice(first, after < 0 ? joints.length : Math.max(first, after))
}

/** Pairs nearer than the limit but not in line, which is no breach but forbidden. */
function closePairs(lower: readonly PublishedJoint[], upper: readonly PublishedJoint[], limit: Nm) {
  const found: { below: PublishedJoint; above: PublishedJoint; value: Nm }[] = []
  let first = 0
  for (const below of lower) {
    while (first < upper.length && upper[first]!.at <= below.at - limit) first++
    for (let i = first; i < upper.length && upper[i]!.at < below.at + limit; i++) {
      const value = Math.abs(upper[i]!.at - below.at)
      if (value > 0) found.push({ below, above: upper[i]!, value })
    }
  }
  return found
}

function middleOf({ at, low, high }: PublishedJoint): readonly [Nm, Nm] {
  return [at, Math.floor((low + high) / 2)]
}

function shortEnds({ rules, pieces, planks }: Laid): PublishedBreach[] {
  const lengths = new Map(planks.map(({ plank, length }) => [plank, length]))
  return pieces.flatMap((piece) => {
    const places = piece.ring.map(([u]) => u)
    const value = places.reduce((a, b) => Math.max(a, b)) - places.reduce((a, b) => Math.min(a, b))
    const isWhole = piece.along[1] - piece.along[0] >= lengths.get(piece.plank)!
    return isWhole || value >= rules.shortestEnd
      ? []
      : [ofPiece('shortest end', piece, value, rules.shortestEnd)]
  })
}

function narrowRips({ rules, pieces }: Laid): PublishedBreach[] {
  return pieces.flatMap((piece) => {
    const value = narrowestOf(piece.ring)
    return value === null || value >= rules.narrowestRip
      ? []
      : [ofPiece('narrowest rip', piece, value, rules.narrowestRip)]
  })
}

function ofPiece(
  rule: 'shortest end' | 'narrowest rip',
  { piece, ring }: PublishedPiece,
  value: Nm,
  limit: Nm,
): PublishedBreach {
  return { rule, value, limit, at: ring[0]!, pieces: [piece], direction: '' }
}

/** At most 1 µm wide counts as a point: there a taper is judged by its wider side. */
const POINT: Nm = 1000

/** The narrowest strip, leg or neck of a piece; null where all of it comes to a point. */
export function narrowestOf(ring: PublishedRing): Nm | null {
  const widths = sectionsOf([ring.map(pointOf)])
    .flatMap(({ intervals }) => intervals)
    .flatMap(widthOf)
  return widths.length === 0 ? null : widths.reduce((a, b) => Math.min(a, b))
}

function widthOf(interval: Interval): Nm[] {
  const left = heightOf(interval, 0, 'down')
  const right = heightOf(interval, 1, 'down')
  const wider = Math.max(left, right)
  if (wider <= POINT) return []
  const narrower = Math.min(left, right)
  return [narrower <= POINT ? wider : narrower]
}

function longRuns({ rules, rings }: Laid): PublishedBreach[] {
  const { along, across } = rules.longestRun
  const upright = rings.map((ring) => ring.map(pointOf))
  const level = upright.map((ring) => ring.map(exchanged))
  return [
    ...longRun('along', along, level, (run) => [run.from, run.line]),
    ...longRun('across', across, upright, (run) => [run.line, run.from]),
  ]
}

/** A straight line inside the floor: the coordinate that it keeps, where it begins and how long it is. */
interface Run {
  readonly line: Nm
  readonly from: Nm
  readonly length: Nm
}

function longRun(
  direction: 'along' | 'across',
  limit: Nm | null,
  rings: readonly (readonly Point[])[],
  atOf: (run: Run) => readonly [Nm, Nm],
): PublishedBreach[] {
  if (limit === null || reachOf(rings) <= limit) return []
  const run = longestUpright(rings)
  if (!run || run.length <= limit) return []
  return [{ rule: 'longest run', value: run.length, limit, at: atOf(run), pieces: [], direction }]
}

/** No upright line is longer than the floor is high: that saves looking as a rule. */
function reachOf(rings: readonly (readonly Point[])[]): Nm {
  const heights = rings.flat().map(({ y }) => y)
  if (heights.length === 0) return 0
  return heights.reduce((a, b) => Math.max(a, b)) - heights.reduce((a, b) => Math.min(a, b))
}

/** The longest upright line inside the rings; of equal ones the leftmost, then the lowest. */
function longestUpright(rings: readonly (readonly Point[])[]): Run | null {
  let best: Run | null = null
  for (const { from, to, intervals } of sectionsOf(rings)) {
    for (const interval of intervals) {
      for (const side of [0, 1] as const) {
        const run = {
          line: side === 0 ? from : to,
          from: interval.low[side].whole,
          length: heightOf(interval, side, 'up'),
        }
        if (!best || isBetter(run, best)) best = run
      }
    }
  }
  return best
}

function isBetter(run: Run, best: Run): boolean {
  return (
    run.length > best.length ||
    (run.length === best.length &&
      (run.line < best.line || (run.line === best.line && run.from < best.from)))
  )
}

function doorwayJoints({ joints, doorways }: Laid): PublishedBreach[] {
  return joints.flatMap((joint) =>
    doorways
      .filter((zone) => isInZone(joint, zone))
      .map((zone) => ({
        rule: 'doorway joint' as const,
        value: Math.min(joint.at - zone.from, zone.to - joint.at),
        limit: 0,
        at: middleOf(joint),
        pieces: [joint.leftPiece],
        direction: '' as const,
      })),
  )
}

function isInZone({ at, low, high }: PublishedJoint, zone: PublishedZone): boolean {
  return zone.from < at && at < zone.to && Math.min(high, zone.high) > Math.max(low, zone.low)
}

function pointOf([x, y]: readonly [Nm, Nm]): Point {
  return { x, y }
}
