import { groupBy } from './exact.ts'
import type { Floor } from './layout.ts'
import type { Finding } from './report.ts'

/**
 * Numbers mean one thing each: no two pieces, courses or planks share a number, and a piece's course
 * and plank are there. Then the rest of the proof may look a number up without asking again.
 */
export function checkReferences(floor: Floor): readonly Finding[] {
  const courses = new Set(floor.courses.map(({ course }) => course))
  const planks = new Set(floor.planks.map(({ plank }) => plank))
  const faults: Finding[] = [
    ...twice('piece', floor.pieces, ({ piece }) => piece),
    ...twice('course', floor.courses, ({ course }) => course),
    ...twice('plank', floor.planks, ({ plank }) => plank),
  ]
  for (const { piece, course, plank } of floor.pieces) {
    if (!courses.has(course)) {
      const text = `Piece ${piece} lies in course ${course}, which is not listed.`
      faults.push({ code: 'course-not-listed', text, course, piece })
    }
    if (!planks.has(plank)) {
      const text = `Piece ${piece} is cut from plank ${plank}, which is not listed.`
      faults.push({ code: 'plank-not-listed', text, course, piece })
    }
  }
  return faults
}

function twice<T>(what: string, items: readonly T[], numberOf: (item: T) => number): Finding[] {
  return [...groupBy(items, numberOf)]
    .filter(([, group]) => group.length > 1)
    .map(([number, group]) => ({
      code: 'number-repeated',
      text: `The number ${number} is given to ${group.length} ${what}s; each has its own.`,
    }))
}
