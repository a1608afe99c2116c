import type { Nm } from '../units/length.ts'
import type { Laid } from './breaches.ts'
import { narrowestOf } from './narrowest.ts'
import type { PublishedBreach, PublishedPiece } from './published.ts'

/** Cut pieces shorter along the planks than the shortest end. */
export function shortEnds({ rules, pieces, planks }: Laid): PublishedBreach[] {
  const lengths = new Map(planks.map(({ plank, length }) => [plank, length]))
  return pieces.flatMap((piece) => {
    const places = piece.ring.map(([u]) => u)
    const value = places.reduce((a, b) => Math.max(a, b)) - places.reduce((a, b) => Math.min(a, b))
    const isWhole = piece.along[1] - piece.along[0] >= lengths.get(piece.plank)!
    return isWhole || value >= rules.shortestEnd
      ? []
      : [ofPiece('shortest end', piece, value, rules.shortestEnd)]
  })
}

/** Pieces with a strip, leg or neck narrower than the narrowest rip. */
export function narrowRips({ rules, pieces }: Laid): PublishedBreach[] {
  return pieces.flatMap((piece) => {
    const value = narrowestOf(piece.ring, rules.narrowestRip)
    return value === null || value >= rules.narrowestRip
      ? []
      : [ofPiece('narrowest rip', piece, value, rules.narrowestRip)]
  })
}

function ofPiece(
  rule: 'shortest end' | 'narrowest rip',
  { piece, ring }: PublishedPiece,
  value: Nm,
  limit: Nm,
): PublishedBreach {
  return { rule, value, limit, at: ring[0]!, pieces: [piece], direction: '' }
}
