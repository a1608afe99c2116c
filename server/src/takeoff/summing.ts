import { compare, multiply, type Ratio, ratio, subtract } from '../units/ratio.ts'
import { roundRatio } from '../units/round.ts'
import { printAmount } from './amount.ts'
import type { Quantity } from './takeoff.ts'

const TEN = ratio(10n)

/**
 * Parts as they are printed below their total: to a tenth, so that the printed lines sum to the printed
 * total. Each is rounded down, and the tenths that are left go to those that lost most (the method of
 * largest remainders); of two alike to the one told first. Values stay as they are, and a part that is
 * printed otherwise than by itself says so.
 */
export function summingTo(total: Ratio, parts: readonly Quantity[]): readonly Quantity[] {
  const tenths = parts.map(({ value }) => multiply(value!, TEN))
  const down = tenths.map((value) => roundRatio(value, 'down'))
  const wanted = roundRatio(multiply(total, TEN), 'half to even')
  const left = wanted - down.reduce((sum, shown) => sum + shown, 0n)
  const lost = tenths.map((value, index) => ({ index, by: subtract(value, ratio(down[index]!)) }))
  const mostFirst = lost.sort((a, b) => compare(b.by, a.by) || a.index - b.index)
  const raised = new Set(
    mostFirst.filter((_, rank) => BigInt(rank) < left).map(({ index }) => index),
  )
  return parts.map((part, index) => {
    const shown = down[index]! + (raised.has(index) ? 1n : 0n)
    return printedAs(part, printAmount(ratio(shown, 10n), part.unit))
  })
}

function printedAs(part: Quantity, printed: string): Quantity {
  if (printed === part.printed) return part
  const rule = 'rounded so that the rooms sum to the total'
  return { ...part, printed, derivation: { ...part.derivation, value: printed, rule } }
}
