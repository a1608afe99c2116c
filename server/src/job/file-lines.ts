import { message } from '../facts/message.ts'
import type { Block, Entry, Tree } from '../language/tree.ts'
import type { Nm } from '../units/length.ts'
import type { Binding } from './binding.ts'
import type { BaseSaid, Given } from './job.ts'
import { choiceOf, lengthIn, phrase } from './phrases.ts'
import { sizeAllowed } from './sizes.ts'
import { DEFAULT_TAPE, saidSomewhere, type Tape, tapeAfter } from './worth.ts'

/** What the lines of one file say for the rooms in it. */
export interface FileSays {
  readonly tape: Tape
  /** How thick a wall is unless an opening says otherwise; null where no line says it. */
  readonly thickness: Given<Nm> | null
  readonly base: BaseSaid | null
}

/** Where no file speaks. */
export const NOTHING_SAID: FileSays = { tape: DEFAULT_TAPE, thickness: null, base: null }

/** Reads the `tape`, `walls` and `base` lines of a file; what it does not say is as `before` it. */
export function fileSays(tree: Tree, before: FileSays, binding: Binding): FileSays {
  const walls = fileLine(tree, 'walls', binding)
  // A line that cannot be read may say it: nothing is asked before it can.
  if (hasBroken(tree, 'walls')) binding.hush('thickness')
  const tape = hasBroken(tree, 'tape') ? saidSomewhere(before.tape) : before.tape
  return {
    tape: tapeAfter(tape, fileLine(tree, 'tape', binding), binding),
    thickness: (walls === null ? null : thicknessSaid(walls, binding)) ?? before.thickness,
    base: baseAfter(before.base, fileLine(tree, 'base', binding), binding),
  }
}

/** The one line of a kind in column one; another is an error, for nobody knows which one is meant. */
export function fileLine(tree: Tree, word: string, binding: Binding): Block | null {
  const lines = tree.blocks.filter((block) => block.word === word && !block.broken)
  return onlyOne(lines, binding)
}

function hasBroken(tree: Tree, word: string): boolean {
  return tree.blocks.some((block) => block.broken && block.word === word)
}

/** The first of lines that may stand once; each further one is an error. */
export function onlyOne<T extends Entry>(lines: readonly T[], binding: Binding): T | null {
  const [first, ...others] = lines
  if (first === undefined) return null
  for (const other of others) {
    const text =
      `There is a ${other.word} line already, on ${binding.place(first.line.span, other.line.span)}. ` +
      'Keep one of the two.'
    const related = [{ span: first.line.span, text: 'The first one.' }]
    binding.say(message('error', 'line-twice', other.line.span, text, { related }))
  }
  return first
}

function thicknessSaid(line: Entry, binding: Binding): Given<Nm> | null {
  const said = phrase(line, 'LENGTH thick')
  const value = lengthIn(said?.measures[0])
  if (said === null || value === null) return null
  return sizeAllowed(said.measures[0]!, 'wall', binding) ? { value, span: said.span } : null
}

/** The base after a `base` line: what the line does not say stays as it was. */
export function baseAfter(
  before: BaseSaid | null,
  line: Entry | null,
  binding: Binding,
): BaseSaid | null {
  if (line === null) return before
  const measure = phrase(line, 'LENGTH thick')?.measures[0]
  const sound = measure !== undefined && sizeAllowed(measure, 'base', binding)
  return {
    thickness: (sound ? lengthIn(measure) : null) ?? before?.thickness ?? null,
    fate:
      (choiceOf(line, 'kept|off and back|new|none') as BaseSaid['fate']) ?? before?.fate ?? null,
    span: line.line.span,
  }
}
