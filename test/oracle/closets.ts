import type { Placed } from './house.ts'
import type { Job } from './job.ts'
import { add, type Point, scaled } from './point.ts'
import { compare, half, minus, plus, type Ratio, ratio, ZERO } from './ratio.ts'
import type { Spot } from './spots.ts'
import { standsOff, thickness } from './worth.ts'

export interface Closet {
  readonly key: string
  readonly room: string
  readonly ring: readonly Point[]
  /** What lies in the wall: left and right on the face, then right and left behind it. */
  readonly throat: readonly Point[]
  /** Of its opening. */
  readonly width: Ratio
}

/** The floor behind a closet's opening. */
export function closetOf(job: Job, { shape }: Placed, spot: Spot): Closet {
  const { one, face, left, right } = spot
  const wall = thickness(job, one.thick, shape.room.walls[one.wall]?.thick) + standsOff(shape.room)
  const width = minus(spot.to, spot.from)
  const inside = insideOf(spot, width)
  const back = minus(ZERO, leftReturnOf(spot, minus(inside, width)))
  const at = (on: Ratio, behind: bigint) =>
    add(add(left, scaled(face.along, on)), scaled(face.out, ratio(wall + behind)))
  const [start, end] = [back, plus(back, inside)]
  const deep = one.deep ?? 0n
  return {
    key: one.called ?? `${shape.room.key} closet`,
    room: shape.room.key,
    ring: [at(start, 0n), at(start, deep), at(end, deep), at(end, 0n)],
    width,
    throat: [left, right, at(width, 0n), at(ZERO, 0n)],
  }
}

/** As read, else the opening and its returns; never less than the opening. */
function insideOf({ one }: Spot, width: Ratio): Ratio {
  const together = plus(width, ratio((one.leftReturn ?? 0n) + (one.rightReturn ?? 0n)))
  const inside = one.inside === null ? together : ratio(one.inside)
  return compare(inside, width) < 0 ? width : inside
}

/** As read, as the right one leaves it, or half of what lies beside the opening. */
function leftReturnOf({ one }: Spot, beside: Ratio): Ratio {
  const least = (a: Ratio) => (compare(a, beside) > 0 ? beside : a)
  if (one.leftReturn !== null) return least(ratio(one.leftReturn))
  if (one.rightReturn !== null) return minus(beside, least(ratio(one.rightReturn)))
  return half(beside)
}
