import type { Found } from './found.ts'
import { type Contact, contacts } from './meetings.ts'
import type { Finding } from './report.ts'
import { place } from './say.ts'

/**
 * Pieces meet only where the joint profile allows: along seams, and along joints square to them. An
 * upright meeting is a joint (and is held against the list of joints); a level one must lie on the
 * seam of the two courses; a slanted one may not be.
 */
export function checkInnerEdges({ meetings, seams, courses }: Found): readonly Finding[] {
  const offSeam = seams.filter(({ from, before, after }) => {
    const below = courses.get(before.course)!
    const above = courses.get(after.course)!
    return below.high !== from[1] || above.low !== from[1]
  })
  return [...offSeam, ...contacts(meetings.slanted)].map(fault)
}

function fault({ from, to, before, after }: Contact): Finding {
  const text = `Pieces ${before.piece} and ${after.piece} meet from ${place(from)} to ${place(to)}, which is neither a seam nor a joint.`
  return { code: 'inner-edge', text, course: before.course, piece: before.piece, at: from }
}
