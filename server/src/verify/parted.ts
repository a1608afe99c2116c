import { type Box, boxAround, doubledArea } from './exact.ts'
import type { Found, Joint } from './found.ts'
import type { Course, Floor, Ring } from './layout.ts'
import type { Finding } from './report.ts'
import { mm } from './say.ts'

interface Hole {
  readonly ring: Ring
  readonly box: Box
}

/**
 * A cut and glued joint is a last resort: a plank cannot be lowered over a post that reaches the
 * ceiling. So a parted joint must end at a hole of the area, the hole must lie on both sides of it
 * and inside the course, and must open to neither seam, for an open notch needs no parting.
 */
export function checkParted(floor: Floor, { joints, courses }: Found): readonly Finding[] {
  const holes = floor.area.rings
    .filter((ring) => doubledArea(ring) < 0n)
    .map((ring): Hole => ({ ring, box: boxAround(ring) }))
  return joints
    .filter((joint) => joint.parted)
    .filter((joint) => !holes.some((hole) => parts(hole, joint, courses.get(joint.course)!)))
    .map(({ course, at, low, left, right }) => ({
      code: 'parted-without-hole',
      text: `Pieces ${left.piece} and ${right.piece} are parted at ${mm(at)} along, where no hole closed in by the course asks for it.`,
      course,
      piece: left.piece,
      at: [at, low] as const,
    }))
}

function parts({ ring, box }: Hole, { at, low, high }: Joint, course: Course): boolean {
  return (
    box.low >= course.low &&
    box.high <= course.high &&
    box.west < at &&
    at < box.east &&
    !opensTo(ring, course.low) &&
    !opensTo(ring, course.high) &&
    ring.some(([u, v]) => u === at && (v === low || v === high))
  )
}

function opensTo(ring: Ring, seam: number): boolean {
  return ring.some(([, v], i) => v === seam && ring[(i + 1) % ring.length]![1] === seam)
}
