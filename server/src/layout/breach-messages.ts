import { type Message, message } from '../facts/message.ts'
import type { Span } from '../facts/span.ts'
import { downToMark } from '../units/down-to-mark.ts'
import type { Nm, UnitStyle } from '../units/length.ts'
import { printLength } from '../units/print.ts'
import type { PublishedBreach, PublishedFloor, SoftRule } from './published.ts'
import { CLEAR_OF_DOORWAY } from './zones.ts'

/** The code of the warning for each rule. */
export const BREACH_CODES: Readonly<Record<SoftRule, string>> = {
  stagger: 'stagger',
  'shortest end': 'shortest-end',
  'narrowest rip': 'narrowest-rip',
  'longest run': 'longest-run',
  'doorway joint': 'doorway-joint',
}

/** One warning for each soft rule that the layout breaks: how often, and the worst of it. */
export function breachMessages(
  floor: PublishedFloor,
  units: UnitStyle,
  span: Span,
): readonly Message[] {
  const byRule = Map.groupBy(floor.breaches, (breach) => breach.rule)
  return [...byRule].map(([rule, breaches]) => {
    const worst = breaches.reduce((a, b) => (excess(b) > excess(a) ? b : a))
    const text = `${sentence(floor, breaches.length, worst, units)} No better layout was found.`
    return message('warning', BREACH_CODES[rule], span, text)
  })
}

/** By how much a breach misses its rule. */
function excess({ rule, value, limit }: PublishedBreach): Nm {
  return rule === 'longest run' || rule === 'doorway joint' ? value - limit : limit - value
}

function sentence(
  floor: PublishedFloor,
  count: number,
  worst: PublishedBreach,
  units: UnitStyle,
): string {
  const limit = printLength(worst.limit, units)
  const value = printLength(asFound(worst, units), units)
  const where = placeOf(floor, worst)
  const only = count === 1
  switch (worst.rule) {
    case 'stagger':
      return `${only ? 'Two joints stand' : `${count} pairs of joints stand`} nearer than the ${limit} stagger, ${only ? '' : 'the nearest '}${value} apart ${where}.`
    case 'shortest end':
      return `${only ? 'A piece is' : `${count} pieces are`} shorter than ${limit}, ${only ? '' : 'the shortest '}${value} ${where}.`
    case 'narrowest rip':
      return `${only ? 'A piece is' : `${count} pieces are`} narrower than ${limit}, ${only ? '' : 'the narrowest '}${value} ${where}.`
    case 'longest run':
      return `The floor runs ${value} ${worst.direction} the planks without a break, over the ${limit} that the product allows.`
    case 'doorway joint':
      return `${only ? 'An end joint stands' : `${count} end joints stand`} in or within ${printLength(CLEAR_OF_DOORWAY, units)} of a doorway, ${only ? '' : 'the worst '}${value} inside that stretch ${where}.`
  }
}

/** What falls short is rounded down, as the cut list has it, so that it never reads like the limit. */
function asFound({ rule, value }: PublishedBreach, units: UnitStyle): Nm {
  return rule === 'longest run' ? value : downToMark(value, units)
}

/** Which course it is in, by the number that it has in the cut list and the drawing. */
function placeOf(floor: PublishedFloor, breach: PublishedBreach): string {
  const piece = floor.pieces.find((each) => each.piece === breach.pieces[0])
  return piece === undefined ? '' : `in course ${piece.course}`
}
