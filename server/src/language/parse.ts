import { type Message, message } from '../facts/message.ts'
import { findConflicts } from './conflicts.ts'
import { hiddenIn } from './hidden.ts'
import { type RawLine, splitLines } from './lines.ts'
import { Outline } from './outline.ts'
import type { Reading } from './reading.ts'
import type { Tree } from './tree.ts'
import { tapeOptionsOf } from './units-line.ts'

/** A longer file is no job: it gets one message, and costs nothing more. */
export const LARGEST_FILE = 5_000_000
/** More messages help nobody, and cost memory. */
export const MOST_MESSAGES = 1000

/**
 * Reads one file into its tree. Never fails and never throws: what cannot be read becomes a message
 * and a broken line, and costs nothing but itself. Linear in the length of the text.
 */
export function parse(file: string, text: string): Tree {
  if (text.length > LARGEST_FILE) return tooLarge(file, text)
  const raw = splitLines(text)
  const tape = tapeOptionsOf(file, text, raw)
  const { lines, blocks, messages } = readLines({ file, text, tape, anchor: null }, raw)
  return { file, text, lines, blocks, messages: asSaid(messages) }
}

/** A text read line by line, and all that is to be said of it, up to one more than the most. */
export function readLines(
  source: Omit<Reading, 'say' | 'isFull'>,
  raw: readonly RawLine[],
): Pick<Tree, 'lines' | 'blocks' | 'messages'> {
  const messages: Message[] = []
  const say = (said: Message): void => {
    if (messages.length <= MOST_MESSAGES) messages.push(said)
  }
  const isFull = (): boolean => messages.length > MOST_MESSAGES
  const reading: Reading = { ...source, say, isFull }
  const outline = new Outline(reading)
  const conflicts = findConflicts(source.text, raw)
  let next = 0
  for (const [index, line] of raw.entries()) {
    const conflict = conflicts[next]
    const inside = conflict !== undefined && index >= conflict.first && index <= conflict.last
    if (inside) outline.addConflict(line, index === conflict.first ? conflict : null, raw)
    else if (!hiddenIn(line, reading)) outline.add(line)
    else outline.addUnread(line)
    if (conflict !== undefined && index === conflict.last) next += 1
  }
  return { ...outline.finish(), messages }
}

/** The messages of a file as they are said: not too many, and alike ones once. */
export function asSaid(messages: readonly Message[]): readonly Message[] {
  return folded(cut(messages))
}

/** As many figures without a unit are no slips but one cause: the units line. */
const MANY_BARE = 3

/** What is said of a figure without a unit, where a file has many: once, with the places of the others. */
function folded(messages: readonly Message[]): readonly Message[] {
  const bare = messages.filter(({ code }) => WITHOUT_UNIT.includes(code))
  const [first, ...others] = bare
  if (first === undefined || bare.length <= MANY_BARE) return messages
  const related = others.slice(0, MOST_RELATED).map(({ span }) => ({ span, text: 'Here too.' }))
  const text = `${first.text} The same holds for ${others.length} more in this file.`
  return messages.flatMap((one) =>
    one === first ? [{ ...one, text, related }] : bare.includes(one) ? [] : [one],
  )
}

const WITHOUT_UNIT: readonly string[] = ['length-two-ways', 'inch-mark-missing']
const MOST_RELATED = 20

function cut(messages: readonly Message[]): readonly Message[] {
  if (messages.length <= MOST_MESSAGES) return messages
  const span = messages[MOST_MESSAGES]!.span
  const said = `There is more to say, but ${MOST_MESSAGES} messages are enough for one file. Is it a job file?`
  return [...messages.slice(0, MOST_MESSAGES), message('error', 'messages-cut', span, said)]
}

function tooLarge(file: string, text: string): Tree {
  const span = { file, start: 0, end: text.length }
  const said = `This file has ${text.length} characters, more than the ${LARGEST_FILE} that are read. A job of a thousand rooms needs a tenth of that.`
  const line = {
    span,
    number: 1,
    ending: '',
    indent: 0,
    tokens: [{ kind: 'unread', text, span }],
    head: null,
    comment: null,
    broken: true,
  }
  const start = { file, start: 0, end: 0 }
  return {
    file,
    text,
    lines: [line],
    blocks: [],
    messages: [message('error', 'file-too-large', start, said)],
  }
}
