import { type Message, message } from '../facts/message.ts'
import type { Expectation, Job } from '../job/job.ts'
import { keyOf } from '../language/name.ts'
import { printDecimal } from '../units/decimal.ts'
import { compare, multiply, type Ratio, ratio, subtract } from '../units/ratio.ts'
import type { Quantity, Takeoff } from './takeoff.ts'

/** Holds each `expect` line against the numbers; a difference beyond its margin is an error. */
export function unmetExpectations(job: Job, counted: Takeoff): readonly Message[] {
  // Of two floors or products with one name the first has it.
  const floors = new Map(counted.floors.map((one) => [one.floor, one] as const).toReversed())
  const products = new Map(
    counted.products.map((one) => [keyOf(one.product), one] as const).toReversed(),
  )
  return job.floors.flatMap((floor) =>
    floor.expects.flatMap((expected) => {
      const ofFloor = floors.get(floor.name.text)?.quantities ?? []
      const bought = products.get(floor.product?.key ?? '')?.quantities ?? []
      const found = foundFor(expected, ofFloor, bought)
      return found?.value && isOutside(found.value, expected) ? [unmet(expected, found)] : []
    }),
  )
}

/** The quantity that an expectation is held against, among those of its floor and its product. */
export function foundFor(
  expected: Expectation,
  ofFloor: readonly Quantity[],
  bought: readonly Quantity[],
): Quantity | undefined {
  switch (expected.what) {
    case 'boxes':
      return bought.find((quantity) => quantity.key === 'boxes')
    case 'planks':
      return ofFloor.find((quantity) => quantity.key === 'planks')
    default:
      return ofFloor.find(
        (quantity) => quantity.key === 'floor area' && quantity.unit === expected.what,
      )
  }
}

/** Whether a value lies farther off than an expectation allows. */
export function isOutside(value: Ratio, expected: Expectation): boolean {
  const off = subtract(value, expected.value)
  const size = off.n < 0n ? { n: -off.n, d: off.d } : off
  const margin = multiply(expected.value, multiply(expected.withinPercent, ratio(1, 100)))
  return compare(size, margin) > 0
}

function unmet(expected: Expectation, found: Quantity): Message {
  const places = expected.what === 'boxes' || expected.what === 'planks' ? 0 : 1
  return message(
    'error',
    'unmet-expectation',
    expected.span,
    `Expected ${printDecimal(expected.value, places)} ${expected.what}, and the job comes to ${found.printed}. ` +
      'Change the job, or write what it comes to now, or a margin: within 5%.',
  )
}
