import { type Line, samePoint, turn } from './exact.ts'
import { near } from './near.ts'
import type { Point } from './point.ts'

/**
 * How two lines lie to each other:
 * - `apart`: no point in common;
 * - `end to end`: one end in common and nothing else;
 * - `back to back`: the same line walked both ways;
 * - `across`: anything else: they cross, overlap, or one ends inside the other.
 */
export type Meeting = 'apart' | 'end to end' | 'back to back' | 'across'

/** How two lines lie to each other, exactly. */
export function meeting(a: Line, b: Line): Meeting {
  if (boxesApart(a, b)) return 'apart'
  if (samePoint(a.from, b.to) && samePoint(a.to, b.from)) return 'back to back'
  const shared = sharedEnd(a, b)
  if (shared) return overlapsFrom(shared, a, b) ? 'across' : 'end to end'
  const sides = turn(a.from, a.to, b.from) * turn(a.from, a.to, b.to)
  const others = turn(b.from, b.to, a.from) * turn(b.from, b.to, a.to)
  // Boxes that meet leave two lines in line no room to be apart; any others meet in just one point,
  // which lies on both where neither has the other's ends on one side.
  return sides > 0 || others > 0 ? 'apart' : 'across'
}

/**
 * Whether any two of the lines meet in a way that `allowed` refuses; it is asked with their indices.
 * Linear in the number of lines unless they crowd together.
 */
export function anyMeeting(
  lines: readonly Line[],
  allowed: (meeting: Meeting, i: number, j: number) => boolean,
): boolean {
  let found = false
  near(lines, 1).cells((indices) => {
    for (let a = 0; a < indices.length && !found; a++) {
      for (let b = a + 1; b < indices.length && !found; b++) {
        const i = indices[a]!
        const j = indices[b]!
        const how = meeting(lines[i]!, lines[j]!)
        if (how !== 'apart' && !allowed(how, i, j)) found = true
      }
    }
  })
  return found
}

function boxesApart(a: Line, b: Line): boolean {
  return (
    Math.max(a.from.x, a.to.x) < Math.min(b.from.x, b.to.x) ||
    Math.max(b.from.x, b.to.x) < Math.min(a.from.x, a.to.x) ||
    Math.max(a.from.y, a.to.y) < Math.min(b.from.y, b.to.y) ||
    Math.max(b.from.y, b.to.y) < Math.min(a.from.y, a.to.y)
  )
}

function sharedEnd(a: Line, b: Line): Point | null {
  if (samePoint(a.from, b.from) || samePoint(a.from, b.to)) return a.from
  if (samePoint(a.to, b.from) || samePoint(a.to, b.to)) return a.to
  return null
}

/** Whether two lines that share an end run from it in one direction. */
function overlapsFrom(end: Point, a: Line, b: Line): boolean {
  const p = samePoint(a.from, end) ? a.to : a.from
  const q = samePoint(b.from, end) ? b.to : b.from
  return (
    turn(end, p, q) === 0 &&
    sameSense(q.x - end.x, p.x - end.x) &&
    sameSense(q.y - end.y, p.y - end.y)
  )
}

function sameSense(a: number, b: number): boolean {
  return Math.sign(a) === Math.sign(b)
}
