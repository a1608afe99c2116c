import { heightOf, type Interval, sectionsOf } from '../geometry/sections.ts'
import type { Nm } from '../units/length.ts'
import type { Laid } from './breaches.ts'
import type { PublishedBreach, PublishedPiece, PublishedRing } from './published.ts'

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
    const value = narrowestOf(piece.ring)
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

/** At most 1 µm wide counts as a point: there a taper is judged by its wider side. */
const POINT: Nm = 1000

/** The narrowest strip, leg or neck of a piece; null where all of it comes to a point. */
export function narrowestOf(ring: PublishedRing): Nm | null {
  const widths = sectionsOf([ring.map(([x, y]) => ({ x, y }))])
    .flatMap(({ intervals }) => intervals)
    .flatMap(widthOf)
  return widths.length === 0 ? null : widths.reduce((a, b) => Math.min(a, b))
}

function widthOf(interval: Interval): Nm[] {
  const left = heightOf(interval, 0, 'down')
  const right = heightOf(interval, 1, 'down')
  const wider = Math.max(left, right)
  if (wider <= POINT) return []
  const narrower = Math.min(left, right)
  return [narrower <= POINT ? wider : narrower]
}
