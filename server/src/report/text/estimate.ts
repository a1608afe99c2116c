import { cautionsOf, PREAMBLE } from '../cautions.ts'
import type { Compiled } from '../compiled.ts'
import { visible } from '../visible.ts'
import { quantityLines } from './quantities.ts'
import { surveyLines } from './survey.ts'
import { wrap } from './wrap.ts'

const WIDTH = 96

/** The estimate for people: survey check, quantities, boxes, cautions. */
export function estimateText(compiled: Compiled): string {
  const { job } = compiled
  const heading = [job.title, job.site, job.date, job.revision].filter((line) => line !== '')
  return `${[
    ...heading.map(visible),
    '',
    ...surveyLines(compiled),
    ...quantityLines(compiled.takeoff),
    '',
    ...cautionLines(compiled),
  ].join('\n')}\n`
}

function cautionLines(compiled: Compiled): readonly string[] {
  return [
    ...wrap(PREAMBLE, WIDTH),
    ...cautionsOf(compiled.job).flatMap(({ text, sourceText }) =>
      wrap(`${text} [${sourceText}]`, WIDTH, { first: '  - ', hang: '    ' }),
    ),
  ]
}
