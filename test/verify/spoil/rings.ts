import { isRectangle, moveEnd, pieceOf, plainJoints, type Spoiler, spoiler, to } from './spoiler.ts'

/** Falsified tilings: each by one nanometre where one is enough. */
export const RING_SPOILERS: readonly Spoiler[] = [
  spoiler('overlap by 1 nm', 'pieces-overlap', (floor) =>
    to(plainJoints(floor)[0], ({ at, leftPiece }) =>
      moveEnd(pieceOf(floor, leftPiece), at, at + 1),
    ),
  ),
  spoiler('gap of 1 nm', 'area-not-covered', (floor) =>
    to(plainJoints(floor)[0], ({ at, leftPiece }) =>
      moveEnd(pieceOf(floor, leftPiece), at, at - 1),
    ),
  ),
  spoiler('piece 1 nm outside the area', 'area-overfilled', (floor) => {
    const east = Math.max(...floor.pieces.flatMap(({ ring }) => ring.map(([u]) => u)))
    const piece = floor.pieces.find(({ ring }) => ring.some(([u]) => u === east))!
    moveEnd(piece, east, east + 1)
    return true
  }),
  spoiler('piece left out', 'edges-do-not-cancel', (floor) => floor.pieces.pop() !== undefined),
  spoiler('piece laid twice', 'pieces-overlap', (floor) => {
    const copy = structuredClone(floor.pieces[0]!)
    floor.pieces.push({ ...copy, piece: 1 + Math.max(...floor.pieces.map(({ piece }) => piece)) })
    return true
  }),
  spoiler('piece moved sideways', 'edges-do-not-cancel', (floor) => {
    for (const vertex of floor.pieces[0]!.ring) vertex[0] += 1
    return true
  }),
  spoiler('ring turned round', 'ring-not-counter-clockwise', (floor) => {
    floor.pieces[0]!.ring.reverse()
    return true
  }),
  spoiler('ring crossing itself', 'ring-not-simple', (floor) =>
    to(floor.pieces.find(isRectangle), ({ ring }) => ring.splice(0, 2, ring[1]!, ring[0]!)),
  ),
  spoiler('ring with a spur', 'ring-not-simple', (floor) => {
    const { ring } = floor.pieces[0]!
    const [u, v] = ring[0]!
    ring.splice(1, 0, [u - 5, v - 5], [u, v])
    return true
  }),
  spoiler('piece in the wrong course', 'piece-outside-course', (floor) =>
    to(
      floor.pieces.find(({ course }) => course > 1),
      (piece) => {
        piece.course -= 1
      },
    ),
  ),
  spoiler('piece sawn along inside its course', 'inner-edge', (floor) =>
    to(
      floor.pieces.find(
        ({ ring }) =>
          ring.length === 4 && ring[0]![1] === ring[1]![1] && ring[2]![1] === ring[3]![1],
      ),
      (piece) => {
        const [a, b, c, d] = piece.ring as [number, number][]
        const middle = Math.floor((a![1] + d![1]) / 2)
        const number = 1 + Math.max(...floor.pieces.map((each) => each.piece))
        const upper: [number, number][] = [[a![0], middle], [b![0], middle], c!, d!]
        floor.pieces.push({ ...structuredClone(piece), piece: number, ring: upper })
        piece.ring = [a!, b!, [b![0], middle], [a![0], middle]]
      },
    ),
  ),
  spoiler('area off its unsplit edges', 'area-off-unsplit', (floor) => {
    const vertex = floor.area.unsplit[0]![0]!
    vertex[0] += 2
    return true
  }),
  spoiler('hole of the area filled', 'edges-do-not-cancel', (floor) => {
    if (floor.area.rings.length < 2) return false
    floor.area.rings.pop()
    floor.area.unsplit.pop()
    return true
  }),
  spoiler('course shifted', 'courses-not-contiguous', (floor) =>
    to(floor.courses[1], (course) => {
      course.low += 1
      course.high += 1
    }),
  ),
  spoiler('course wider than a plank', 'course-width', (floor) => {
    floor.courses[floor.courses.length - 1]!.high += 1
    return true
  }),
  spoiler('courses short of the area', 'area-outside-courses', (floor) => {
    for (const course of floor.courses) {
      course.low -= floor.rules.plankWidth
      course.high -= floor.rules.plankWidth
    }
    return true
  }),
  spoiler('two courses laid at once', 'course-order', (floor) =>
    to(floor.courses[1], (course) => {
      course.order = floor.courses[0]!.order
    }),
  ),
]
