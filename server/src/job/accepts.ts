import { WARNING_CODES } from '../facts/codes.ts'
import { type Message, message } from '../facts/message.ts'
import { nearest } from '../facts/near.ts'
import { once } from '../facts/once.ts'
import { cover, type Span } from '../facts/span.ts'
import type { Block, Entry, Name } from '../language/tree.ts'
import type { Binding } from './binding.ts'
import type { Accept } from './job.ts'
import { writeName } from './names.ts'
import { nameOf } from './phrases.ts'

const acceptLines = once((block: Block) => block.under.filter(({ word }) => word === 'accept'))

/** The accepted warnings of all blocks; those of the job block hold everywhere. */
export function acceptsOf(blocks: readonly Block[], binding: Binding): readonly Accept[] {
  return blocks.flatMap((block) =>
    acceptLines(block).flatMap((line) => {
      const name = nameOf(line, 'NAME')
      if (name === null) return []
      const code = name.key.replaceAll(' ', '-')
      if (!WARNING_CODES.includes(code)) binding.say(unknownWarning(line, name, code))
      return [{ code, scope: block.word === 'job' ? null : spanOf(block), span: line.line.span }]
    }),
  )
}

function unknownWarning(line: Entry, name: Name, code: string): Message {
  const near = nearest(code, WARNING_CODES)?.replaceAll('-', ' ')
  const asked = near === undefined ? '' : ` Is ${near} meant?`
  const said = `No warning is called "${name.text}".${asked} A warning's name stands beside it, and only warnings can be accepted.`
  const fixes = near === undefined ? [] : [writeName(name, near)]
  return message('error', 'accept-unknown', line.line.span, said, { fixes })
}

/** From the block's first line to the end of its last. */
function spanOf(block: Block): Span {
  return block.under.reduce((span, entry) => cover(span, spanOfEntry(entry)), block.line.span)
}

function spanOfEntry(entry: Entry): Span {
  const last = entry.under[entry.under.length - 1]
  return last === undefined ? entry.line.span : cover(entry.line.span, last.line.span)
}
