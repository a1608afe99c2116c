import { amountText } from '../../report/text/quantities.ts'
import type { Quantity } from '../../takeoff/takeoff.ts'
import { derivationParts, type HoverPart, text, textIf } from './parts.ts'

/** What stands for a count while there is none yet. */
export const BEING_COUNTED: HoverPart = text('Planks and boxes are being counted.')

/** A quantity and why it is what it is; one that is not final says so first. */
export function quantityParts(quantity: Quantity): readonly HoverPart[] {
  return [
    ...derivationParts({ ...quantity.derivation, value: amountText(quantity) }),
    ...textIf(!quantity.complete, 'This is incomplete: something that it needs is still to come.'),
  ]
}
