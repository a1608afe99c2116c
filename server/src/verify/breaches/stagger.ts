import { groupBy } from '../exact.ts'
import type { Found, Joint } from '../found.ts'
import type { Floor } from '../layout.ts'
import type { Contact } from '../meetings.ts'
import type { Breach } from '../report.ts'

/** Where two courses touch along their seam, whatever pieces lie there. */
interface Touch {
  readonly seam: number
  readonly from: number
  readonly to: number
}

/**
 * Joints of neighbouring courses nearer than the stagger. Only joints that reach their common seam
 * count, and only where both lie inside one stretch along which the courses touch: past a wall or a
 * hearth the joints do not weaken one another. Joints in line are no breach but a fault (`aligned.ts`).
 */
export function staggerBreaches({ rules }: Floor, { seams, joints }: Found): readonly Breach[] {
  const reaching = groupBy(joints, ({ high }) => high)
  const leaving = groupBy(joints, ({ low }) => low)
  return touches(seams).flatMap((touch) => {
    const lower = (reaching.get(touch.seam) ?? []).filter((joint) => isInside(joint, touch))
    const upper = (leaving.get(touch.seam) ?? []).filter((joint) => isInside(joint, touch))
    return pairs(lower, upper, rules.stagger)
  })
}

function touches(seams: readonly Contact[]): readonly Touch[] {
  const found: Touch[] = []
  for (const { from, to } of seams) {
    const last = found[found.length - 1]
    if (last !== undefined && last.seam === from[1] && last.to === from[0]) {
      found[found.length - 1] = { ...last, to: to[0] }
    } else found.push({ seam: from[1], from: from[0], to: to[0] })
  }
  return found
}

function isInside({ at }: Joint, { from, to }: Touch): boolean {
  return from < at && at < to
}

function pairs(lower: readonly Joint[], upper: readonly Joint[], limit: number): Breach[] {
  return lower.flatMap((below) =>
    upper
      .map((above) => ({ above, value: Math.abs(above.at - below.at) }))
      .filter(({ value }) => value > 0 && value < limit)
      .map(({ above, value }) => ({
        rule: 'stagger',
        value,
        limit,
        at: [below.at, Math.floor((below.low + below.high) / 2)],
        pieces: [below.left.piece, above.left.piece],
        direction: '',
      })),
  )
}
