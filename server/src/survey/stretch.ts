import type { OnWall, Wall } from '../job/job.ts'
import { allowedFor, type Length, lengthFrom } from './reading.ts'
import type { WallFrame } from './wall-frame.ts'

/** What a thing takes of its wall, counted from the wall's left end after adjustment. */
export interface Stretch {
  readonly left: number
  readonly right: number
  /** One standard deviation of its middle from the wall's end that it was read from, nanometres. */
  readonly sigma: number
  readonly from: 'left' | 'right'
}

/** Null while a reading is missing; `past` where the thing does not lie on its wall. */
export type OnWallFound = Stretch | 'past' | null

/**
 * Where a thing stands on its wall. One that ends past the wall by no more than its readings allow is
 * moved back onto it. `lead` is how far the corner that it was read from lies beyond what the tape
 * touched there.
 */
export function stretchOn(place: OnWall, wall: Wall, frame: WallFrame, lead = 0): OnWallFound {
  const read = hooked(place)
  if (read === null) return null
  const { sigma } = read
  const [near, far] = [read.near + lead, read.far + lead]
  const [left, right] =
    place.from === 'left' ? [near, far] : [frame.length - far, frame.length - near]
  const slack = allowedFor([wall.reading.sigma, place.distance.sigma, place.width.sigma])
  if (left < -slack || right > frame.length + slack || right <= left) return 'past'
  return { ...heldOn(left, right, frame.length), sigma, from: place.from }
}

/** The two jambs off the hook; with the far one read too, it and not the width says where it is. */
function hooked(place: OnWall): { near: number; far: number; sigma: number } | null {
  const near = lengthFrom(place.distance)
  const width = lengthFrom(place.width)
  const far = lengthFrom(place.far)
  if (near === null || (width === null && far === null)) return null
  if (far !== null) {
    return { near: near.nm, far: far.nm, sigma: halfOf(near, far) }
  }
  const half = width!.sigma / 2
  const sigma = Math.sqrt(near.sigma * near.sigma + half * half)
  return { near: near.nm, far: near.nm + width!.nm, sigma }
}

const halfOf = (a: Length, b: Length) => Math.sqrt(a.sigma * a.sigma + b.sigma * b.sigma) / 2

function heldOn(left: number, right: number, length: number): { left: number; right: number } {
  const width = Math.min(length, right - left)
  const start = Math.max(0, Math.min(left, length - width))
  return { left: start, right: Math.min(length, start + width) }
}

/** The whole of a wall, for a side without one. */
export function wholeWall(wall: Wall, frame: WallFrame): Stretch {
  return { left: 0, right: frame.length, sigma: wall.reading.sigma / 2, from: 'left' }
}
