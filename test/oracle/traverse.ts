import type { Wall } from './job.ts'
import { add, cross, dot, length, type Point, point, scaled, unit } from './point.ts'
import { minus, negative, over, plus, type Ratio, ratio, root, sum, times, ZERO } from './ratio.ts'
import { WAYS } from './read-room.ts'
import { cosine, sine } from './turns.ts'
import type { Taken } from './worth.ts'
import { allowance } from './worth.ts'

/** A wall as a course of the traverse: one with a fixed direction keeps it when the loop is closed. */
export interface Course {
  readonly along: Point
  readonly isFixed: boolean
  readonly taken: Taken
}

export interface Closing {
  readonly misclosure: Point
  readonly perimeter: Ratio
  readonly allowed: { readonly east: bigint; readonly north: bigint }
}

/** Which way each wall takes you: you walk it with the wall on your left. */
export function coursesOf(walls: readonly Wall[], takens: readonly Taken[]): readonly Course[] {
  const known = walls.findIndex(({ turn }) => turn === null)
  const along: Point[] = []
  for (let step = 0; step < walls.length; step += 1) {
    const place = (known + step) % walls.length
    const wall = walls[place]
    if (wall) along[place] = alongOf(wall, along[(place + walls.length - 1) % walls.length])
  }
  return walls.flatMap((wall, i): Course[] => {
    const [way, taken] = [along[i], takens[i]]
    if (!way || !taken) return []
    const isFixed = wall.way !== 'slant' || way.x.n === 0n || way.y.n === 0n
    return [{ along: way, isFixed, taken }]
  })
}

function alongOf({ way, takes, turn }: Wall, before: Point = point(1n, 0n)): Point {
  const place = WAYS.indexOf(way)
  if (place >= 0) return eighth((place + 2) % 8)
  if (takes !== null) return unit(point(takes.east, takes.north))
  const [c, s] = [cosine(turn ?? ZERO), sine(turn ?? ZERO)]
  return {
    x: plus(times(before.x, c), times(before.y, s)),
    y: minus(times(before.y, c), times(before.x, s)),
  }
}

/** A step north (0), north-east (1), east (2) and so on round. */
function eighth(place: number): Point {
  const [east = 0, north = 0] = [
    [0, 1],
    [1, 1],
    [1, 0],
    [1, -1],
    [0, -1],
    [-1, -1],
    [-1, 0],
    [-1, 1],
  ][place] ?? [0, 0]
  const straight = point(BigInt(east), BigInt(north))
  return place % 2 === 0 ? straight : scaled(straight, root(ratio(1n, 2n)))
}

export function closingOf(courses: readonly Course[]): Closing {
  const variances = (part: (along: Point) => Ratio) =>
    courses.map(({ along, taken }) => times(taken.variance, times(part(along), part(along))))
  return {
    misclosure: courses.map(readCourse).reduce(add, point(0n, 0n)),
    perimeter: sum(courses.map(({ taken }) => taken.length)),
    allowed: {
      east: allowance(variances(({ x }) => x)),
      north: allowance(variances(({ y }) => y)),
    },
  }
}

const readCourse = ({ along, taken }: Course): Point => scaled(along, taken.length)

/**
 * The corners of the closed room, not rounded yet, from the first wall's left end. Of all corrections c that close it
 * and leave fixed walls their direction these have the least Σ c² ÷ L: with λ the multipliers of the
 * two conditions, a free wall takes L·λ, a fixed one the part of L·λ along it.
 */
export function closed(courses: readonly Course[]): readonly Point[] {
  const { misclosure } = closingOf(courses)
  const [rowX, rowY] = [point(1n, 0n), point(0n, 1n)].map((axis) =>
    courses.map((course) => share(course, axis)).reduce(add, point(0n, 0n)),
  ) as [Point, Point]
  const whole = cross(rowX, rowY)
  const lambda: Point = {
    x: negative(over(minus(times(misclosure.x, rowY.y), times(misclosure.y, rowX.y)), whole)),
    y: negative(over(minus(times(misclosure.y, rowX.x), times(misclosure.x, rowY.x)), whole)),
  }
  const corners = [point(0n, 0n)]
  for (const course of courses) {
    const corrected = add(readCourse(course), share(course, lambda))
    corners.push(add(corners.at(-1) ?? corrected, corrected))
  }
  return corners.slice(0, -1)
}

/** What a course takes of a correction asked in a direction: in proportion to its length. */
function share({ along, isFixed, taken }: Course, asked: Point): Point {
  const part = isFixed ? scaled(along, dot(along, asked)) : asked
  return scaled(part, taken.length)
}

/** How long the misclosure is. */
export const misses = ({ misclosure }: Closing): Ratio => length(misclosure)
