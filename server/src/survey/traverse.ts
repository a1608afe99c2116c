/**
 * The traverse: courses walked one after the other that should lead back to where they began. Any unit
 * of length will do, the same one throughout; nothing is rounded.
 */

/** One course: its departure (east), its latitude (north) and its measured length. */
export interface Course {
  readonly east: number
  readonly north: number
  readonly length: number
}

/** How far a traverse ends from where it began. */
export interface Misclosure {
  /** The sum itself; corrections are its negative. */
  readonly east: number
  readonly north: number
  readonly length: number
  readonly perimeter: number
  /** 1 : n, to the nearest whole number; null where it closes exactly. */
  readonly ratio: number | null
}

export function misclosureOf(courses: readonly Course[]): Misclosure {
  const east = total(courses, (course) => course.east)
  const north = total(courses, (course) => course.north)
  const perimeter = total(courses, (course) => course.length)
  const length = Math.sqrt(east * east + north * north)
  return {
    east,
    north,
    length,
    perimeter,
    ratio: length === 0 ? null : nearest(perimeter / length),
  }
}

/** Spreads the misclosure by length (Bowditch): for courses in any direction. */
export function compassRule(courses: readonly Course[]): Course[] {
  const { east, north, perimeter } = misclosureOf(courses)
  if (perimeter === 0) return [...courses]
  return courses.map((course) => corrected(course, -east / perimeter, -north / perimeter))
}

/**
 * Spreads the misclosure's departure by |departure| and its latitude by |latitude|: for courses
 * parallel to the axes, which stay so.
 */
export function transitRule(courses: readonly Course[]): Course[] {
  const { east, north } = misclosureOf(courses)
  const departures = total(courses, (course) => Math.abs(course.east))
  const latitudes = total(courses, (course) => Math.abs(course.north))
  return courses.map((course) => ({
    ...course,
    east: course.east - share(east, Math.abs(course.east), departures),
    north: course.north - share(north, Math.abs(course.north), latitudes),
  }))
}

function corrected(course: Course, eastEach: number, northEach: number): Course {
  return {
    ...course,
    east: course.east + eastEach * course.length,
    north: course.north + northEach * course.length,
  }
}

const share = (miss: number, part: number, whole: number) =>
  whole === 0 ? 0 : (miss * part) / whole

const total = (courses: readonly Course[], of: (course: Course) => number) =>
  courses.reduce((sum, course) => sum + of(course), 0)

const nearest = (value: number) => Math.floor(value + 0.5)
