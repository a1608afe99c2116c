import type { Compiled } from '../compile.ts'
import { sceneOf } from '../report/scene-of.ts'
import { subjectOf } from '../report/subject-of.ts'
import { svg } from '../report/svg.ts'

/** The plan of a job with all its floors on one sheet, as SVG. */
export function drawingOf(compiled: Compiled): string {
  return svg(sceneOf(subjectOf(compiled)))
}
