import { message } from '../facts/message.ts'
import type { Block, Tree } from '../language/tree.ts'
import type { Binding } from './binding.ts'
import { onlyOne } from './file-lines.ts'
import type { Job } from './job.ts'
import { notesIn } from './lines.ts'

type Head = Pick<Job, 'title' | 'site' | 'date' | 'revision' | 'notes'>

/** The job block of the root: its title, and what is printed beside it. A part file has none. */
export function headOf(root: Tree | undefined, binding: Binding): Head {
  const block = onlyOne(root?.blocks.filter(({ word }) => word === 'job') ?? [], binding)
  if (block === null) return { title: '', site: '', date: '', revision: '', notes: [] }
  sayWhatIsToCome(root!, block, binding)
  return {
    title: block.text,
    site: textOf(block, 'site', binding),
    date: textOf(block, 'date', binding),
    revision: textOf(block, 'revision', binding),
    notes: notesIn(block.under),
  }
}

function textOf(block: Block, word: string, binding: Binding): string {
  return (
    onlyOne(
      block.under.filter((entry) => entry.word === word),
      binding,
    )?.text ?? ''
  )
}

/** A job just begun is told its next step. */
function sayWhatIsToCome(root: Tree, block: Block, binding: Binding): void {
  const has = (word: string): boolean => root.blocks.some((other) => other.word === word)
  if (has('include') || (has('room') && has('floor'))) return
  const text = has('room')
    ? 'No floor is laid yet: a floor block lists rooms and what is laid in them.'
    : 'This job has no room yet: a line "room" and its name begins one, then a line for each wall.'
  binding.say(message('incomplete', 'job-unfinished', block.line.span, text))
}
