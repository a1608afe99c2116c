import type { Nm } from './lengths.ts'
import { type Point, rounded, sameSpot } from './point.ts'

/** A side of a patch: what the floor meets there, where no other floor lies beyond. */
export interface Side {
  readonly from: Point
  readonly to: Point
  readonly gap: Nm
  /** The room or closet whose base or shoe runs there. */
  readonly trim: string | null
  /** The wall that it belongs to, by room and place. */
  readonly wall: { readonly room: string; readonly place: number } | null
  /** The run ends there even where floor begins again. */
  readonly isBreak: boolean
}

/** A ring that adds floor, or takes it away. */
export interface Patch {
  readonly isFloor: boolean
  readonly sides: readonly Side[]
}

type Meets = Partial<Omit<Side, 'from' | 'to'>> & { readonly gap: Nm }

/** Each corner is rounded once. */
export function patch(ring: readonly Point[], meets: Meets, isFloor = true): Patch {
  const corners = ring.map(rounded)
  const sides = corners.map((from, i): Side => {
    const to = corners[(i + 1) % corners.length] ?? from
    return { trim: null, wall: null, isBreak: false, ...meets, from, to }
  })
  return { isFloor, sides: sides.filter(({ from, to }) => !sameSpot(from, to)) }
}
