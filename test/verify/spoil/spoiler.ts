import type {
  PublishedFloor,
  PublishedJoint,
  PublishedPiece,
} from '../../../server/src/layout/published.ts'

/** One way to falsify a sound layout, and the fault that it must be rejected with. */
export interface Spoiler {
  readonly name: string
  readonly fault: string
  /** Falsifies the floor in place; false where it has nothing that could be spoiled so. */
  readonly spoil: (floor: Open<PublishedFloor>) => boolean
}

/** The same shape, open to change. */
export type Open<T> = T extends readonly unknown[] | object
  ? { -readonly [K in keyof T]: Open<T[K]> }
  : T

export type Floor = Open<PublishedFloor>
export type Piece = Open<PublishedPiece>
export type Joint = Open<PublishedJoint>

export function spoiler(name: string, fault: string, spoil: Spoiler['spoil']): Spoiler {
  return { name, fault, spoil }
}

/** Does the deed to something if there is something. */
export function to<T>(thing: T | undefined, deed: (thing: T) => void): boolean {
  if (thing === undefined) return false
  deed(thing)
  return true
}

export function pieceOf(floor: Floor, number: number): Piece {
  return floor.pieces.find(({ piece }) => piece === number)!
}

export function isRectangle({ ring }: Piece): boolean {
  return (
    ring.length === 4 &&
    ring.every(([u, v], i) => {
      const [nextU, nextV] = ring[(i + 1) % 4]!
      return u === nextU || v === nextV
    })
  )
}

export function lengthOf(floor: Floor, { plank }: Piece): number {
  return floor.planks.find((each) => each.plank === plank)!.length
}

/** Joints between two plain rectangles, both of which end just there: these can be pushed about. */
export function plainJoints(floor: Floor): Joint[] {
  return floor.joints.filter(({ leftPiece, rightPiece, parted }) => {
    const both = [pieceOf(floor, leftPiece), pieceOf(floor, rightPiece)]
    return !parted && both.every(isRectangle)
  })
}

/** Moves the vertices of a piece that lie at one u to another. */
export function moveEnd(piece: Piece, from: number, to: number): void {
  for (const vertex of piece.ring) if (vertex[0] === from) vertex[0] = to
}

/** Moves a joint with both its pieces' rings and its entry in the list, and leaves the planks alone. */
export function moveJoint(floor: Floor, joint: Joint, to: number): void {
  moveEnd(pieceOf(floor, joint.leftPiece), joint.at, to)
  moveEnd(pieceOf(floor, joint.rightPiece), joint.at, to)
  joint.at = to
}

/** Two pieces of different blanks on one plank that satisfy a condition, the lower span first. */
export function onOnePlank(
  floor: Floor,
  such: (a: Piece, b: Piece) => boolean,
): { a: Piece; b: Piece } | undefined {
  for (const a of floor.pieces) {
    for (const b of floor.pieces) {
      if (a.plank === b.plank && a.blank !== b.blank && such(a, b)) return { a, b }
    }
  }
  return undefined
}
