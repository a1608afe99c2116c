import { message } from '../facts/message.ts'
import type { RawLine } from './lines.ts'
import { type Reading, spanOf } from './reading.ts'

/** Signs that show nothing and yet make two names differ. */
const ZERO_WIDTH =
  '\\u00ad\\u034f\\u115f\\u1160\\u17b4\\u17b5\\u180b-\\u180f\\u200b-\\u200f\\u2060-\\u2065\\u206a-\\u206f' +
  '\\u3164\\ufeff\\uffa0\\ufff9-\\ufffb\\u{e0000}-\\u{e007f}'
/** Signs that turn the order of what is shown. */
const TURNING = '\\u061c\\u202a-\\u202e\\u2066-\\u2069'
/** Control signs, lone halves of a character, and the sign for what was no text. */
const CONTROL =
  '\\u0000-\\u0008\\u000b\\u000c\\u000e-\\u001f\\u007f-\\u009f\\u2028\\u2029\\ufffd-\\uffff\\ufdd0-\\ufdef\\ud800-\\udfff'

const ANY = new RegExp(`[${ZERO_WIDTH}${TURNING}${CONTROL}]`, 'u')
const RUNS = new RegExp(`[${ZERO_WIDTH}${TURNING}${CONTROL}]+`, 'gu')
const TURNS = new RegExp(`[${TURNING}]`, 'u')
const CONTROLS = new RegExp(`[${CONTROL}]`, 'u')

/**
 * Says once for a line that it holds signs nobody can see, with a fix that takes them out, and gives
 * true: such a line is not read, for what is seen is not what stands there.
 */
export function hiddenIn(line: RawLine, reading: Reading): boolean {
  const from = line.number === 1 && reading.text.charCodeAt(0) === 0xfeff ? 1 : line.start
  const typed = reading.text.slice(from, line.end)
  if (!ANY.test(typed)) return false
  const runs = [...typed.matchAll(RUNS)].slice(0, 100)
  const first = runs[0]!
  const edits = runs.map((run) => ({
    span: spanOf(reading, from + run.index, from + run.index + run[0].length),
    text: '',
  }))
  const sign =
    TURNS.exec(typed)?.[0] ??
    CONTROLS.exec(typed)?.[0] ??
    String.fromCodePoint(first[0].codePointAt(0)!)
  const [code, said] = explain(sign)
  const span = edits[0]!.span
  const fixes = [{ title: 'Take the hidden signs out', edits }]
  reading.say(message('error', code, span, said, { fixes }))
  return true
}

function explain(sign: string): readonly [string, string] {
  const name = `U+${sign.codePointAt(0)!.toString(16).toUpperCase().padStart(4, '0')}`
  if (TURNS.test(sign)) {
    return [
      'character-turns-text',
      `A sign that turns the order of the text stands here (${name}): the line may not say what it shows. Take it out.`,
    ]
  }
  if (CONTROLS.test(sign)) {
    return [
      'character-not-text',
      `A sign that is no text stands here (${name}). Take it out; if there are many, the file may be no text at all.`,
    ]
  }
  return [
    'character-hidden',
    `A sign that nobody can see stands here (${name}). It makes two names differ that look alike. Take it out.`,
  ]
}
