import type { Compiled } from '../../server/src/report/compiled.ts'
import { layoutJson } from '../../server/src/report/json/layout.ts'
import { divide, type Ratio, ratio } from '../../server/src/units/ratio.ts'
import type { Law } from './law.ts'
import {
  inBareInches,
  inBareMillimetres,
  inMillimetres,
  printedIn,
  withNotationMixed,
} from './transform/notation.ts'
import { inEvery, inRoot } from './transform/texts.ts'
import { everyNumber } from './views.ts'

const sameNumbers = {
  stays: 'quantities, survey, layout, verdict and what is said, by code',
  compared: 'byte for byte',
  view: everyNumber,
} as const

/** One length written in several ways is one length. */
export const NOTATION: readonly Law[] = [
  {
    name: 'notation of lengths',
    change: 'each length in another notation of the same value, feet and metres mixed',
    ...sameNumbers,
    changed: (job, dice) => inEvery(job, (text) => withNotationMixed(text, dice)),
  },
  {
    name: 'millimetres',
    change: 'each length in millimetres, exactly',
    ...sameNumbers,
    changed: (job) => inEvery(job, inMillimetres),
  },
  {
    name: 'bare inches',
    change: 'each length in inches without a mark, as the units line then says',
    ...sameNumbers,
    changed: (job) => inEvery(job, inBareInches),
  },
  {
    name: 'bare millimetres',
    change: 'each length in millimetres without a unit, as the units line then says',
    ...sameNumbers,
    changed: (job) => inEvery(job, inBareMillimetres),
  },
  {
    name: 'units of what is printed',
    change: 'the units line: inches, mm, cm or m for feet and inches',
    stays: 'quantities once they are in one unit, and the layout',
    compared: 'byte for byte',
    view: inMetres,
    changed: (job, dice) =>
      inRoot(job, (text) => printedIn(text, dice.pick(['inches', 'mm', 'cm', 'm']))),
  },
]

/** How many of a unit make a square metre or a metre: by the inch of 25.4 mm. */
const IN_METRES: ReadonlyMap<string, Ratio> = new Map([
  ['sq ft', ratio(10_000_000_000n, 929_030_400n)],
  ['ft', ratio(10_000n, 3048n)],
])

function inMetres(compiled: Compiled): string {
  const { floors, products } = compiled.takeoff
  const values = [...floors, ...products].flatMap(({ quantities }) =>
    quantities.map(({ key, room, unit, value }) => {
      const metres = value && divide(value, IN_METRES.get(unit) ?? ratio(1))
      return `${key} | ${room} | ${metres && `${metres.n}/${metres.d}`}`
    }),
  )
  return `${values.join('\n')}\n${layoutJson(compiled)}`
}
