import type { LaidFloor } from '../../layout/lay.ts'
import type { PublishedCourse, PublishedPiece } from '../../layout/published.ts'
import { NM_PER_INCH, NM_PER_MM, type Nm, type UnitStyle } from '../../units/length.ts'
import { printLength } from '../../units/print.ts'
import { breachText } from '../breach-text.ts'
import type { Compiled } from '../compiled.ts'
import { type PieceFacts, pieceFacts } from '../piece-facts.ts'
import { visible } from '../visible.ts'
import { table } from './table.ts'

/** The cut list for the crew: every course in laying order, piece by piece. */
export function layoutText(compiled: Compiled): string {
  const { job, floors, takeoff } = compiled
  if (floors.length === 0) return 'No floor can be laid yet.\n'
  const lines = floors.flatMap((floor) => floorLines(floor, job.units))
  const unready = takeoff.complete ? [] : ['', 'Not final: something is still to come or wrong.']
  return `${[visible(job.title), ...lines, ...unready].join('\n')}\n`
}

function floorLines({ floor, product, published }: LaidFloor, units: UnitStyle): readonly string[] {
  const { bound, breaches, courses, pieces, planks } = published
  const ofCourse = Map.groupBy(pieces, (piece) => piece.course)
  const inOrder = courses.toSorted((a, b) => a.order - b.order)
  const head = ['laid', 'pieces', 'plank', 'length', 'width', 'cut']
  const rows = inOrder.flatMap((course) =>
    courseRows(course, ofCourse.get(course.course) ?? [], units),
  )
  return [
    '',
    visible(`Floor ${floor.name.text}, ${product.name.text}`),
    `  ${planks.length} planks, ${pieces.length} pieces, ${courses.length} courses; no layout needs fewer than ${bound.planks} planks`,
    ...breaches.map((breach) => `  not met: ${breachText(breach, units)}`),
    '',
    ...table([head, ...rows], ['right', 'left', 'left', 'right', 'right', 'left']),
  ]
}

/** Whole planks that follow each other make one row. */
function courseRows(
  { order }: PublishedCourse,
  pieces: readonly PublishedPiece[],
  units: UnitStyle,
): readonly (readonly string[])[] {
  const rows: { facts: PieceFacts; first: PublishedPiece; last: PublishedPiece }[] = []
  for (const piece of pieces) {
    const facts = pieceFacts(piece)
    const before = rows.at(-1)
    if (
      before?.facts.cut === 'whole' &&
      facts.cut === 'whole' &&
      before.facts.length === facts.length
    )
      before.last = piece
    else rows.push({ facts, first: piece, last: piece })
  }
  return rows.map(({ facts, first, last }, index) => [
    index === 0 ? `${order}` : '',
    range(first.piece, last.piece),
    range(first.plank, last.plank),
    printLength(cutDown(facts.length, units), units),
    widthText(facts, units),
    cutText(facts),
  ])
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
  const parts = [
    ...(sawnAt === 'neither end'
      ? []
      : [`cut at ${sawnAt === 'both ends' ? sawnAt : `its ${sawnAt}`}`]),
    ...(cut === 'rip' || cut === 'cut and rip' ? ['ripped'] : []),
    ...(shaped ? ['shaped'] : []),
  ]
  return parts.join(', ')
}
