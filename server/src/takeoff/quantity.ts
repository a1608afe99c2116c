import type { Derivation } from '../facts/derivation.ts'
import { COMPUTED, type Source } from '../facts/source.ts'
import type { Ratio } from '../units/ratio.ts'
import { printAmount } from './amount.ts'
import type { Quantity, QuantityUnit } from './takeoff.ts'

/** How a quantity came about, without its value. */
export interface Why {
  readonly formula: string
  readonly inputs: readonly Derivation[]
  readonly rule?: string
  readonly source?: Source
  readonly room?: string
}

/** A quantity whose value is known. */
export function quantity(
  name: { readonly key: string; readonly label: string; readonly unit: QuantityUnit },
  value: Ratio,
  why: Why,
): Quantity {
  const printed = printAmount(value, name.unit)
  return {
    ...name,
    room: why.room ?? null,
    value,
    printed,
    complete: true,
    derivation: {
      label: name.label,
      value: printed,
      formula: why.formula,
      inputs: why.inputs,
      rule: why.rule ?? '',
      source: why.source ?? COMPUTED,
      span: null,
    },
  }
}

/** A leaf of a derivation: a figure that is taken as it is. */
export function given(
  label: string,
  value: string,
  more: Partial<Pick<Derivation, 'source' | 'span' | 'rule'>> = {},
): Derivation {
  return {
    label,
    value,
    formula: '',
    inputs: [],
    rule: more.rule ?? '',
    source: more.source ?? { kind: 'job' },
    span: more.span ?? null,
  }
}
