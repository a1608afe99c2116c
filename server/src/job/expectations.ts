import type { Entry } from '../language/tree.ts'
import { ratio, ZERO } from '../units/ratio.ts'
import type { Expectation } from './job.ts'
import { numberIn, phrase } from './phrases.ts'

const FORMS: readonly (readonly [form: string, what: Expectation['what']])[] = [
  ['COUNT boxes|box', 'boxes'],
  ['COUNT planks', 'planks'],
  ['NUMBER sq ft', 'sq ft'],
  ['NUMBER sq m', 'sq m'],
]

/** Areas are written down rounded: without a margin they are held within half a hundredth. */
const AREA_WITHIN = ratio(1, 2)

/** What one `expect` line says, each number by itself; its margin holds for all of them. */
export function expectationsOf(line: Entry): readonly Expectation[] {
  const within = numberIn(phrase(line, 'within PERCENT')?.measures[0])
  return FORMS.flatMap(([form, what]) => {
    const said = phrase(line, form)
    const value = numberIn(said?.measures[0])
    if (said === null || value === null) return []
    const usual = what === 'sq ft' || what === 'sq m' ? AREA_WITHIN : ZERO
    return [{ what, value, withinPercent: within ?? usual, span: said.span }]
  })
}
