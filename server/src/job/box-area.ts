import { message } from '../facts/message.ts'
import type { Entry } from '../language/tree.ts'
import { printDecimal } from '../units/decimal.ts'
import { NM_PER_FOOT, NM_PER_M, type Nm } from '../units/length.ts'
import { wholeNumber } from '../units/number.ts'
import { compare, divide, multiply, type Ratio, ratio, subtract } from '../units/ratio.ts'
import { roundRatio } from '../units/round.ts'
import type { Binding } from './binding.ts'
import { numberIn, phrase } from './phrases.ts'
import { counted } from './sentence.ts'

/** Coverage printed on a box is itself rounded; this far off whole planks it is none of theirs. */
const PRINTED_WITHIN = ratio(2, 100)
/** More planks than this are in no box. */
const MOST_IN_A_BOX = 10_000n

const AREAS: readonly (readonly [form: string, side: Nm])[] = [
  ['NUMBER sq ft', NM_PER_FOOT],
  ['NUMBER sq m', NM_PER_M],
]

/**
 * The planks in a box that prints its area: area ÷ (width × length), computed exactly, to the nearest
 * whole number; refused where so many planks miss the printed area by more than 2 %. Null where the
 * line gives no area.
 */
export function planksInArea(
  line: Entry,
  width: Nm,
  length: Nm,
  binding: Binding,
): number | 'refused' | null {
  for (const [form, side] of AREAS) {
    const said = phrase(line, form)
    const printed = numberIn(said?.measures[0])
    if (said === null || printed === null) continue
    const exact = planksIn(printed, side, width, length)
    const whole = roundRatio(exact, 'half to even')
    const text = form.replace('NUMBER', said.measures[0]!.figure.text)
    if (!isNear(exact, whole) || whole > MOST_IN_A_BOX) return refuse(line, text, exact, binding)
    const planks = wholeNumber(whole)
    if (phrase(line, 'COUNT planks') === null) sayCount(line, text, planks, binding)
    return planks
  }
  return null
}

function planksIn(printed: Ratio, side: Nm, width: Nm, length: Nm): Ratio {
  const plank = ratio(BigInt(width) * BigInt(length), BigInt(side) * BigInt(side))
  return divide(printed, plank)
}

function isNear(exact: Ratio, whole: bigint): boolean {
  const off = subtract(ratio(whole), exact)
  const size = off.n < 0n ? subtract(exact, ratio(whole)) : off
  return compare(size, multiply(exact, PRINTED_WITHIN)) <= 0
}

function refuse(line: Entry, area: string, exact: Ratio, binding: Binding): 'refused' {
  const text = `${area} is ${printDecimal(exact, 2)} planks of this size, and a box holds whole planks. Check the area and the plank, or write the count, such as 9 planks.`
  binding.say(message('error', 'box-area-not-whole', line.line.span, text))
  return 'refused'
}

function sayCount(line: Entry, area: string, planks: number, binding: Binding): void {
  const text = `${area} is taken as ${counted(planks, 'plank')} a box: the area printed on a box is rounded, the planks are counted.`
  binding.say(message('note', 'box-by-area', line.line.span, text))
}
