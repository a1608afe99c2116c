import type { Found, Joint } from '../found.ts'
import type { Floor, Zone } from '../layout.ts'
import type { Breach } from '../report.ts'

/** End joints inside a doorway's zone, where feet and doors try them most. */
export function doorwayJointBreaches({ doorways }: Floor, { joints }: Found): readonly Breach[] {
  return joints.flatMap((joint) =>
    doorways
      .filter((zone) => isInside(joint, zone))
      .map((zone) => ({
        rule: 'doorway joint',
        value: Math.min(joint.at - zone.from, zone.to - joint.at),
        limit: 0,
        at: [joint.at, Math.floor((joint.low + joint.high) / 2)],
        pieces: [joint.left.piece],
        direction: '',
      })),
  )
}

function isInside({ at, low, high }: Joint, zone: Zone): boolean {
  return zone.from < at && at < zone.to && Math.max(low, zone.low) < Math.min(high, zone.high)
}
