import { COMMON_PRACTICE, FROM_THE_JOB } from '../facts/source.ts'
import type { Product } from '../job/job.ts'
import type { LaidFloor } from '../layout/lay.ts'
import { ratio } from '../units/ratio.ts'
import { roundRatio } from '../units/round.ts'
import { given, quantity } from './quantity.ts'
import type { ProductTakeoff, Quantity } from './takeoff.ts'

/** The least that spoils: two planks [common practice]. */
const LEAST_SPOIL = 2n

/**
 * What is bought of a product, once over all its floors: planks, spoil, spares, whole boxes, what is
 * left. For a product of several lengths boxes are the least that cover the use of every length.
 */
export function productQuantities(product: Product, floors: readonly LaidFloor[]): ProductTakeoff {
  const planks = quantity(
    { key: 'planks', label: 'planks of all floors', unit: 'planks' },
    ratio(floors.reduce((sum, floor) => sum + floor.published.planks.length, 0)),
    {
      formula: 'sum over the floors',
      inputs: floors.map((floor) =>
        given(floor.floor.name.text, `${floor.published.planks.length} planks`, {
          source: { kind: 'computed' },
          span: floor.floor.span,
        }),
      ),
    },
  )
  const spoil = spoilOf(product, planks)
  const spares = sparesOf(product)
  const boxes = boxesOf(product, floors, { planks, spoil, spares })
  const left = leftOver(product, { planks, spoil, boxes })
  return { product: product.name.text, quantities: [planks, spoil, spares, boxes, left] }
}

function spoilOf(product: Product, planks: Quantity): Quantity {
  const { spoil } = product
  const byPercent = spoil.percent
    ? roundRatio(
        ratio(planks.value!.n * spoil.percent.n, 100n * spoil.percent.d * planks.value!.d),
        'up',
      )
    : 0n
  const stated = spoil.planks === null ? byPercent : BigInt(spoil.planks) + byPercent
  const count = stated > LEAST_SPOIL ? stated : LEAST_SPOIL
  return quantity({ key: 'spoil', label: 'spoil', unit: 'planks' }, ratio(count), {
    formula: 'as the product states, at least 2 planks',
    inputs: spoil.span ? [given('spoil', `${stated} planks`, { span: spoil.span })] : [],
    source: spoil.span ? FROM_THE_JOB : COMMON_PRACTICE,
  })
}

function sparesOf(product: Product): Quantity {
  const { spares } = product
  return quantity(
    { key: 'spares', label: 'spares promised', unit: 'planks' },
    ratio(spares.planks + spares.boxes * product.perBox),
    { formula: 'as the product states', inputs: [], source: FROM_THE_JOB },
  )
}

function boxesOf(
  product: Product,
  floors: readonly LaidFloor[],
  parts: { readonly planks: Quantity; readonly spoil: Quantity; readonly spares: Quantity },
): Quantity {
  const extra = parts.spoil.value!.n + parts.spares.value!.n
  const byAll = roundRatio(ratio(parts.planks.value!.n + extra, BigInt(product.perBox)), 'up')
  const byLength = product.lengths.map(({ length, perBox }) => {
    const use = floors.reduce(
      (sum, floor) =>
        sum + floor.published.planks.filter((plank) => plank.length === length).length,
      0,
    )
    return roundRatio(ratio(use, perBox), 'up')
  })
  const count = largest([byAll, ...byLength])
  return quantity({ key: 'boxes', label: 'boxes', unit: 'boxes' }, ratio(count), {
    formula:
      product.lengths.length === 1
        ? '(planks + spoil + spares) ÷ planks in a box, whole boxes'
        : 'the least that cover the use of every length, and planks + spoil + spares in all',
    inputs: [
      parts.planks.derivation,
      parts.spoil.derivation,
      parts.spares.derivation,
      given('planks in a box', `${product.perBox}`, { span: product.span }),
    ],
    rule: 'rounded up once',
  })
}

function largest(counts: readonly bigint[]): bigint {
  return counts.toSorted((a, b) => (a < b ? 1 : a > b ? -1 : 0))[0]!
}

function leftOver(
  product: Product,
  parts: { readonly planks: Quantity; readonly spoil: Quantity; readonly boxes: Quantity },
): Quantity {
  const bought = parts.boxes.value!.n * BigInt(product.perBox)
  const left = bought - parts.planks.value!.n - parts.spoil.value!.n
  return quantity(
    { key: 'planks left', label: 'planks left, spares among them', unit: 'planks' },
    ratio(left),
    {
      formula: 'planks in the boxes − planks by layout − spoil',
      inputs: [parts.boxes.derivation, parts.planks.derivation, parts.spoil.derivation],
    },
  )
}
