import { type Boxes, boxes } from '../geometry/boxes.ts'
import type { Nm } from '../units/length.ts'
import type { Laid } from './breaches.ts'
import type { Contact } from './problem.ts'
import type { PublishedBreach, PublishedJoint, PublishedZone } from './published.ts'

/** An interval of a seam along which floor lies on both sides. */
export interface Touch {
  readonly seam: Nm
  readonly from: Nm
  readonly to: Nm
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

/** Joints of neighbouring courses that come nearer to each other than the stagger. */
export function staggers({ rules, joints, touches }: Laid): PublishedBreach[] {
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
  const first = firstWhere(joints, (at) => at > from)
  return joints.slice(
    first,
    Math.max(
      first,
      firstWhere(joints, (at) => at >= to),
    ),
  )
}

/** The first joint from the left past some place. */
function firstWhere(joints: readonly PublishedJoint[], isPast: (at: Nm) => boolean): number {
  let low = 0
  let high = joints.length
  while (low < high) {
    const middle = (low + high) >>> 1
    if (isPast(joints[middle]!.at)) high = middle
    else low = middle + 1
  }
  return low
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

/** End joints inside a doorway's zone. */
export function doorwayJoints({ joints, doorways }: Laid): PublishedBreach[] {
  const zones = boxes<number>()
  for (const [i, { from, to, low, high }] of doorways.entries())
    zones.add(i, { west: from, east: to, south: low, north: high })
  return joints.flatMap((joint) =>
    zonesAt(joint, doorways, zones).map((zone) => ({
      rule: 'doorway joint' as const,
      value: Math.min(joint.at - zone.from, zone.to - joint.at),
      limit: 0,
      at: middleOf(joint),
      pieces: [joint.leftPiece],
      direction: '' as const,
    })),
  )
}

/** The zones that a joint stands in, in their order. */
function zonesAt(
  joint: PublishedJoint,
  doorways: readonly PublishedZone[],
  zones: Boxes<number>,
): readonly PublishedZone[] {
  const found = new Set<number>()
  const { at, low, high } = joint
  zones.some({ west: at, east: at, south: low, north: high }, (i) => {
    if (isInZone(joint, doorways[i]!)) found.add(i)
    return false
  })
  return [...found].sort((a, b) => a - b).map((i) => doorways[i]!)
}

function isInZone({ at, low, high }: PublishedJoint, zone: PublishedZone): boolean {
  return zone.from < at && at < zone.to && Math.min(high, zone.high) > Math.max(low, zone.low)
}
