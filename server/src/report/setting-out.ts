import type { PublishedFloor } from '../layout/published.ts'
import type { UnitStyle } from '../units/length.ts'
import { widthText } from './cut-size.ts'
import { laidUpward, ripWidth } from './drawing/courses.ts'
import { runInWords, wayInWords } from './drawing/furniture.ts'
import { runDirections } from './drawing/run-frame.ts'

interface Width {
  readonly which: 'first' | 'last'
  readonly wide: string
}

/** Which way everything goes, and how wide the first and last courses are ripped: a sentence a line. */
export function settingOut(floor: PublishedFloor, units: UnitStyle): readonly string[] {
  const { along, onward } = runDirections(floor.frame, laidUpward(floor))
  const widths = (['first', 'last'] as const).flatMap((which) => {
    const width = ripWidth(floor, which)
    return width === null ? [] : [{ which, wide: widthText(width, floor.rules.plankWidth, units) }]
  })
  return [
    `Planks run ${runInWords(along)}, each course laid ${floor.rules.laid}; courses follow to the ${wayInWords(onward)}.`,
    ...widthsSaid(widths),
    'The working line is the edge of the first course that faces the field.',
  ]
}

/** `The first course is 4 3/4" wide, the last 2 5/8".` */
function widthsSaid([one, other]: readonly Width[]): readonly string[] {
  if (one === undefined) return []
  const also = other === undefined ? '' : `, the ${other.which} ${other.wide}`
  return [`The ${one.which} course is ${one.wide} wide${also}.`]
}
