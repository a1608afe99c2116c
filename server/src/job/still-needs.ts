import { message } from '../facts/message.ts'
import type { Entry } from '../language/tree.ts'
import type { Binding } from './binding.ts'

/** Says what a line does not say yet; nothing is wrong with it, and nothing can be made of it. */
export function stillNeeds(line: Entry, what: string, binding: Binding): null {
  const text = `This ${line.word} line still needs ${binding.samples(what)}.`
  binding.say(message('incomplete', 'ends-not-said', line.line.span, text))
  return null
}
