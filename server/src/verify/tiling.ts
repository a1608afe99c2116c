import { doubledArea } from './exact.ts'
import type { Found } from './found.ts'
import type { Floor } from './layout.ts'
import type { Meeting } from './meetings.ts'
import type { Finding } from './report.ts'
import { place } from './say.ts'

/**
 * The pieces' edges cancel but for the area's. Along every stretch of every line, the pieces on one
 * side less those on the other must be what the area has there. Then the number of pieces over a
 * point less the area's winding number there changes across no line; far away it is nought, so it is
 * nought everywhere: the area is covered, and nothing else is. (That none is covered twice is
 * `disjoint.ts`; both together are a tiling.) The equal areas say the same once more in one number.
 */
export function checkTiling(floor: Floor, { meetings }: Found): readonly Finding[] {
  const faults = [...meetings.level, ...meetings.upright, ...meetings.slanted]
    .filter((m) => m.before.length - m.after.length !== m.rimBefore - m.rimAfter)
    .map(unmatched)
  const covered = floor.pieces.reduce((sum, { ring }) => sum + doubledArea(ring), 0n)
  const wanted = floor.area.rings.reduce((sum, ring) => sum + doubledArea(ring), 0n)
  if (covered === wanted) return faults
  const [code, word] = covered < wanted ? ['area-not-covered', 'less'] : ['area-overfilled', 'more']
  const off = covered < wanted ? wanted - covered : covered - wanted
  const text = `The pieces together cover ${off} half square nanometres ${word} than the area.`
  return [...faults, { code, text }]
}

function unmatched({ from, to, before, after }: Meeting): Finding {
  const pieces = [...before, ...after]
  const where = `from ${place(from)} to ${place(to)}`
  const text =
    pieces.length === 0
      ? `The area ends ${where}, and no piece ends there.`
      : `An edge of piece ${pieces[0]!.piece} runs ${where} and is met neither by one other piece nor by the area's edge.`
  const at = from
  return pieces.length === 0
    ? { code: 'edges-do-not-cancel', text, at }
    : {
        code: 'edges-do-not-cancel',
        text,
        at,
        course: pieces[0]!.course,
        piece: pieces[0]!.piece,
      }
}
