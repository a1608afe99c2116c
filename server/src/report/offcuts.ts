import type { PublishedFloor, PublishedPiece } from '../layout/published.ts'

/** Another piece out of the same plank, and whether it is laid after the one that was asked about. */
export interface Offcut {
  readonly piece: number
  readonly later: boolean
}

/** What a plank gives besides one piece, as asked for piece by piece. */
export function offcutsOf({
  pieces,
  courses,
}: PublishedFloor): (piece: PublishedPiece) => readonly Offcut[] {
  const ofPlank = Map.groupBy(pieces, (piece) => piece.plank)
  const order = new Map(courses.map((course) => [course.course, course.order]))
  const laidAt = (piece: PublishedPiece): number => order.get(piece.course) ?? 0
  return (piece) => {
    const others = (ofPlank.get(piece.plank) ?? []).filter((other) => other.blank !== piece.blank)
    return others.map((other) => ({
      piece: other.piece,
      later: laidAt(other) > laidAt(piece),
    }))
  }
}
