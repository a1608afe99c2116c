import { message } from '../facts/message.ts'
import { once } from '../facts/once.ts'
import type { Block } from '../language/tree.ts'
import type { Binding } from './binding.ts'
import type { Hold } from './job.ts'
import { nameOf, phrase } from './phrases.ts'

const holdLines = once((block: Block) => block.under.filter(({ word }) => word === 'hold'))

/** The holds of all blocks in written order; each one that is not cleared is said. */
export function holdsOf(blocks: readonly Block[], binding: Binding): readonly Hold[] {
  const lines = blocks.flatMap(holdLines)
  return lines.flatMap((line) => {
    const what = nameOf(line, 'NAME')
    if (what === null) return []
    const cleared = phrase(line, 'cleared DATE')?.measures[0]?.figure
    const hold: Hold = {
      what: what.text,
      cleared: cleared?.kind === 'date' ? cleared.text : null,
      by: nameOf(line, 'by NAME')?.text ?? null,
      on: nameOf(line, 'on NAME')?.text ?? null,
      span: line.line.span,
    }
    if (hold.cleared === null) sayHeld(hold, binding)
    return [hold]
  })
}

function sayHeld(hold: Hold, binding: Binding): void {
  const by = hold.by === null ? '' : ` by ${hold.by}`
  const text = `Held until ${hold.what} is cleared${by}. When it is, add the day to the line: cleared 2027-04-12.`
  binding.say(message('incomplete', 'hold-open', hold.span, text))
}
