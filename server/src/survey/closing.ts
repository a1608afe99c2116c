import { roundToNm } from '../units/round.ts'
import { SURELY_MISREAD } from './reading.ts'
import type { Closing } from './survey.ts'
import { misclosureOf } from './traverse.ts'
import { courseOf, type ReadWall } from './walls.ts'

/** What the closing error of these walls may come to, east and north, nanometres. */
export interface Allowed {
  readonly east: number
  readonly north: number
}

/**
 * Each component may be as large as 2·√Σσ² over the walls that contribute to it; a wall at an angle
 * contributes the part of its worth that lies along the component.
 */
export function allowedMiss(walls: readonly ReadWall[]): Allowed {
  let east = 0
  let north = 0
  for (const { sigma, direction } of walls) {
    east += sigma * direction.x * (sigma * direction.x)
    north += sigma * direction.y * (sigma * direction.y)
  }
  return { east: 2 * Math.sqrt(east), north: 2 * Math.sqrt(north) }
}

/** How well walls close as walked, before anything is spread. */
export function closingOf(walls: readonly ReadWall[], rule: 'transit' | 'compass'): Closing {
  const miss = misclosureOf(walls.map(courseOf))
  const allowed = allowedMiss(walls)
  return {
    east: roundToNm(miss.east),
    north: roundToNm(miss.north),
    length: roundToNm(miss.length),
    perimeter: roundToNm(miss.perimeter),
    ratio: roundToNm(miss.length) === 0 ? null : miss.ratio,
    allowedEast: roundToNm(allowed.east),
    allowedNorth: roundToNm(allowed.north),
    within: Math.abs(miss.east) <= allowed.east && Math.abs(miss.north) <= allowed.north,
    rule,
  }
}

/** A room whose shape comes from distances has no misclosure of its own: its checks tell. */
export function closedByDistances(perimeter: number): Closing {
  return {
    east: 0,
    north: 0,
    length: 0,
    perimeter: roundToNm(perimeter),
    ratio: null,
    allowedEast: 0,
    allowedNorth: 0,
    within: true,
    rule: 'distances',
  }
}

/** A miss so large that a reading is wrong: the shape only stands in for the room's. */
export function isSurelyMisread(closing: Closing): boolean {
  return (
    Math.abs(closing.east) > SURELY_MISREAD * closing.allowedEast ||
    Math.abs(closing.north) > SURELY_MISREAD * closing.allowedNorth
  )
}
