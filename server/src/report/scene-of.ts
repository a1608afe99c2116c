import type { Point } from '../geometry/point.ts'
import type { Nm } from '../units/length.ts'
import { roundToNm } from '../units/round.ts'
import { outermost } from './drawing/outermost.ts'
import { planOf, planShapes } from './drawing/plan.ts'
import { alongOf } from './drawing/run-frame.ts'
import { column } from './drawing/sheet.ts'
import type { Subject } from './drawing/subject.ts'
import { titleBlock } from './drawing/title-block.ts'
import { EAST, extent, inMillionths } from './drawing/vector.ts'
import type { Scene, Shape } from './scene.ts'

export type { Subject, SubjectFloor } from './drawing/subject.ts'

/** Everything that every renderer draws, from the survey and the published layouts; a pure function. */
export function sceneOf(subject: Subject): Scene {
  const plan = planOf(subject)
  return sheetOf(subject, planShapes(plan), plan.em)
}

/** In parts of the plain lettering's height. */
const MARGIN = 2.5
const COLUMN_WIDTH = 23

/** The plan, and to its right the column with the title block, tops level. */
function sheetOf(subject: Subject, plan: readonly Shape[], em: Nm): Scene {
  const drawn = extent(plan.flatMap(outermost))
  const margin = roundToNm(em * MARGIN)
  const left = drawn.high.x + roundToNm(margin * 1.4)
  const side = column(left, drawn.high.y, roundToNm(em * COLUMN_WIDTH), em)
  titleBlock(side, subject, plan)
  return {
    title: subject.title,
    low: { x: drawn.low.x - margin, y: Math.min(drawn.low.y, side.top()) - margin },
    high: { x: side.left + side.width + margin, y: drawn.high.y + margin },
    em,
    run: runOf(subject),
    shapes: [...plan, ...side.shapes],
  }
}

/** East where nothing is laid. */
export function runOf({ floors: [first] }: Subject): Point {
  return inMillionths(first === undefined ? EAST : alongOf(first.published.frame))
}
