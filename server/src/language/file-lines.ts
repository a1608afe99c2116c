import { message } from '../facts/message.ts'
import type { Draft } from './drafts.ts'
import { type Reading, sayError } from './reading.ts'

/** The version of the language that this release reads. */
const VERSION = 1n

/** The lines that a file has once because the reading of all others hangs on them. */
export const ONCE: readonly string[] = ['floorscribe', 'units']

/** Says what is wrong with a line of column one in the light of those above it. */
export function checkFileLine(entry: Draft, above: readonly Draft[], reading: Reading): void {
  if (!ONCE.includes(entry.word)) return
  const first = above.find((other) => other.word === entry.word)
  if (first !== undefined) {
    const said = `A file has one ${entry.word} line, and line ${first.line.number} is one. Keep one of them.`
    sayError(reading, 'line-twice', entry.wordSpan, said)
  } else if (entry.word === 'floorscribe') checkVersion(entry, reading)
}

/** A later file is read as far as its words are known: no word ever changes its meaning. */
function checkVersion(entry: Draft, reading: Reading): void {
  const figure = entry.phrases[0]?.measures[0]?.figure
  if (figure?.kind !== 'number' || figure.value.n === VERSION) return
  if (figure.value.n < VERSION) {
    const said = `There is no floorscribe ${figure.text}. This release reads floorscribe ${VERSION}, the first.`
    sayError(reading, 'version-unknown', entry.phrases[0]!.span, said)
    return
  }
  const said = `This file says floorscribe ${figure.text}, and this release reads floorscribe ${VERSION}. Words that came later are not understood; all others mean what they always did.`
  reading.say(message('warning', 'version-later', entry.line.span, said))
}
