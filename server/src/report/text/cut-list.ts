import type { PublishedFloor, PublishedPiece } from '../../layout/published.ts'
import { NM_PER_INCH, NM_PER_MM, type Nm, type UnitStyle } from '../../units/length.ts'
import { printLength } from '../../units/print.ts'
import { type PieceFacts, pieceFacts } from '../piece-facts.ts'
import { plankStyle } from '../plank-style.ts'
import type { Side } from './table.ts'

export const HEAD = ['course', 'piece', 'plank', 'length', 'width', 'cut', 'rest of the plank']
export const SIDES: readonly Side[] = ['right', 'left', 'left', 'right', 'right', 'left', 'left']

/** Whole planks that follow each other share a row. */
interface Run {
  readonly facts: PieceFacts
  readonly first: PublishedPiece
  last: PublishedPiece
}

/** A row for each piece that is sawn and for each run of whole planks, in the order of laying. */
export function cutRows(floor: PublishedFloor, units: UnitStyle): readonly (readonly string[])[] {
  const style = plankStyle(units)
  const ofCourse = Map.groupBy(floor.pieces, (piece) => piece.course)
  const restOf = rests(floor)
  return floor.courses
    .toSorted((a, b) => a.order - b.order)
    .flatMap(({ course }) => runs(ofCourse.get(course) ?? []))
    .map(({ facts, first, last }, i, all) => [
      all[i - 1]?.first.course === first.course ? '' : `${first.course}`,
      range(first.piece, last.piece),
      range(first.plank, last.plank),
      printLength(cutDown(facts.length, style), style),
      widthText(facts, style),
      cutText(facts),
      restOf(first),
    ])
}

function runs(pieces: readonly PublishedPiece[]): Run[] {
  const made: Run[] = []
  for (const piece of pieces) {
    const facts = pieceFacts(piece)
    const before = made.at(-1)
    if (before !== undefined && followOn(before, facts, piece)) before.last = piece
    else made.push({ facts, first: piece, last: piece })
  }
  return made
}

function followOn({ facts, last }: Run, next: PieceFacts, piece: PublishedPiece): boolean {
  const whole = facts.cut === 'whole' && next.cut === 'whole' && facts.length === next.length
  return whole && piece.piece === last.piece + 1 && piece.plank === last.plank + 1
}

/** What a plank gives besides this piece: "for piece 31" where it is sawn later, else "from piece 12". */
function rests({ pieces, courses }: PublishedFloor): (piece: PublishedPiece) => string {
  const ofPlank = Map.groupBy(pieces, (piece) => piece.plank)
  const order = new Map(courses.map((course) => [course.course, course.order]))
  const laidAt = (piece: PublishedPiece): number => order.get(piece.course) ?? 0
  return (piece) => {
    const others = (ofPlank.get(piece.plank) ?? []).filter((other) => other.blank !== piece.blank)
    const said = others.map((other) =>
      laidAt(other) > laidAt(piece) ? `for piece ${other.piece}` : `from piece ${other.piece}`,
    )
    return said.join(', ')
  }
}

function range(first: number, last: number): string {
  return first === last ? `${first}` : `${first}–${last}`
}

/** What is cut to fit is never cut too long: down to 1/16 in or to the millimetre. */
function cutDown(length: Nm, units: UnitStyle): Nm {
  const mark = units === 'feet-inches' || units === 'inches' ? NM_PER_INCH / 16 : NM_PER_MM
  return Math.floor(length / mark) * mark
}

function widthText({ width }: PieceFacts, units: UnitStyle): string {
  const [least, most] = [cutDown(width.least, units), cutDown(width.most, units)]
  return least === most
    ? printLength(most, units)
    : `${printLength(least, units)} to ${printLength(most, units)}`
}

function cutText({ cut, sawnAt, shaped }: PieceFacts): string {
  if (cut === 'whole') return 'whole'
  const ends = sawnAt === 'both ends' ? 'cut at both ends' : `cut at its ${sawnAt}`
  const parts = [
    ...(sawnAt === 'neither end' ? [] : [ends]),
    ...(cut === 'rip' || cut === 'cut and rip' ? ['ripped'] : []),
    ...(shaped ? ['cut to shape'] : []),
  ]
  return parts.join(', ')
}
