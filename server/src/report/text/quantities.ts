import type { Quantity, Takeoff } from '../../takeoff/takeoff.ts'
import { visible } from '../visible.ts'
import { table } from './table.ts'
import { wrap } from './wrap.ts'

const WIDTH = 96

/**
 * The quantities for people, floor by floor and then what is bought. Where something is still to come
 * no count stands alone: each line says "so far", and the causes follow.
 */
export function quantityLines(takeoff: Takeoff): readonly string[] {
  return [
    ...takeoff.floors.flatMap(({ floor, product, quantities }) => [
      '',
      visible(`Floor ${floor}, ${product}`),
      ...rowsOf(quantities),
    ]),
    ...takeoff.products.flatMap(({ product, quantities }) => [
      '',
      visible(`To buy, ${product}`),
      ...rowsOf(quantities),
    ]),
    ...incompleteLines(takeoff),
  ]
}

function rowsOf(quantities: readonly Quantity[]): readonly string[] {
  return table(
    quantities.map((quantity) => [
      quantity.label,
      amountText(quantity),
      quantity.key === 'planks by percentage' ? afterSemicolon(quantity.derivation.rule) : '',
    ]),
    ['left', 'right', 'left'],
  )
}

/** An amount as it may be shown: one that is not final says so. */
export function amountText({ complete, printed }: Pick<Quantity, 'complete' | 'printed'>): string {
  return complete ? printed : `incomplete, ${printed} so far`
}

/** What a rule adds after how it rounds. */
function afterSemicolon(rule: string): string {
  return rule.slice(rule.indexOf(';') + 1).trim()
}

function incompleteLines({ complete, incompleteBecause }: Takeoff): readonly string[] {
  if (complete) return []
  const causes = [...new Set(incompleteBecause)]
  return [
    '',
    'Totals are incomplete:',
    ...causes.flatMap((cause) => wrap(visible(cause), WIDTH, { first: '  - ', hang: '    ' })),
  ]
}
