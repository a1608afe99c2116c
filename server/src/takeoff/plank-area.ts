import type { Derivation } from '../facts/derivation.ts'
import type { LaidFloor } from '../layout/lay.ts'
import type { Ratio } from '../units/ratio.ts'
import { areaOf, type Measures, printAmount } from './amount.ts'
import { given } from './quantity.ts'

/** The face of all planks that a layout uses, before anything is cut off. */
export function plankArea(
  laid: LaidFloor,
  measures: Measures,
): { readonly value: Ratio; readonly derivation: Derivation } {
  const length = laid.published.planks.reduce((sum, plank) => sum + BigInt(plank.length), 0n)
  const value = areaOf(2n * length * BigInt(laid.product.width), measures)
  return {
    value,
    derivation: given('area of the planks', printAmount(value, measures.area), {
      source: { kind: 'computed' },
      span: laid.product.span,
    }),
  }
}
