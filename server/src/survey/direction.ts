import type { Heading, Way } from '../job/job.ts'
import { eighths, WAYS } from '../job/ways.ts'
import { cosineOfDegrees, sineOfDegrees } from '../units/angle.ts'
import { add, type Ratio, ratio } from '../units/ratio.ts'
import { directionOf, type Vector } from './vector.ts'

/**
 * The direction in which each wall is walked: the way you look at it, turned a quarter to the right
 * (looking north you walk east). Turns are summed exactly before any sine is taken, so that a room of
 * right angles lies exactly along the axes. A first wall that is a turn goes by the last wall before it.
 */
export function directionsOf(headings: readonly Heading[]): readonly Vector[] {
  const bearings = bearingsOf(headings)
  return bearings.map(({ base, right }) => turnedRight(base, right))
}

/** A known direction and how far to the right of it, in degrees. */
interface Bearing {
  readonly base: Vector
  readonly right: Ratio
}

const EAST: Vector = { x: 1, y: 0 }

function bearingsOf(headings: readonly Heading[]): readonly Bearing[] {
  const bearings: Bearing[] = headings.map(() => ({ base: EAST, right: ratio(0) }))
  const known = Math.max(
    0,
    headings.findIndex((heading) => heading.kind !== 'turn'),
  )
  for (let step = 0; step < headings.length; step++) {
    const i = (known + step) % headings.length
    bearings[i] = bearingOf(headings[i]!, bearings.at(i - 1)!)
  }
  return bearings
}

function bearingOf(heading: Heading, before: Bearing): Bearing {
  switch (heading.kind) {
    case 'way':
      return { base: EAST, right: degreesFromNorth(heading.way) }
    case 'turn':
      return { base: before.base, right: add(before.right, heading.degreesRight) }
    case 'offset': {
      const way = { x: heading.east, y: heading.north }
      return { base: directionOf({ x: 0, y: 0 }, way), right: ratio(0) }
    }
  }
}

const degreesFromNorth = (way: Way): Ratio => ratio(45 * eighths(way))

function turnedRight(base: Vector, degrees: Ratio): Vector {
  const c = cosineOfDegrees(degrees)
  const s = sineOfDegrees(degrees)
  return { x: base.x * c + base.y * s + 0, y: base.y * c - base.x * s + 0 }
}

/** The eight ways a wall's outside may be said to lie, from the direction in which it is walked. */
function wayOut(walked: Vector): Way {
  const out = { x: -walked.y, y: walked.x }
  let best = 0
  for (let i = 1; i < WAYS.length; i++) {
    if (alike(out, i) > alike(out, best) + 1e-9) best = i
  }
  return WAYS[best]!
}

function alike(out: Vector, way: number): number {
  const degrees = ratio(45 * way)
  return out.x * sineOfDegrees(degrees) + out.y * cosineOfDegrees(degrees)
}

/** The way from a to b, as the nearest of the eight. */
export function wayAlong(v: Vector): Way {
  return wayOut({ x: v.y, y: -v.x })
}
