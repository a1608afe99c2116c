import type { Ring } from '../geometry/point.ts'
import { cos, PI, sin } from '../units/functions.ts'
import { plus, toPoint, type Vector } from './vector.ts'

const SIDES = 64

/**
 * A round thing as a ring of 64 sides drawn round it, counter-clockwise. Four of its sides face the
 * four ways, so that it reaches exactly its radius to each.
 */
export function roundRing(centre: Vector, radius: number): Ring {
  const reach = radius / cos(PI / SIDES)
  return Array.from({ length: SIDES }, (_, i) => {
    const angle = ((2 * i + 1) * PI) / SIDES
    return toPoint(plus(centre, { x: reach * cos(angle), y: reach * sin(angle) }))
  })
}
