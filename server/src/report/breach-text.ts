import type { PublishedBreach } from '../layout/published.ts'
import type { UnitStyle } from '../units/length.ts'
import { printLength } from '../units/print.ts'
import { cutSize, plankStyle } from './cut-size.ts'

/**
 * A breach in words: what is not met, by what, and what the product asks for. A size that falls short
 * is rounded down, so that it never reads like the limit.
 */
export function breachText(breach: PublishedBreach, units: UnitStyle): string {
  const [value, limit] = [
    cutSize(breach.value, units),
    printLength(breach.limit, plankStyle(units)),
  ]
  const run = (length: number) => printLength(length, units)
  switch (breach.rule) {
    case 'stagger':
      return `joints ${value} apart, at least ${limit} asked for`
    case 'shortest end':
      return `a piece ${value} long, at least ${limit} asked for`
    case 'narrowest rip':
      return `a piece ${value} wide, at least ${limit} asked for`
    case 'longest run':
      return `${run(breach.value)} ${breach.direction} the planks without a break, at most ${run(breach.limit)} allowed`
    case 'doorway joint':
      return `an end joint ${value} inside a doorway's zone`
  }
}
