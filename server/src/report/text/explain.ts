import type { Derivation } from '../../facts/derivation.ts'
import { sourceInWords } from '../../facts/source.ts'
import type { Quantity } from '../../takeoff/takeoff.ts'
import type { Compiled } from '../compiled.ts'
import { placeIn } from '../place.ts'
import { visible } from '../visible.ts'

/** Why a quantity is what it is: its formula and inputs as an indented tree, down to the readings. */
export function explainText(quantity: Quantity, compiled: Compiled): string {
  const lines: string[] = []
  /** Depth is bounded by the formulas of the takeoff, not by what a user writes. */
  const say = (derivation: Derivation, indent: string) => {
    lines.push(`${indent}${headOf(derivation, compiled)}`)
    if (derivation.formula !== '') lines.push(`${indent}  = ${visible(derivation.formula)}`)
    if (derivation.rule !== '') lines.push(`${indent}  ${visible(derivation.rule)}`)
    for (const input of derivation.inputs) say(input, `${indent}    `)
  }
  say(quantity.derivation, '')
  if (!quantity.complete)
    lines.push('This is incomplete: something that it needs is still to come.')
  return `${lines.join('\n')}\n`
}

function headOf({ label, value, source, span }: Derivation, { trees }: Compiled): string {
  const tree = span === null ? undefined : trees.find((one) => one.file === span.file)
  const where =
    span === null || tree === undefined ? '' : `, ${span.file}:${placeIn(tree, span.start).line}`
  return visible(`${label}: ${value}  [${sourceInWords(source)}${where}]`)
}
