import { type Box, boxAround, boxesOverlap, groupBy } from './exact.ts'
import type { Floor, Piece, Vertex } from './layout.ts'
import type { Finding } from './report.ts'
import { compareHeights, type Interval, sections } from './sections.ts'

interface Boxed {
  readonly piece: Piece
  readonly box: Box
}

/**
 * No two pieces overlap. Pieces of different courses lie in different strips, so pairs within a
 * course are enough. Where the boxes around two pieces overlap, both are cut at the u of every vertex
 * of either: in each slab both are made of trapeziums, and two trapeziums over the same slab are
 * apart just when one is nowhere above the other's low side at the slab's two ends.
 */
export function checkDisjoint(floor: Floor): readonly Finding[] {
  const courses = groupBy(floor.pieces, ({ course }) => course)
  return [...courses].flatMap(([, pieces]) => overlapsIn(pieces))
}

/** The first faults of a course are enough: a heap of pieces overlaps pair by pair. */
const ENOUGH = 20

function overlapsIn(pieces: readonly Piece[]): Finding[] {
  const boxed = pieces.map((piece): Boxed => ({ piece, box: boxAround(piece.ring) }))
  boxed.sort((a, b) => a.box.west - b.box.west)
  const faults: Finding[] = []
  for (const [i, one] of boxed.entries()) {
    for (let j = i + 1; j < boxed.length && faults.length < ENOUGH; j += 1) {
      const other = boxed[j]!
      if (other.box.west >= one.box.east) break
      const at = boxesOverlap(one.box, other.box) ? whereOverlap(one.piece, other.piece) : null
      if (at === null) continue
      const text = `Pieces ${one.piece.piece} and ${other.piece.piece} lie over one another.`
      const { course, piece } = one.piece
      faults.push({ code: 'pieces-overlap', text, course, piece, at })
    }
  }
  return faults
}

/** A place in or beside the first slab where two pieces overlap, or null. */
function whereOverlap(one: Piece, other: Piece): Vertex | null {
  const cuts = [...one.ring, ...other.ring].map(([u]) => u)
  const others = sections([other.ring], cuts)
  for (const [i, slab] of sections([one.ring], cuts).entries()) {
    for (const a of slab.intervals) {
      const hit = others[i]!.intervals.find((b) => !isBelow(a, b) && !isBelow(b, a))
      if (hit !== undefined) return [slab.from, hit.low[0].whole]
    }
  }
  return null
}

function isBelow(a: Interval, b: Interval): boolean {
  return compareHeights(a.high[0], b.low[0]) <= 0 && compareHeights(a.high[1], b.low[1]) <= 0
}
