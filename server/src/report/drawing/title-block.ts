import type { PublishedFloor } from '../../layout/published.ts'
import { printLength } from '../../units/print.ts'
import { plankStyle, widthText } from '../cut-size.ts'
import type { Shape } from '../scene.ts'
import { laidUpward, ripWidth } from './courses.ts'
import { compass, north, runInWords, scaleBar, wayInWords } from './furniture.ts'
import { legendOf } from './legend.ts'
import { runDirections } from './run-frame.ts'
import type { Column } from './sheet.ts'
import type { Subject } from './subject.ts'

/** The column beside the plan: what is drawn, whether it is final, how to read it. */
export function titleBlock(column: Column, subject: Subject, drawn: readonly Shape[]): void {
  column.write(subject.title, 1.5, 'title')
  column.skip(0.2)
  for (const line of subject.subtitles) column.write(line, 0.85, 'quiet')
  if (subject.incompleteBecause.length > 0) notFinal(column, subject.incompleteBecause)
  for (const { room, status } of subject.rooms)
    if (status === 'unfinished' || status === 'broken')
      column.write(`Not drawn: ${room.name.text}, ${WHY_NOT[status]}`, 0.8, 'alarm')
  for (const floor of subject.floors) {
    divide(column)
    floorLines(column, subject, floor.published)
  }
  divide(column)
  for (const { of, text } of legendOf(drawn)) column.sample(of, text)
  divide(column)
  column.skip(0.4)
  scaleBar(column, subject.units)
  north(column)
  column.skip(0.8)
  column.write(SMALL_PRINT, 0.68, 'quiet')
}

const WHY_NOT = {
  unfinished: 'a reading is still to be taken',
  broken: 'its readings make no room yet',
}

const SMALL_PRINT =
  'Written figures rule: do not measure a print. Outer faces of walls, and the side to which doors ' +
  'swing, are drawn for the eye and were not measured.'

function divide(column: Column): void {
  column.skip(0.9)
  column.rule()
  column.skip(0.6)
}

/** More causes would run down past the plan; the estimate has them all. */
const MOST_CAUSES = 12

function notFinal(column: Column, because: readonly string[]): void {
  const causes = [...new Set(because)]
  column.skip(0.6)
  column.write('NOT FINAL', 1.1, 'alarm')
  for (const cause of causes.slice(0, MOST_CAUSES)) column.write(cause, 0.8, 'alarm')
  const more = causes.length - MOST_CAUSES
  if (more > 0)
    column.write(`and for ${more} more ${more === 1 ? 'cause' : 'causes'}`, 0.8, 'alarm')
}

function floorLines(
  column: Column,
  { units, incompleteBecause }: Subject,
  floor: PublishedFloor,
): void {
  const soFar = incompleteBecause.length > 0 ? ' so far' : ''
  const style = plankStyle(units)
  const size = printLength(floor.rules.plankWidth, style)
  const lengths = floor.rules.plankLengths.map(({ length }) => printLength(length, style))
  column.write(floor.floor, 1.05, 'heading')
  column.write(`${floor.product}, ${size} x ${lengths.join(', ')}`, 0.82, 'plain')
  column.write(
    `${floor.pieces.length} pieces from ${floor.planks.length} planks${soFar}`,
    0.82,
    'plain',
  )
  const ends = (['first', 'last'] as const).flatMap((which) => {
    const width = ripWidth(floor, which)
    return width === null ? [] : [`${which} ${widthText(width, floor.rules.plankWidth, units)}`]
  })
  const widths = ends.length === 0 ? '' : `: ${ends.join(', ')}`
  column.write(`${floor.courses.length} courses${widths}`, 0.82, 'plain')
  const { along, onward } = runDirections(floor.frame, laidUpward(floor))
  column.skip(0.5)
  compass(column, {
    id: `${floor.floor}: laying`,
    along,
    onward,
    laid: floor.rules.laid,
    said: [
      `planks run ${runInWords(along)}`,
      `courses follow to the ${wayInWords(onward)}`,
      `each laid ${floor.rules.laid}`,
    ],
  })
}
