import type { LaidFloor } from '../../layout/lay.ts'
import type { PublishedFloor, PublishedPiece } from '../../layout/published.ts'
import type { Compiled } from '../../report/compiled.ts'
import { lengthText, plankStyle, widthText } from '../../report/cut-size.ts'
import { ownIds } from '../../report/drawing/own-ids.ts'
import { pieceId } from '../../report/drawing/pieces.ts'
import { type Offcut, offcutsOf } from '../../report/offcuts.ts'
import { pieceFacts } from '../../report/piece-facts.ts'
import { settingOut } from '../../report/setting-out.ts'
import { cutText } from '../../report/text/cut-list.ts'
import type { UnitStyle } from '../../units/length.ts'
import { printLength } from '../../units/print.ts'
import type { CoursePiece, CourseRow, FloorHead } from './picture.ts'

/** What is said over the courses of each floor. */
export function floorHeads({ job, floors }: Compiled): readonly FloorHead[] {
  const heads = floors.map(({ product, published }) => {
    const size = [product.width, ...product.lengths.map(({ length }) => length)]
    const [width, ...lengths] = size.map((length) => printLength(length, plankStyle(job.units)))
    return {
      id: published.floor,
      product: `${product.name.text}, ${width} x ${lengths.join(', ')}`,
      said: settingOut(published, job.units),
    }
  })
  return ownIds(heads)
}

/** Every course of every floor in the order of laying. */
export function courseRows({ job, floors }: Compiled): readonly CourseRow[] {
  return ownIds(floors.flatMap((floor) => rowsOf(floor, job.units)))
}

function rowsOf({ published }: LaidFloor, units: UnitStyle): readonly CourseRow[] {
  const ofCourse = Map.groupBy(published.pieces, (piece) => piece.course)
  const offcuts = offcutsOf(published)
  return published.courses
    .toSorted((a, b) => a.order - b.order)
    .map(({ course }) => ({
      id: `${published.floor}: course ${course}`,
      floor: published.floor,
      course,
      pieces: (ofCourse.get(course) ?? [])
        .toSorted((a, b) => a.piece - b.piece)
        .map((piece) => coursePiece(published, piece, offcuts(piece), units)),
    }))
}

function coursePiece(
  floor: PublishedFloor,
  piece: PublishedPiece,
  offcuts: readonly Offcut[],
  units: UnitStyle,
): CoursePiece {
  const facts = pieceFacts(piece)
  return {
    id: pieceId(floor, piece.piece),
    piece: piece.piece,
    plank: piece.plank,
    size: `${lengthText(facts, units)} x ${widthText(facts.width, floor.rules.plankWidth, units)}`,
    work: cutText(facts),
    offcut: offcutText(offcuts),
  }
}

/** "its offcut is for piece 31", "an offcut of piece 12". */
function offcutText(offcuts: readonly Offcut[]): string {
  return offcuts
    .map(({ piece, later }) =>
      later ? `its offcut is for piece ${piece}` : `an offcut of piece ${piece}`,
    )
    .join(', ')
}
