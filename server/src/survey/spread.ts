import { type Course, compassRule, misclosureOf } from './traverse.ts'
import { dot, type Vector } from './vector.ts'
import { courseOf, isAlongAxis, type ReadWall } from './walls.ts'

/**
 * The corners of a traverse after its misclosure was spread, from the first at the origin. Corner i
 * begins wall i. Not rounded. Walls given by the way you look keep it, so that what was square stays
 * exactly square.
 */
export function spreadCorners(walls: readonly ReadWall[]): readonly Vector[] {
  const courses = walls.map(courseOf)
  const spread = spreadMisclosure(courses, (i) => {
    const wall = walls[i]!
    return wall.wall.heading.kind === 'way' || isAlongAxis(wall)
  })
  const corners: Vector[] = []
  let at: Vector = { x: 0, y: 0 }
  for (const course of spread) {
    corners.push(at)
    at = { x: at.x + course.east, y: at.y + course.north }
  }
  return corners
}

/**
 * Spreads a misclosure by length, as the compass rule does, but a course that keeps its direction is
 * only lengthened or shortened. Of all corrections that close the traverse these have the least Σc²/L.
 * Where no course keeps its direction it is the compass rule; where all do, along the axes, it is the
 * transit rule.
 */
export function spreadMisclosure(
  courses: readonly Course[],
  keepsDirection: (index: number) => boolean,
): readonly Course[] {
  let [ee, en, nn] = [0, 0, 0]
  courses.forEach(({ east, north, length }, i) => {
    const kept = keepsDirection(i) && length > 0
    ee += kept ? (east * east) / length : length
    en += kept ? (east * north) / length : 0
    nn += kept ? (north * north) / length : length
  })
  const size = ee * nn - en * en
  // All courses in one line: nothing that keeps them there closes them.
  if (size <= 1e-9 * ee * nn) return compassRule(courses)
  const miss = misclosureOf(courses)
  const pull: Vector = {
    x: (miss.north * en - miss.east * nn) / size,
    y: (miss.east * en - miss.north * ee) / size,
  }
  return courses.map((course, i) => corrected(course, pull, keepsDirection(i)))
}

function corrected(course: Course, pull: Vector, kept: boolean): Course {
  const { east, north, length } = course
  if (length === 0) return course
  if (!kept) return { ...course, east: east + length * pull.x, north: north + length * pull.y }
  const stretch = dot({ x: east, y: north }, pull) / length
  return { ...course, east: east + east * stretch, north: north + north * stretch }
}
