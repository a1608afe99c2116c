import type { Slip } from './slip.ts'
import { spreadCorners } from './spread.ts'
import { lengthOf, minus, type Vector } from './vector.ts'
import type { ReadWall } from './walls.ts'

/** Rooms with more walls are not searched: any diagonal between the suspects will do there. */
const MOST_WALLS = 24
const MOST_SUSPECTS = 8

/**
 * The further diagonal that would tell suspects apart: the one whose lengths, were each of them the
 * slip in turn, lie farthest from each other. Null where none tells them all apart by `least`.
 */
export function settlingDiagonal(
  walls: readonly ReadWall[],
  suspects: readonly Slip[],
  least: number,
): readonly [number, number] | null {
  if (walls.length > MOST_WALLS || suspects.length > MOST_SUSPECTS) return null
  const shapes = suspects.map((slip) => spreadCorners(withSlip(walls, slip)))
  let best: readonly [number, number] | null = null
  let widest = least
  for (let from = 0; from < walls.length; from++) {
    for (let to = from + 2; to < walls.length; to++) {
      const apart = leastApart(shapes.map((corners) => diagonal(corners, from, to)))
      if (apart > widest + 1) {
        widest = apart
        best = [from, to]
      }
    }
  }
  return best
}

function withSlip(walls: readonly ReadWall[], slip: Slip): readonly ReadWall[] {
  return walls.map((wall, i) => (i === slip.of.index ? { ...wall, nm: slip.likely } : wall))
}

const diagonal = (corners: readonly Vector[], from: number, to: number) =>
  lengthOf(minus(corners[to]!, corners[from]!))

function leastApart(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b)
  return sorted.slice(1).reduce((least, value, i) => Math.min(least, value - sorted[i]!), Infinity)
}
