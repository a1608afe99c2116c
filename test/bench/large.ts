import { compile } from '../../server/src/compile.ts'
import { sceneOf } from '../../server/src/report/scene-of.ts'
import { subjectOf } from '../../server/src/report/subject-of.ts'
import { svg } from '../../server/src/report/svg.ts'
import { estimateText } from '../../server/src/report/text/estimate.ts'
import { work } from './clock.ts'
import { SHAPES } from './shapes.ts'
import { ms, table } from './table.ts'

const WALLS = 100_000

/** Far beyond any house: each shape once, from a cold engine's text to the estimate, then its drawing. */
export function largeTable(only = ''): string {
  const shapes = SHAPES.filter(({ name }) => name.includes(only))
  const rows = shapes.map(({ name, text }) => {
    const texts = new Map([['large.floor', text(WALLS)]])
    let compiled: ReturnType<typeof compile> | undefined
    const estimate = work(() => {
      compiled = compile(texts, 'large.floor')
      return 'missing' in compiled ? '' : estimateText(compiled)
    })
    if (compiled === undefined || 'missing' in compiled) throw new Error('it includes nothing')
    const subject = subjectOf(compiled)
    const pieces = compiled.floors.reduce((sum, floor) => sum + floor.published.pieces.length, 0)
    return [
      name,
      pieces === 0 ? 'refused' : String(pieces),
      ms(estimate),
      ms(work(() => svg(sceneOf(subject)))),
    ]
  })
  return table([`${WALLS} walls, once`, 'pieces', 'estimate', 'drawing'], rows)
}
