import type { Nm } from '../units/length.ts'
import type { Jointing } from './jointing.ts'
import { overlapFinder } from './overlap-finder.ts'
import type { Band, Contact, Course, Interval, Problem, Stretch } from './problem.ts'

/** A stretch as the planner needs it: its course, what it touches, and what it can do by itself. */
export interface Place {
  readonly id: number
  readonly from: Nm
  readonly to: Nm
  readonly length: Nm
  readonly course: Course
  readonly area: number
  readonly bands: readonly Band[]
  readonly posts: readonly Interval[]
  readonly doorways: readonly Interval[]
  /** Where the floor in it is narrower than the narrowest rip, merged, left to right. */
  readonly narrow: readonly Interval[]
  /** What a blank must be across where that is the same all along the stretch, else null. */
  readonly across: Across | null
  readonly touches: readonly Touch[]
  /** Stretches two courses off with a stretch between them: their joints form an H or a step. */
  readonly beyond: readonly { readonly between: number; readonly other: number }[]
  /** Jointings by their start piece; shared by all stretches that are alike. */
  readonly known: Map<Nm, readonly Jointing[]>
}

/** What a blank must be across: its width, and which factory edges it must keep. */
export interface Across {
  readonly width: Nm
  readonly low: boolean
  readonly high: boolean
}

/** A neighbouring stretch, and where both meet along the seam. */
export interface Touch {
  readonly other: number
  readonly from: Nm
  readonly to: Nm
}

/** The problem's stretches by id, with their neighbours looked up once. */
export function placesOf(problem: Problem): readonly Place[] {
  const courses = new Map(problem.courses.map((course) => [course.course, course]))
  const touches = touchesOf(problem.stretches.length, problem.contacts)
  const beyond = beyondAll(problem.stretches, touches)
  const alike = new Map<string, Map<Nm, readonly Jointing[]>>()
  return problem.stretches.map((stretch) => {
    const course = courses.get(stretch.course)
    if (course === undefined) throw new RangeError('a stretch in a course that is not there')
    return {
      id: stretch.id,
      from: stretch.from,
      to: stretch.to,
      length: stretch.to - stretch.from,
      course,
      area: stretch.area,
      bands: stretch.bands,
      // By their right ends: a joint in the first opens every other that it stands in.
      posts: [...stretch.posts].sort((a, b) => a.to - b.to || a.from - b.from),
      doorways: stretch.doorways,
      narrow: narrowParts(stretch, problem.rules.narrowestRip),
      across: sameAcross(stretch, course),
      touches: touches[stretch.id]!,
      beyond: beyond(stretch),
      known: sharedBy(alike, stretch, course),
    }
  })
}

/** What a blank from `from` to `to` must be across: the extremes of the bands under it. */
export function acrossOf(place: Place, from: Nm, to: Nm): Across {
  return place.across ?? acrossBands(place.bands, place.course, from, to)
}

function acrossBands(bands: readonly Band[], course: Course, from: Nm, to: Nm): Across {
  let low = course.high
  let high = course.low
  for (let i = firstBand(bands, from); i < bands.length && bands[i]!.from < to; i += 1) {
    const band = bands[i]!
    if (band.low < low) low = band.low
    if (band.high > high) high = band.high
  }
  return { width: high - low, low: low === course.low, high: high === course.high }
}

/** The first band that ends beyond u. */
function firstBand(bands: readonly Band[], u: Nm): number {
  let low = 0
  let high = bands.length
  while (low < high) {
    const middle = (low + high) >>> 1
    if (bands[middle]!.to <= u) low = middle + 1
    else high = middle
  }
  return low
}

function sameAcross(stretch: Stretch, course: Course): Across | null {
  const first = stretch.bands[0]
  if (first === undefined) throw new RangeError('a stretch without a band')
  const same = stretch.bands.every((band) => band.low === first.low && band.high === first.high)
  return same ? acrossBands(stretch.bands, course, stretch.from, stretch.to) : null
}

function narrowParts(stretch: Stretch, narrowest: Nm): readonly Interval[] {
  const parts: { from: Nm; to: Nm }[] = []
  for (const band of stretch.bands) {
    if (band.high - band.low >= narrowest) continue
    const last = parts.at(-1)
    if (last !== undefined && last.to === band.from) last.to = band.to
    else parts.push({ from: band.from, to: band.to })
  }
  return parts
}

function touchesOf(count: number, contacts: readonly Contact[]): readonly (readonly Touch[])[] {
  const touches: Touch[][] = Array.from({ length: count }, () => [])
  for (const { below, above, from, to } of contacts) {
    touches[below]!.push({ other: above, from, to })
    touches[above]!.push({ other: below, from, to })
  }
  return touches
}

/**
 * Finds what lies beyond a stretch. A stretch between may touch very many on either side, so that of
 * each side only those that can lie over against the stretch at hand are looked at.
 */
function beyondAll(
  stretches: readonly Stretch[],
  touches: readonly (readonly Touch[])[],
): (stretch: Stretch) => Place['beyond'] {
  const neighbours = touches.map((touching) => [...new Set(touching.map(({ other }) => other))])
  const sides = neighbours.map((others, id) => {
    const { course } = stretches[id]!
    const [below, above] = [[], []] as [Stretch[], Stretch[]]
    for (const other of others) {
      const far = stretches[other]!
      if (far.course < course) below.push(far)
      else above.push(far)
    }
    return { below: overlapFinder(below), above: overlapFinder(above) }
  })
  return (stretch) =>
    neighbours[stretch.id]!.flatMap((between) => {
      const isAbove = stretches[between]!.course > stretch.course
      const { above, below } = sides[between]!
      return (isAbove ? above : below)(stretch).map(({ id }) => ({ between, other: id }))
    })
}

/** Stretches with nothing but their two ends to tell them apart have the same jointings. */
function sharedBy(
  alike: Map<string, Map<Nm, readonly Jointing[]>>,
  stretch: Stretch,
  course: Course,
): Map<Nm, readonly Jointing[]> {
  const special = stretch.posts.length > 0 || stretch.doorways.length > 0
  const whole = stretch.bands.every((band) => band.low === course.low && band.high === course.high)
  if (special || !whole) return new Map()
  const key = `${stretch.from} ${stretch.to}`
  const known = alike.get(key) ?? new Map<Nm, readonly Jointing[]>()
  alike.set(key, known)
  return known
}
