import type { Point, Ring } from '../../geometry/point.ts'
import type { Nm } from '../../units/length.ts'
import { roundToNm } from '../../units/round.ts'

/** A direction of length one; y north, so that its left is (−y, x). */
export interface Direction {
  readonly x: number
  readonly y: number
}

export const EAST: Direction = { x: 1, y: 0 }
export const NORTH: Direction = { x: 0, y: 1 }

/** The direction from `a` to `b`; east where they are one point. */
export function direction(a: Point, b: Point): Direction {
  const length = distance(a, b)
  return length === 0 ? EAST : { x: (b.x - a.x) / length, y: (b.y - a.y) / length }
}

export function distance(a: Point, b: Point): number {
  const x = b.x - a.x
  const y = b.y - a.y
  return Math.sqrt(x * x + y * y)
}

export function left(of: Direction): Direction {
  return { x: -of.y, y: of.x }
}

export function opposite(of: Direction): Direction {
  return { x: -of.x, y: -of.y }
}

/** `from`, moved by `ahead` along the direction and by `aside` to its left; rounded to nanometres. */
export function moved(from: Point, along: Direction, ahead: number, aside = 0): Point {
  return {
    x: roundToNm(from.x + along.x * ahead - along.y * aside),
    y: roundToNm(from.y + along.y * ahead + along.x * aside),
  }
}

export function middle(a: Point, b: Point): Point {
  return { x: roundToNm((a.x + b.x) / 2), y: roundToNm((a.y + b.y) / 2) }
}

/** The direction that reads left to right, or bottom to top where it is nearly upright. */
export function readable(along: Direction): Direction {
  const upright = Math.abs(along.x) < 0.2
  const forward = upright ? along.y > 0 : along.x > 0
  return forward ? along : opposite(along)
}

/** A direction as whole millionths, for a scene. */
export function inMillionths(along: Direction): Point {
  return { x: roundToNm(along.x * 1_000_000), y: roundToNm(along.y * 1_000_000) }
}

/** A rectangle about its middle, counter-clockwise, its long side along the direction. */
export function plate(about: Point, along: Direction, length: Nm, breadth: Nm): Ring {
  const [ahead, aside] = [length / 2, breadth / 2]
  return [
    moved(about, along, -ahead, -aside),
    moved(about, along, ahead, -aside),
    moved(about, along, ahead, aside),
    moved(about, along, -ahead, aside),
  ]
}

/** A quarter turn about `about` from direction `a` to direction `b`, found by halving: no trigonometry. */
export function quarterArc(about: Point, a: Direction, b: Direction, radius: Nm): Point[] {
  let steps: Direction[] = [a, b]
  for (let halving = 0; halving < 4; halving += 1) {
    steps = steps.flatMap((from, i) => {
      const to = steps[i + 1]
      return to === undefined ? [from] : [from, between(from, to)]
    })
  }
  return steps.map((step) => moved(about, step, radius))
}

function between(a: Direction, b: Direction): Direction {
  const x = a.x + b.x
  const y = a.y + b.y
  const length = Math.sqrt(x * x + y * y)
  return { x: x / length, y: y / length }
}

/** The least box around points, as its lower and upper corner. */
export function extent(points: readonly Point[]): { readonly low: Point; readonly high: Point } {
  let [left_, bottom, right, top] = [Infinity, Infinity, -Infinity, -Infinity]
  for (const { x, y } of points) {
    left_ = Math.min(left_, x)
    bottom = Math.min(bottom, y)
    right = Math.max(right, x)
    top = Math.max(top, y)
  }
  if (points.length === 0) return { low: { x: 0, y: 0 }, high: { x: 0, y: 0 } }
  return { low: { x: left_, y: bottom }, high: { x: right, y: top } }
}
