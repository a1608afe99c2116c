import { toDegrees, withinFullTurn } from '../units/angle.ts'
import { atan2 } from '../units/functions.ts'
import { add, compare, type Ratio, ratio, subtract } from '../units/ratio.ts'
import type { Heading } from './job.ts'
import { eighths } from './ways.ts'

/**
 * How far each wall turns to the right from the wall before it (the first one from the last), in
 * degrees within (−180, 180]. A slant given by where it takes you counts to a millionth of a degree: near
 * enough to count turns, never used for a shape.
 */
export function turnsOf(headings: readonly Heading[]): readonly Ratio[] {
  const looks = looksOf(headings)
  return looks.map((look, i) => withinHalfTurn(subtract(look, looks.at(i - 1)!)))
}

/** Where you look at each wall, degrees clockwise from north (one wall at least must say a way). */
function looksOf(headings: readonly Heading[]): readonly Ratio[] {
  const looks: Ratio[] = new Array(headings.length).fill(ratio(0))
  const fixed = Math.max(
    0,
    headings.findIndex((heading) => heading.kind !== 'turn'),
  )
  for (let step = 0; step < headings.length; step++) {
    const i = (fixed + step) % headings.length
    const heading = headings[i]!
    if (heading.kind === 'way') looks[i] = ratio(45 * eighths(heading.way))
    else if (heading.kind === 'offset') looks[i] = lookAlong(heading.east, heading.north)
    else if (step > 0) looks[i] = add(looks.at(i - 1)!, heading.degreesRight)
  }
  return looks
}

/** Slants that take you back the way they came differ by half a turn exactly: a millionth is rounded off. */
const MILLIONTHS = 1_000_000

/** You go along a wall from left to right: looking north takes you east. */
function lookAlong(east: number, north: number): Ratio {
  const degrees = toDegrees(atan2(0 - north, east))
  return ratio(Math.round(degrees * MILLIONTHS), MILLIONTHS)
}

/** The angle brought into (−180, 180]. */
function withinHalfTurn(degrees: Ratio): Ratio {
  const within = withinFullTurn(degrees)
  return compare(within, ratio(180)) > 0 ? subtract(within, ratio(360)) : within
}
