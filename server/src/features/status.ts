import type { Message } from '../facts/message.ts'
import { counted } from '../job/sentence.ts'
import { shown } from '../language/reading.ts'
import type { Compiled } from '../report/compiled.ts'
import { visible } from '../report/visible.ts'
import { quantityOf } from './figures/counted-index.ts'
import type { View } from './view.ts'

/** One line on how a job stands, and more of it. */
export interface Status {
  readonly state: 'counting' | 'counted' | 'open' | 'errors'
  readonly text: string
  /** Lines of plain text. */
  readonly tooltip: readonly string[]
}

/** More causes than these are only counted. */
const MOST_CAUSES = 6

/** Boxes by product, or what is still in the way of them: no count that is not final stands here. */
export function statusOf({ measured, counted: compiled }: View): Status {
  const { messages } = compiled ?? measured
  const errors = weighing(messages, 'error')
  if (errors.length > 0) {
    return {
      state: 'errors',
      text: `${counted(errors.length, 'thing')} to mend`,
      tooltip: causes(errors),
    }
  }
  if (compiled === null) {
    return { state: 'counting', text: 'counting', tooltip: ['Planks and boxes are being counted.'] }
  }
  const open = weighing(messages, 'incomplete')
  if (open.length > 0) {
    const text = `${counted(open.length, 'thing')} still to come`
    return { state: 'open', text, tooltip: causes(open) }
  }
  const { complete, incompleteBecause } = compiled.takeoff
  return complete
    ? countedStatus(compiled)
    : { state: 'open', text: 'nothing to count yet', tooltip: incompleteBecause.map(visible) }
}

function countedStatus(compiled: Compiled): Status {
  const boxes = compiled.takeoff.products.map(({ product, quantities }) => ({
    product: visible(product),
    boxes: quantityOf(quantities, 'boxes')!.printed,
    left: quantityOf(quantities, 'planks left')!.printed,
  }))
  const doubts = weighing(compiled.messages, 'warning')
  const text = firstFew(boxes.map(({ product, boxes }) => `${shown(product)} ${boxes}`))
  return {
    state: 'counted',
    text: doubts.length === 0 ? text : `${text}, ${doubts.length} to look at`,
    tooltip: [
      ...boxes.map(({ product, boxes, left }) => `${product}: ${boxes}, ${left} left`),
      ...(doubts.length === 0 ? [] : causes(doubts)),
    ],
  }
}

/** A status is one line: products past the second are only counted. */
function firstFew(texts: readonly string[]): string {
  const more = texts.length - 2
  const first = texts.slice(0, 2).join(', ')
  return more > 0 ? `${first} and ${more} more` : first
}

function weighing(messages: readonly Message[], weight: Message['weight']): readonly Message[] {
  return messages.filter((one) => one.weight === weight && !one.accepted)
}

function causes(messages: readonly Message[]): readonly string[] {
  const texts = [...new Set(messages.map(({ text }) => visible(text)))]
  const more = texts.length - MOST_CAUSES
  return more > 0 ? [...texts.slice(0, MOST_CAUSES), `And ${more} more.`] : texts
}
