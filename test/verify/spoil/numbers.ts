import { type Floor, type Piece, type Spoiler, spoiler, to } from './spoiler.ts'

/** Two pieces of different planks in one course. */
function ofOneCourse(floor: Floor): { a: Piece; b: Piece } | undefined {
  for (const a of floor.pieces) {
    const b = floor.pieces.find((one) => one.course === a.course && one.plank !== a.plank)
    if (b !== undefined) return { a, b }
  }
  return undefined
}

/** Falsified numbers: what belongs to what. */
export const NUMBER_SPOILERS: readonly Spoiler[] = [
  spoiler('courses numbered with a gap', 'course-number', (floor) => {
    const last = Math.max(...floor.courses.map(({ course }) => course))
    for (const one of [...floor.courses, ...floor.pieces, ...floor.joints]) {
      if (one.course === last) one.course = last + 1
    }
    return true
  }),
  spoiler('a ring more without its crossings', 'area-off-unsplit', (floor) => {
    floor.area.unsplit.push(structuredClone(floor.area.unsplit[0]!))
    return true
  }),
  spoiler('a ring fewer without its crossings', 'area-off-unsplit', (floor) => {
    if (floor.area.unsplit.length < 2) return false
    floor.area.unsplit.pop()
    return true
  }),
  spoiler('one blank from two planks', 'blank-torn', (floor) =>
    to(ofOneCourse(floor), ({ a, b }) => {
      b.blank = a.blank
    }),
  ),
  spoiler('one blank, a piece of it turned', 'blank-torn', (floor) =>
    to(ofOneCourse(floor), ({ a, b }) => {
      b.blank = a.blank
      b.plank = a.plank
      b.turned = !a.turned
    }),
  ),
]
