import type { PublishedBreach } from '../../layout/published.ts'
import { breachText } from '../../report/breach-text.ts'
import { countedIndex } from '../figures/counted-index.ts'
import type { Asked } from './asked.ts'
import { BEING_COUNTED } from './counted.ts'
import { type HoverPart, step, steps, text } from './parts.ts'

/** The phrases of a product that a layout keeps where it can. */
const RULES: ReadonlyMap<string, (breach: PublishedBreach) => boolean> = new Map([
  ['LENGTH stagger', ({ rule }) => rule === 'stagger'],
  ['LENGTH shortest end', ({ rule }) => rule === 'shortest end'],
  ['LENGTH narrowest rip', ({ rule }) => rule === 'narrowest rip'],
  ['LENGTH long', ({ rule, direction }) => rule === 'longest run' && direction === 'along'],
  ['LENGTH wide', ({ rule, direction }) => rule === 'longest run' && direction === 'across'],
])

/** Whether a rule of a product is met where the product is laid, and where it is not. */
export function ruleMetParts(
  { view, block, entry, units }: Asked,
  form: string,
): readonly HoverPart[] {
  const isOf = RULES.get(form)
  if (isOf === undefined || block.word !== 'product' || entry.word === 'plank') return []
  if (view.counted === null) return [BEING_COUNTED]
  const floors = countedIndex(view.counted).products.get(block.name?.key ?? '')?.floors ?? []
  if (floors.length === 0) return []
  const places = floors.flatMap(({ floor, published }) =>
    published.breaches
      .filter(isOf)
      .map((breach) => step(`${floor.name.text}: ${breachText(breach, units)}`, floor.span)),
  )
  if (places.length === 0) {
    const soFar = view.counted.takeoff.complete ? '' : ' so far'
    return [text(`Met${soFar} wherever it is laid.`)]
  }
  return [
    text(`Not met at ${places.length === 1 ? 'one place' : `${places.length} places`}:`),
    ...steps(places),
  ]
}
