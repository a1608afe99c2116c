import type { PublishedFloor, PublishedPiece } from '../../layout/published.ts'
import type { UnitStyle } from '../../units/length.ts'
import { lengthText, widthText } from '../cut-size.ts'
import { type Offcut, offcutsOf } from '../offcuts.ts'
import { type PieceFacts, pieceFacts } from '../piece-facts.ts'
import type { Side } from './table.ts'

export const HEAD = ['course', 'piece', 'plank', 'length', 'width', 'cut', 'rest']
export const SIDES: readonly Side[] = ['right', 'left', 'left', 'right', 'right', 'left', 'left']

/** Whole planks that follow each other share a row. */
interface Run {
  readonly facts: PieceFacts
  readonly first: PublishedPiece
  last: PublishedPiece
}

/** A row for each piece that is sawn and for each run of whole planks, in the order of laying. */
export function cutRows(floor: PublishedFloor, units: UnitStyle): readonly (readonly string[])[] {
  const ofCourse = Map.groupBy(floor.pieces, (piece) => piece.course)
  const offcuts = offcutsOf(floor)
  return floor.courses
    .toSorted((a, b) => a.order - b.order)
    .flatMap(({ course }) => runs(ofCourse.get(course) ?? []))
    .map(({ facts, first, last }, i, all) => [
      all[i - 1]?.first.course === first.course ? '' : `${first.course}`,
      range(first.piece, last.piece),
      range(first.plank, last.plank),
      lengthText(facts, units),
      widthText(facts.width, floor.rules.plankWidth, units),
      cutText(facts),
      restText(offcuts(first)),
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

/** "for 31" where that piece is laid later, else "from 12". */
function restText(offcuts: readonly Offcut[]): string {
  return offcuts.map(({ piece, later }) => `${later ? 'for' : 'from'} ${piece}`).join(', ')
}

function range(first: number, last: number): string {
  return first === last ? `${first}` : `${first}–${last}`
}

/** "whole", "cut left, ripped". */
export function cutText({ cut, sawnAt, shaped }: PieceFacts): string {
  if (cut === 'whole') return 'whole'
  const parts = [
    ...(sawnAt === 'neither end' ? [] : [`cut ${sawnAt}`]),
    ...(cut === 'rip' || cut === 'cut and rip' ? ['ripped'] : []),
    ...(shaped ? ['to shape'] : []),
  ]
  return parts.join(', ')
}
