import { type Found, jointKey, publishedKey } from './found.ts'
import type { Floor } from './layout.ts'
import type { Finding } from './report.ts'
import { mm } from './say.ts'

/**
 * The list of joints is complete and true: it and the joints that the rings show, each by its place
 * and its two pieces, are the same set. A joint listed twice is listed once too often.
 */
export function checkJoints(floor: Floor, found: Found): readonly Finding[] {
  const unlisted = new Map(found.joints.map((joint) => [jointKey(joint), joint]))
  const untrue = floor.joints.filter((joint) => !unlisted.delete(publishedKey(joint)))
  return [
    ...untrue.map(({ course, at, low, leftPiece, rightPiece }) => ({
      code: 'joint-untrue',
      text: `A joint of pieces ${leftPiece} and ${rightPiece} is listed at ${mm(at)} along; their rings show none, or it is listed twice.`,
      course,
      at: [at, low] as const,
    })),
    ...[...unlisted.values()].map(({ course, at, low, left, right }) => ({
      code: 'joint-missing',
      text: `Pieces ${left.piece} and ${right.piece} meet at ${mm(at)} along; this joint is not listed.`,
      course,
      piece: left.piece,
      at: [at, low] as const,
    })),
  ]
}
