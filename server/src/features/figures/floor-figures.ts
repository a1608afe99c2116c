import type { LaidFloor } from '../../layout/lay.ts'
import { narrowestOf } from '../../layout/narrowest.ts'
import type { PublishedFloor } from '../../layout/published.ts'
import { isWhole } from '../../report/piece-facts.ts'
import type { Nm } from '../../units/length.ts'

/** What is told of a laid floor at a glance. */
export interface FloorFigures {
  readonly courses: number
  readonly planks: number
  /** Pieces that are sawn, along or across. */
  readonly cut: number
  readonly breaches: number
  /** The narrowest piece, or part of one, as the rule for it measures; null where all are full planks wide. */
  readonly narrowest: { readonly width: Nm; readonly piece: number; readonly course: number } | null
}

const known = new WeakMap<PublishedFloor, FloorFigures>()

/** Looks at every piece once, however many questions are asked and wherever the floor stands in the text. */
export function floorFigures({ published }: LaidFloor): FloorFigures {
  const there = known.get(published)
  if (there !== undefined) return there
  const { courses, planks, pieces, breaches } = published
  const made = {
    courses: courses.length,
    planks: planks.length,
    cut: pieces.filter((piece) => !isWhole(piece)).length,
    breaches: breaches.length,
    narrowest: narrowestPiece(published),
  }
  known.set(published, made)
  return made
}

/** Of two alike the one numbered first. */
function narrowestPiece({ pieces, rules }: PublishedFloor): FloorFigures['narrowest'] {
  let narrowest: FloorFigures['narrowest'] = null
  for (const { piece, course, ring } of pieces) {
    const width = narrowestOf(ring, rules.narrowestRip)
    if (width !== null && width < (narrowest?.width ?? rules.plankWidth)) {
      narrowest = { width, piece, course }
    }
  }
  return narrowest
}
