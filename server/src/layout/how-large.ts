import { twiceAreaOf } from '../geometry/exact.ts'
import type { FloorArea } from './floor-area.ts'
import { type Frame, intoFrame } from './frame.ts'
import { middleOf } from './middle.ts'
import type { PlankRules } from './problem.ts'

/** No floor in a house takes more planks; beyond it only a slip in the text would. */
export const MOST_PLANKS = 20_000

/** Pieces that one more wall may make: without it a long text could not ask for a long answer. */
const PIECES_FOR_A_WALL = 4

/** Whether a floor takes more planks than any does by its area alone, or planks without a size. */
export function takesTooManyPlanks(area: FloorArea, rules: PlankRules): boolean {
  const { shortest, width } = leastPlank(rules)
  if (!(0 < shortest && 0 < width)) return true
  const most = BigInt(MOST_PLANKS) * BigInt(shortest) * BigInt(width)
  return twiceAreaOf(area.gross) > 2n * most
}

/**
 * Whether the rim alone cuts a floor into more pieces than any floor has, however little its area: a
 * passage a hair wide and five miles long. Each two walls that cross a course part a stretch off, and
 * each two walls along the planks have a plank's length between them again and again.
 */
export function hasTooManyPieces(area: FloorArea, frame: Frame, rules: PlankRules): boolean {
  const { shortest, width } = leastPlank(rules)
  const middle = middleOf(area)
  const pieces = area.rim.reduce((sum, edge) => {
    const [from, to] = [intoFrame(frame, edge.from, middle), intoFrame(frame, edge.to, middle)]
    return sum + (Math.abs(to.x - from.x) / shortest + Math.abs(to.y - from.y) / width) / 2
  }, 0)
  return pieces > MOST_PLANKS + PIECES_FOR_A_WALL * area.rim.length
}

function leastPlank({ lengths, width }: PlankRules) {
  const shortest = lengths.reduce((least, each) => Math.min(least, each.length), Infinity)
  return { shortest, width }
}
