import type { Slip } from './slip.ts'
import { spreadCorners } from './spread.ts'
import { lengthOf, minus, type Vector } from './vector.ts'
import type { ReadWall } from './walls.ts'

/** Rooms with more walls are not searched: any diagonal between the suspects will do there. */
const MOST_WALLS = 24
const MOST_SUSPECTS = 8

/** A diagonal, and whether it tells each suspect from every other or only some of them. */
export interface Settling {
  readonly from: number
  readonly to: number
  readonly all: boolean
}

/**
 * The further diagonal that tells most suspects apart: were each of them the slip in turn, its length
 * would come out different by more than `least`. It parts them into those on one side of it and those
 * on the other, so that it settles the matter between two. Of equal ones the clearest is taken.
 */
export function settlingDiagonal(
  walls: readonly ReadWall[],
  suspects: readonly Slip[],
  least: number,
): Settling | null {
  if (walls.length > MOST_WALLS || suspects.length > MOST_SUSPECTS) return null
  const shapes = suspects.map((slip) => spreadCorners(withSlip(walls, slip)))
  const pairs = (suspects.length * (suspects.length - 1)) / 2
  let best: Settling | null = null
  let [most, clearest] = [0, 0]
  for (const [from, to] of diagonals(walls.length)) {
    const apart = differences(shapes.map((corners) => diagonal(corners, from, to)))
    const told = apart.filter((difference) => difference > least)
    const clear = told.reduce((sum, difference) => sum + difference, 0)
    if (told.length < most || told.length === 0) continue
    // A nanometre more is none: equal diagonals keep their order.
    if (told.length === most && clear <= clearest + 1) continue
    best = { from, to, all: told.length === pairs }
    most = told.length
    clearest = clear
  }
  return best
}

/** Pairs of corners that no wall joins. */
function diagonals(count: number): readonly (readonly [number, number])[] {
  const found: (readonly [number, number])[] = []
  for (let from = 0; from < count; from++) {
    for (let to = from + 2; to < count && to - from < count - 1; to++) found.push([from, to])
  }
  return found
}

function withSlip(walls: readonly ReadWall[], slip: Slip): readonly ReadWall[] {
  return walls.map((wall, i) => (i === slip.of.index ? { ...wall, nm: slip.likely } : wall))
}

const diagonal = (corners: readonly Vector[], from: number, to: number) =>
  lengthOf(minus(corners[to]!, corners[from]!))

function differences(values: readonly number[]): readonly number[] {
  return values.flatMap((a, i) => values.slice(i + 1).map((b) => Math.abs(a - b)))
}
