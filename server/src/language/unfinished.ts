import { message } from '../facts/message.ts'
import type { Rest } from './content.ts'
import { exampleOn } from './examples.ts'
import { type Reading, spanOf } from './reading.ts'
import type { Entered } from './vocabulary.ts'

/** A line whose main part is still to come is unfinished, not wrong. */
export function sayUnfinished(entered: Entered, rest: Rest, reading: Reading): void {
  const { word, needs } = entered.word
  const main = needs?.[0] ?? ''
  const asked = main === 'LENGTH' ? ', or ? while it is still to be taken' : ''
  const said = `${word} still needs ${needsInWords(main)}, such as ${exampleOn(word, main, reading.tape.style)}${asked}.`
  const span = spanOf(reading, rest.base - word.length, rest.base)
  reading.say(message('incomplete', 'line-unfinished', span, said))
}

function needsInWords(needs: string): string {
  if (needs === 'LENGTH') return 'its reading'
  return needs === 'PATH' ? 'the path of a file' : 'its main part'
}
