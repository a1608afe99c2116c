import { fromLowest } from '../geometry/canonical.ts'
import { contactsUp } from '../geometry/contacts.ts'
import type { Outline, Part } from '../geometry/outline.ts'
import { boxOf } from '../geometry/ring.ts'
import { cutUpright } from '../geometry/split.ts'
import type { Nm } from '../units/length.ts'
import type { Blank, Plan } from './plan.ts'
import type { CutFloor } from './problem-of.ts'
import type { PublishedJoint, PublishedPiece } from './published.ts'

/** The pieces of a plan with their exact shapes, and the end joints between them. */
export interface CutPieces {
  /** By course, then from left to right. */
  readonly pieces: readonly PublishedPiece[]
  readonly joints: readonly PublishedJoint[]
  /** The shapes with the edges that they are parts of, for the corners they put into the rim. */
  readonly outlines: readonly Outline[]
}

/**
 * Cuts each stretch at the joints that the plan gives it. A blank falls into several pieces where a wall
 * end parts it. Where a post stands in a piece whole, the piece is parted through the post, for a plank
 * cannot be lowered over it: both ends there are cut and will be glued.
 */
export function piecesOf(cut: CutFloor, plan: Plan): CutPieces {
  const lengths = new Map(plan.planks.map(({ plank, length }) => [plank, length]))
  const pieces: PublishedPiece[] = []
  const joints: PublishedJoint[] = []
  const outlines: Outline[] = []
  let blankNumber = 0
  for (const [id, blanks] of blanksByStretch(cut, plan).entries()) {
    const cells = cellsOf(cut.parts[id]!, blanks)
    const made = cells.map((cell, i) => {
      const blank = blanks[i]!
      blankNumber++
      return cell.parts.map((part) => {
        const piece = pieceOf(part, blank, {
          piece: pieces.length + 1,
          blank: blankNumber,
          whole: cell.parts.length === 1,
          plank: { length: lengths.get(blank.plank)!, width: cut.problem.rules.width },
        })
        pieces.push(piece)
        outlines.push(part.rim)
        return piece
      })
    })
    for (const [i, cell] of cells.entries()) {
      for (const at of cell.partedAt)
        joints.push(...jointsAt(at, [cell, cell], [made[i]!, made[i]!]))
      const next = cells[i + 1]
      if (next) joints.push(...jointsAt(blanks[i]!.to, [cell, next], [made[i]!, made[i + 1]!]))
    }
  }
  return { pieces, joints, outlines }
}

function blanksByStretch(cut: CutFloor, plan: Plan): Blank[][] {
  const byStretch: Blank[][] = cut.problem.stretches.map(() => [])
  for (const blank of plan.blanks) byStretch[blank.stretch]!.push(blank)
  for (const blanks of byStretch) blanks.sort((a, b) => a.from - b.from)
  return byStretch
}

/** What becomes of one blank: its parts, from left to right, and where they were parted at a post. */
interface Cell {
  readonly parts: readonly Part[]
  readonly partedAt: readonly Nm[]
}

function cellsOf(stretch: Part, blanks: readonly Blank[]): Cell[] {
  const joints = blanks.slice(1).map(({ from }) => from)
  return cutUpright([stretch.rim, ...stretch.holes], joints).map((parts) => {
    const partedAt: Nm[] = []
    const opened = parts.flatMap((part) => withoutHoles(part, partedAt))
    return { parts: leftToRight(opened), partedAt: [...new Set(partedAt)].sort((a, b) => a - b) }
  })
}

/** Parts a piece at the middle of a post in it, until none has one. */
function withoutHoles(part: Part, partedAt: Nm[]): Part[] {
  const hole = part.holes[0]
  if (!hole) return [part]
  const { west, east } = boxOf(hole.points)
  const middle = west + Math.floor((east - west) / 2)
  partedAt.push(middle)
  return cutUpright([part.rim, ...part.holes], [middle])
    .flat()
    .flatMap((side) => withoutHoles(side, partedAt))
}

function leftToRight(parts: readonly Part[]): Part[] {
  return parts
    .map((part) => ({ part, box: boxOf(part.rim.points) }))
    .sort((a, b) => a.box.west - b.box.west || a.box.south - b.box.south || a.box.east - b.box.east)
    .map(({ part }) => part)
}

interface Made {
  readonly piece: number
  readonly blank: number
  /** The blank is one piece. */
  readonly whole: boolean
  readonly plank: { readonly length: Nm; readonly width: Nm }
}

function pieceOf(
  part: Part,
  blank: Blank,
  { piece, blank: number, whole, plank }: Made,
): PublishedPiece {
  const along = whole ? blank.along : spanIn(part, blank)
  const { across, turned } = blank
  const atStart = along[0] === 0
  const atEnd = along[1] === plank.length
  const atLow = across[0] === 0
  const atHigh = across[1] === plank.width
  return {
    piece,
    course: blank.course,
    plank: blank.plank,
    blank: number,
    ring: fromLowest(part.rim.points).map(({ x, y }) => [x, y]),
    along,
    across,
    turned,
    factory: turned
      ? { left: atEnd, right: atStart, low: atHigh, high: atLow }
      : { left: atStart, right: atEnd, low: atLow, high: atHigh },
  }
}

/** What one of several pieces takes of the length of its blank. */
function spanIn(part: Part, { from, along, turned }: Blank): readonly [Nm, Nm] {
  const { west, east } = boxOf(part.rim.points)
  return turned
    ? [along[1] - (east - from), along[1] - (west - from)]
    : [along[0] + (west - from), along[0] + (east - from)]
}

function jointsAt(
  at: Nm,
  [left, right]: readonly [Cell, Cell],
  [before, after]: readonly [readonly PublishedPiece[], readonly PublishedPiece[]],
): PublishedJoint[] {
  return contactsUp(left.parts, right.parts, at).map(({ below, above, from, to }) => {
    const leftPiece = before[below]!
    const rightPiece = after[above]!
    return {
      course: leftPiece.course,
      at,
      low: from,
      high: to,
      leftPiece: leftPiece.piece,
      rightPiece: rightPiece.piece,
      parted: !leftPiece.factory.right && !rightPiece.factory.left,
    }
  })
}
