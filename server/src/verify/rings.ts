import { doubledArea } from './exact.ts'
import type { Floor } from './layout.ts'
import type { Finding } from './report.ts'
import { place } from './say.ts'
import { whereNotSimple } from './simple-ring.ts'

/**
 * Each piece's ring is simple and runs counter-clockwise, so that it has one inside, on the left of
 * every edge. All that follows leans on this, so a floor that fails here is proven no further.
 */
export function checkRings(floor: Floor): readonly Finding[] {
  const faults: Finding[] = []
  for (const { piece, course, ring } of floor.pieces) {
    const at = whereNotSimple(ring)
    if (at !== null) {
      const text = `The ring of piece ${piece} touches or crosses itself near ${place(at)}.`
      faults.push({ code: 'ring-not-simple', text, course, piece, at })
    } else if (doubledArea(ring) <= 0n) {
      const text = `The ring of piece ${piece} runs clockwise; a piece's ring runs counter-clockwise.`
      faults.push({ code: 'ring-not-counter-clockwise', text, course, piece, at: ring[0]! })
    }
  }
  return faults
}
