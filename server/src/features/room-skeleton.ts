import type { Way } from '../job/job.ts'
import { type Insert, joined, READING, stop, text } from './writing/insert.ts'
import { lineStart } from './writing/line-start.ts'

/** A room of more walls is better written line by line. */
export const MOST_WALLS = 40
export const FEWEST_WALLS = 3

/**
 * A room whose readings are all still to be taken, for the tab key to walk through: four walls, six for
 * an L, or as many as are asked for. The ways come round as walked to the right; where the room goes
 * another way, a word is changed. Null for fewer walls than a room has, or too many.
 */
export function roomSkeleton(walls: number, name = 'new room'): Insert | null {
  if (!Number.isInteger(walls) || walls < FEWEST_WALLS || walls > MOST_WALLS) return null
  return joined([text('room '), stop(name), ...readingLines(walls)])
}

/** The lines of a room's walls, from the end of the line above them. */
export function readingLines(walls: number): Insert {
  const lines = waysRound(walls).flatMap((way) => [text(`\n${lineStart(2, way)}`), READING])
  return [...lines, text('\n')]
}

/**
 * Ways that come round once in so many walls: a rectangle, and for each two walls more a step (to the
 * left and to the right again); for an odd number the first corner is cut.
 */
export function waysRound(walls: number): readonly Way[] {
  if (walls === 3) return ['north', 'south-east', 'west']
  const steps = Array.from({ length: (walls - (walls % 2) - 2) / 2 }, (): readonly Way[] => [
    'east',
    'south',
  ])
  const cut: readonly Way[] = walls % 2 === 1 ? ['north-east'] : []
  return ['north', ...cut, ...steps.flat(), 'west']
}
