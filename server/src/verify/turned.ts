import type { Floor } from './layout.ts'
import type { Finding } from './report.ts'

/** A piece turned by half a turn locks only where the lock is the same from either side. */
export function checkTurned(floor: Floor): readonly Finding[] {
  if (floor.rules.laid === 'either way') return []
  return floor.pieces
    .filter(({ turned }) => turned)
    .map(({ piece, course }) => ({
      code: 'turned-lock',
      text: `Piece ${piece} is turned by half a turn, and this product is laid ${floor.rules.laid} only.`,
      course,
      piece,
    }))
}
