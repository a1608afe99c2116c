import type { Message } from '../../facts/message.ts'
import type { Expectation, Floor, Hold } from '../../job/job.ts'
import { counted as countedWord } from '../../job/sentence.ts'
import { printAmount } from '../../takeoff/amount.ts'
import { foundFor, isOutside } from '../../takeoff/expectations.ts'
import { printDecimal } from '../../units/decimal.ts'
import { countedIndex } from '../figures/counted-index.ts'
import type { Asked } from './asked.ts'
import { BEING_COUNTED, quantityParts } from './counted.ts'
import { type HoverPart, step, steps, text, title } from './parts.ts'

/** What a line expects against what the job comes to. */
export function expectParts(
  { view }: Asked,
  floor: Floor,
  expected: Expectation,
): readonly HoverPart[] {
  const within =
    expected.withinPercent.n === 0n ? '' : `, within ${printDecimal(expected.withinPercent, 1)} %`
  const head = title(`expected: ${printAmount(expected.value, expected.what)}${within}`)
  if (view.counted === null) return [head, BEING_COUNTED]
  const { floors, products } = countedIndex(view.counted)
  const ofFloor = floors.get(floor.name.key)?.quantities ?? []
  const bought = products.get(floor.product?.key ?? '')?.quantities ?? []
  const found = foundFor(expected, ofFloor, bought)
  if (found === undefined || found.value === null) {
    return [head, text('There is no such number yet to hold it against.')]
  }
  const verdict = isOutside(found.value, expected) ? 'which is not what is expected' : 'as expected'
  const amount = found.complete ? found.printed : `${found.printed} so far`
  return [head, text(`The job comes to ${amount}, ${verdict}.`), ...quantityParts(found)]
}

/** What is held, who clears it, and whether that was done. */
export function holdParts({ what, by, on, cleared }: Hold): readonly HoverPart[] {
  const who = by === null ? '' : ` (by ${by})`
  const paper = on === null ? '' : ` It stands on ${on}.`
  return [
    title(`hold: ${what}`),
    text(
      cleared === null
        ? `Not cleared yet${who}: until it is, no total of the job is final.${paper}`
        : `Cleared ${cleared}${who}.${paper}`,
    ),
  ]
}

/** The warnings that an accept line settles in its block, or in the whole job. */
export function acceptParts({ view, entry }: Asked, code: string): readonly HoverPart[] {
  const { job } = view.measured
  const span = entry.line.span
  const accept = job.accepts.find(
    (one) => one.span.start === span.start && one.span.file === span.file,
  )
  const { messages } = view.counted ?? view.measured
  const settled = messages.filter(
    (one) => one.accepted && one.code === code && isIn(one, accept?.scope ?? null),
  )
  const head = title(`accept: ${code.replaceAll('-', ' ')}`)
  if (settled.length > 0) {
    return [
      head,
      text(`It settles ${countedWord(settled.length, 'warning')}:`),
      ...steps(settled.map((one) => step(one.text, one.span))),
    ]
  }
  return [
    head,
    view.counted === null
      ? BEING_COUNTED
      : text('There is no such warning here to settle just now.'),
  ]
}

function isIn({ span }: Message, scope: Message['span'] | null): boolean {
  if (scope === null) return true
  return span.file === scope.file && scope.start <= span.start && span.end <= scope.end
}
