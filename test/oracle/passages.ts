import type { Doorway } from './house.ts'
import type { Nm } from './lengths.ts'
import { type Patch, patch, type Side } from './patch.ts'
import { add, dot, less, meeting, middle, type Point, scaled, twiceArea, unit } from './point.ts'
import { compare, ratio, ZERO } from './ratio.ts'

/**
 * The floor in an opening: left and right on the face of the room that is written first, then right and
 * left at the wall beyond; wider by what the floor runs under the jambs.
 */
export function passage({ near, beyond, through }: Doorway, under: Nm): readonly Point[] {
  const { along, out } = near.face
  const left = add(near.left, scaled(along, ratio(-under)))
  const right = add(near.right, scaled(along, ratio(under)))
  const across = (from: Point) => {
    const straight = add(from, scaled(out, ratio(through)))
    const line = beyond === null ? null : meeting(from, out, beyond.left, beyond.along)
    return line === null || compare(dot(less(line, from), out), ZERO) < 0 ? straight : line
  }
  return [left, right, across(right), across(left)]
}

interface Gaps {
  readonly sideGap: Nm
  readonly endGap: Nm
  /** Halves of one floor that lies over itself somewhere keep off each other. */
  readonly isShort: boolean
}

/**
 * What of an opening belongs to a floor: all of it between two of its rooms, both halves where the run
 * is parted, the half on its own side where it ends there.
 */
export function dividedOpening(
  ring: readonly Point[],
  [isNearIn, isFarIn]: readonly [boolean, boolean],
  isParted: boolean,
  { sideGap, endGap, isShort }: Gaps,
): readonly Patch[] {
  const [left, right, rightBeyond, leftBeyond] = ring
  if (!left || !right || !rightBeyond || !leftBeyond || twiceArea(ring).n === 0n) return []
  if (isNearIn && isFarIn && !isParted) return [patch(ring, { gap: sideGap })]
  const [leftHalf, rightHalf] = [middle(left, leftBeyond), middle(right, rightBeyond)]
  const half = (a: Point, b: Point, c: Point, d: Point): Patch => {
    const [end, start] = isShort ? [before(c, b), before(d, a)] : [c, d]
    const { isFloor, sides } = patch([a, b, end, start], { gap: sideGap })
    const ends = (side: Side, i: number) =>
      i === 2 ? { ...side, gap: endGap, isBreak: true } : side
    return { isFloor, sides: sides.map(ends) }
  }
  return [
    ...(isNearIn ? [half(left, right, rightHalf, leftHalf)] : []),
    ...(isFarIn ? [half(rightBeyond, leftBeyond, leftHalf, rightHalf)] : []),
  ]
}

const SHORT = ratio(4n)

/** 4 nm before the middle. */
const before = (end: Point, start: Point): Point => add(end, scaled(unit(less(start, end)), SHORT))
