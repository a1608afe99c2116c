import { checkValue, cornersIn, type ShapeCheck } from './check-value.ts'
import { lengthFrom } from './reading.ts'
import { lengthOf, minus, type Vector } from './vector.ts'
import type { ReadWall } from './walls.ts'

/** One measured distance of a shape: what it was read, how sure, and what corners make it. */
export interface Distance {
  readonly nm: number
  readonly sigma: number
  /** The corners whose places it depends on. */
  readonly corners: readonly number[]
  /** The wall it is, or the check (index in the room's checks). */
  readonly of: { readonly kind: 'wall' | 'check'; readonly index: number }
  readonly value: (corners: readonly Vector[]) => number
}

export function wallDistance({ nm, sigma, wall }: ReadWall, count: number): Distance {
  const [from, to] = [wall.index, (wall.index + 1) % count]
  return {
    nm,
    sigma,
    corners: [from, to],
    of: { kind: 'wall', index: wall.index },
    value: (corners) => lengthOf(minus(corners[to]!, corners[from]!)),
  }
}

type Fixer = Exclude<ShapeCheck, { kind: 'square' }>

/** A check reading as a distance, or null while it is still to be taken. */
export function checkDistance(check: Fixer, index: number, count: number): Distance | null {
  const length = lengthFrom(check.reading)
  if (length === null) return null
  return {
    ...length,
    corners: cornersIn(check, count),
    of: { kind: 'check', index },
    value: (corners) => checkValue(check, corners) ?? 0,
  }
}
