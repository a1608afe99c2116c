import { type Box, boxAround, groupBy } from './exact.ts'
import type { Found, Joint } from './found.ts'
import type { Floor, Piece } from './layout.ts'
import type { Finding } from './report.ts'
import { mm } from './say.ts'

/**
 * A blank is one rectangle out of one plank, laid as it was cut. All its pieces share plank, course
 * and turn; the box around their rings fits into the box around their spans; and a joint stands at
 * the blank's utmost end, where the plank's own end is. So a blank with a joint at either end must be
 * as long as its plank: a span that merely claims the whole plank proves nothing.
 */
export function checkBlanks(floor: Floor, found: Found): readonly Finding[] {
  const lefts = groupBy(found.joints, ({ right }) => right.blank)
  const rights = groupBy(found.joints, ({ left }) => left.blank)
  return [...groupBy(floor.pieces, ({ blank }) => blank)].flatMap(([blank, pieces]) => {
    const box = boxAround(pieces.flatMap(({ ring }) => ring))
    const left = (lefts.get(blank) ?? []).filter(({ parted }) => !parted)
    const right = (rights.get(blank) ?? []).filter(({ parted }) => !parted)
    return [
      ...torn(pieces, box),
      ...inside(left, box.west, pieces[0]!),
      ...inside(right, box.east, pieces[0]!),
      ...(left.length > 0 && right.length > 0 ? notWhole(pieces[0]!, box, found) : []),
    ]
  })
}

function torn(pieces: readonly Piece[], box: Box): Finding[] {
  const first = pieces[0]!
  const { piece, course, blank } = first
  const apart = pieces.find(
    (other) =>
      other.plank !== first.plank || other.course !== course || other.turned !== first.turned,
  )
  if (apart !== undefined) {
    const text = `Pieces ${piece} and ${apart.piece} are said to be of one blank, and differ in plank, course or turn.`
    return [{ code: 'blank-torn', text, course, piece: apart.piece }]
  }
  const spans = boxAround(
    pieces.flatMap(({ along, across }) => [
      [along[0], across[0]] as const,
      [along[1], across[1]] as const,
    ]),
  )
  const fits =
    spans.east - spans.west >= box.east - box.west && spans.high - spans.low >= box.high - box.low
  if (fits || pieces.length === 1) return []
  const text = `The pieces of blank ${blank} lie ${mm(box.east - box.west)} by ${mm(box.high - box.low)} apart and are cut from ${mm(spans.east - spans.west)} by ${mm(spans.high - spans.low)}.`
  return [{ code: 'blank-torn', text, course, piece }]
}

function inside(joints: readonly Joint[], end: number, { piece, course }: Piece): Finding[] {
  return joints
    .filter(({ at }) => at !== end)
    .map(({ at, low }) => ({
      code: 'joint-inside-blank',
      text: `Piece ${piece} has a joint at ${mm(at)} along, and its blank goes on to ${mm(end)}.`,
      course,
      piece,
      at: [at, low] as const,
    }))
}

function notWhole(first: Piece, box: Box, { lengths }: Found): Finding[] {
  const length = lengths.get(first.plank)!
  if (box.east - box.west === length) return []
  const { piece, course } = first
  const text = `Piece ${piece} lies between two joints and is ${mm(box.east - box.west)} long; its plank is ${mm(length)}.`
  return [{ code: 'cut-between-joints', text, course, piece }]
}
