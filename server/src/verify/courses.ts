import { boxAround } from './exact.ts'
import type { Found } from './found.ts'
import type { Course, Floor, Vertex } from './layout.ts'
import type { Finding } from './report.ts'
import { mm } from './say.ts'

/**
 * Courses are strips of a plank's width, one on the other without gaps, numbered from 1 upwards; they
 * reach over the whole area; and each piece lies in its own. Then pieces of different courses cannot
 * overlap. The order of laying is a count from 1.
 */
export function checkCourses(floor: Floor, found: Found): readonly Finding[] {
  return [...strips(floor), ...order(floor), ...cover(floor), ...pieces(floor, found)]
}

function strips({ courses, rules }: Floor): Finding[] {
  const rising = [...courses].sort((a, b) => a.course - b.course)
  return rising.flatMap(({ course, low, high }, i) => {
    const below = rising[i - 1]
    const faults: Finding[] = []
    if (course !== i + 1) {
      const text = `Course ${course} stands in place ${i + 1}; courses are numbered from 1 without gaps.`
      faults.push({ code: 'course-number', text, course })
    }
    if (high - low !== rules.plankWidth) {
      const text = `Course ${course} is ${mm(high - low)} wide; a plank is ${mm(rules.plankWidth)}.`
      faults.push({ code: 'course-width', text, course })
    }
    if (below !== undefined && below.high !== low) {
      const text = `Course ${course} begins at ${mm(low)}, and the course below it ends at ${mm(below.high)}.`
      faults.push({ code: 'courses-not-contiguous', text, course })
    }
    return faults
  })
}

function order({ courses }: Floor): Finding[] {
  const laid = [...courses].sort((a, b) => a.order - b.order)
  return laid.flatMap(({ course, order }, i) => {
    if (order === i + 1) return []
    const text = `Course ${course} is laid as number ${order}; ${i + 1} was due.`
    return [{ code: 'course-order', text, course }]
  })
}

function cover({ courses, area }: Floor): Finding[] {
  const low = courses.reduce((least, course) => Math.min(least, course.low), courses[0]!.low)
  const high = courses.reduce((most, course) => Math.max(most, course.high), courses[0]!.high)
  return area.rings.flatMap((ring) => {
    const at = ring.find(([, v]) => v < low || v > high)
    if (at === undefined) return []
    const text = `The area reaches ${mm(at[1])} across; the courses run from ${mm(low)} to ${mm(high)}.`
    return [{ code: 'area-outside-courses', text, at }]
  })
}

function pieces(floor: Floor, { courses }: Found): Finding[] {
  return floor.pieces.flatMap(({ piece, course, ring }) => {
    const strip = courses.get(course)!
    const { low, high } = boxAround(ring)
    if (low >= strip.low && high <= strip.high) return []
    const text = `Piece ${piece} reaches from ${mm(low)} to ${mm(high)} across; its course ${course} runs from ${mm(strip.low)} to ${mm(strip.high)}.`
    return [{ code: 'piece-outside-course', text, course, piece, at: outmost(ring, strip) }]
  })
}

function outmost(ring: readonly Vertex[], { low, high }: Course): Vertex {
  return ring.find(([, v]) => v < low || v > high)!
}
