import type { LaidFloor } from '../layout/lay.ts'
import { narrowestOf } from '../layout/narrowest.ts'
import type { PublishedPiece } from '../layout/published.ts'
import { pieceFacts } from '../report/piece-facts.ts'
import type { Nm } from '../units/length.ts'

/** What is told of a laid floor at a glance. */
export interface FloorFigures {
  readonly courses: number
  readonly planks: number
  /** Pieces that are sawn, along or across. */
  readonly cut: number
  readonly breaches: number
  /** The narrowest ripped piece, as the rule for it measures; null where none is ripped. */
  readonly narrowest: { readonly width: Nm; readonly piece: number; readonly course: number } | null
}

const known = new WeakMap<LaidFloor, FloorFigures>()

/** Looks at every piece once, however many questions are asked. */
export function floorFigures(laid: LaidFloor): FloorFigures {
  const there = known.get(laid)
  if (there !== undefined) return there
  const { courses, planks, pieces, breaches } = laid.published
  const made = {
    courses: courses.length,
    planks: planks.length,
    cut: pieces.filter((piece) => pieceFacts(piece).cut !== 'whole').length,
    breaches: breaches.length,
    narrowest: narrowestPiece(pieces, laid.product.rules.narrowestRip.value),
  }
  known.set(laid, made)
  return made
}

/** Of two alike the one numbered first. */
function narrowestPiece(pieces: readonly PublishedPiece[], rip: Nm): FloorFigures['narrowest'] {
  let narrowest: FloorFigures['narrowest'] = null
  for (const { piece, course, ring, factory } of pieces) {
    if (factory.low && factory.high) continue
    const width = narrowestOf(ring, rip)
    if (width !== null && (narrowest === null || width < narrowest.width)) {
      narrowest = { width, piece, course }
    }
  }
  return narrowest
}
