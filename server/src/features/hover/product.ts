import type { Product } from '../../job/job.ts'
import { counted } from '../../job/sentence.ts'
import type { Block } from '../../language/tree.ts'
import { plankStyle } from '../../report/cut-size.ts'
import type { UnitStyle } from '../../units/length.ts'
import { printLength } from '../../units/print.ts'
import { countedIndex, quantityOf } from '../figures/counted-index.ts'
import type { Asked } from './asked.ts'
import { BEING_COUNTED, quantityParts } from './counted.ts'
import { type HoverPart, steps, text, title } from './parts.ts'
import { ruleSteps } from './product-rules.ts'

/** A product: its plank, box and rules with where each comes from, and its boxes down to the floors. */
export function productParts(
  asked: Asked,
  block: Block,
  product: Product | null,
): readonly HoverPart[] {
  const name = block.name?.text ?? ''
  if (product === null) {
    return [title(name), text('It is not told whole yet, so nothing can be laid with it.')]
  }
  return [
    title(`${name}: ${faceText(product, asked.units)}`),
    text(boxText(product, asked.units)),
    ...steps(ruleSteps(product, block, asked.units)),
    ...boughtParts(asked, product),
  ]
}

/** `6" x 48", 3/16" thick`. */
function faceText({ width, lengths, thickness }: Product, units: UnitStyle): string {
  const length = (nm: number) => printLength(nm, plankStyle(units))
  const long = lengths.map((each) => length(each.length)).join(', ')
  const thick = thickness === null ? '' : `, ${length(thickness)} thick`
  return `${length(width)} x ${long}${thick}`
}

function boxText({ lengths, perBox }: Product, units: UnitStyle): string {
  const planks = `${counted(perBox, 'plank')} in a box`
  if (lengths.length === 1) return `${planks}.`
  const each = lengths.map(
    (one) => `${one.perBox} of ${printLength(one.length, plankStyle(units))}`,
  )
  return `${planks}: ${each.join(', ')}.`
}

/** Its boxes, and what is left of them. */
function boughtParts({ view }: Asked, product: Product): readonly HoverPart[] {
  if (view.counted === null) return [BEING_COUNTED]
  const bought = countedIndex(view.counted).products.get(product.name.key)
  const boxes = quantityOf(bought?.quantities ?? [], 'boxes')
  const left = quantityOf(bought?.quantities ?? [], 'planks left')
  if (boxes === undefined || left === undefined) return [text('No floor is laid with it.')]
  return [...quantityParts(boxes), text(`Left over: ${left.printed}, spares among them.`)]
}
