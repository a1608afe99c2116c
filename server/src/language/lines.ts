import { BLANKS } from '../units/signs.ts'
import { LONG_WORDS } from './vocabulary.ts'

/** A line as it stands: offsets into the text, and its first word if it has one. */
export interface RawLine {
  readonly number: number
  readonly start: number
  /** Just past the last character, before the line end. */
  readonly end: number
  readonly ending: string
  readonly indent: number
  readonly head: { readonly word: string; readonly start: number; readonly end: number } | null
}

const ENDING = /\r\n|\n|\r/g
const INDENT = new RegExp(`\\ufeff?([${BLANKS}]*)`, 'y')
const FIRST_WORD = new RegExp(`[^${BLANKS}\\r\\n,?"#][^${BLANKS}\\r\\n,?"]*`, 'y')

/** Cuts a text into lines; every character is in a line or in its ending. */
export function splitLines(text: string): readonly RawLine[] {
  const lines: RawLine[] = []
  let start = 0
  for (const found of text.matchAll(ENDING)) {
    lines.push(rawLine(text, start, found.index, found[0], lines.length + 1))
    start = found.index + found[0].length
  }
  lines.push(rawLine(text, start, text.length, '', lines.length + 1))
  return lines
}

function rawLine(
  text: string,
  start: number,
  end: number,
  ending: string,
  number: number,
): RawLine {
  INDENT.lastIndex = start
  const [before, blanks] = INDENT.exec(text)!
  const indent = blanks!.length
  const at = start + before.length
  FIRST_WORD.lastIndex = at
  const word = at < end ? (FIRST_WORD.exec(text)?.[0] ?? null) : null
  const head = word === null ? null : headAt(text, at, word, end)
  return { number, start, end, ending, indent, head }
}

function headAt(text: string, start: number, word: string, lineEnd: number): RawLine['head'] {
  for (const words of LONG_WORDS) {
    const end = endOfWords(text, start, words, lineEnd)
    if (end !== null) return { word: words.join(' '), start, end }
  }
  return { word: word.toLowerCase(), start, end: start + word.length }
}

const WORD_AT = new RegExp(`[${BLANKS}]*([^${BLANKS}\\r\\n,?"#]+)`, 'y')

function endOfWords(
  text: string,
  start: number,
  words: readonly string[],
  lineEnd: number,
): number | null {
  WORD_AT.lastIndex = start
  for (const word of words) {
    const found = WORD_AT.exec(text)?.[1]
    if (found?.toLowerCase() !== word || WORD_AT.lastIndex > lineEnd) return null
  }
  return WORD_AT.lastIndex
}
