import type { Anchor } from '../facts/live-span.ts'
import type { TapeOptions } from '../units/tape.ts'
import { ONCE } from './file-lines.ts'
import { type RawLine, splitLines } from './lines.ts'
import { readLines } from './parse.ts'
import type { Tree } from './tree.ts'
import { tapeOptionsOf } from './units-line.ts'
import { wordIn } from './vocabulary.ts'

/** A part of a file's text that is read by itself: from a line that opens a block to the next such line. */
export interface Cut {
  readonly text: string
  /** Where it begins, it is cut in any file; else only because nothing stands above it. */
  readonly opens: boolean
  /** The file ends with it. */
  readonly isLast: boolean
}

/** A part that was read, its spans moving with it. */
export interface Stretch extends Cut, Pick<Tree, 'lines' | 'blocks' | 'messages'> {
  readonly anchor: Anchor
  /** How lengths were read in it. */
  readonly tape: TapeOptions
  /** What its own units line says of that; null where it has none. */
  readonly units: TapeOptions | null
  /** Nothing in it bears on the reading of the rest of the file. */
  readonly isApart: boolean
  /** The lines in it that a file has once. */
  readonly once: readonly string[]
}

/** Cuts a text that begins where a stretch may begin, and ends where one may or with the file. */
export function cutsOf(text: string, isEnd: boolean): readonly Cut[] {
  if (text === '' && !isEnd) return []
  const lines = splitLines(text)
  const starts = lines.flatMap((line, i) => (i > 0 && opensBlock(line) ? [line.start] : []))
  const bounds = [0, ...starts, text.length]
  const last = bounds.length - 2
  return bounds.slice(1).map((end, i) => ({
    text: copied(text, bounds[i]!, end),
    opens: i > 0 || opensBlock(lines[0]!),
    isLast: isEnd && i === last,
  }))
}

/** Whatever stands above such a line, it opens a block. */
function opensBlock({ indent, head }: RawLine): boolean {
  return indent === 0 && head !== null && wordIn('file', head.word) !== null
}

/** A copy of its own: a slice would keep the whole text of its version in memory. */
function copied(text: string, from: number, to: number): string {
  return ` ${text.slice(from, to)}`.slice(1)
}

/** What the first units line of a part says, wherever it stands in it; null for none. */
export function unitsOf(file: string, text: string): TapeOptions | null {
  if (!/units/i.test(text)) return null
  const lines = linesOf({ text, isLast: true })
  return lines.some(({ head }) => head?.word === 'units') ? tapeOptionsOf(file, text, lines) : null
}

/** A part that does not end its file ends where the next line begins. */
function linesOf({ text, isLast }: Pick<Cut, 'text' | 'isLast'>): readonly RawLine[] {
  const lines = splitLines(text)
  return isLast ? lines : lines.slice(0, -1)
}

/** The marks of a merge reach from one block into others; a byte order mark counts by where it stands. */
const BEYOND = /^[<=>|]{7}|\ufeff/m

/** Reads one part of a file. */
export function readStretch(file: string, cut: Cut, tape: TapeOptions): Stretch {
  const anchor: Anchor = { file, at: 0, line: 1 }
  const read = readLines({ file, text: cut.text, tape, anchor }, linesOf(cut))
  return {
    ...cut,
    ...read,
    anchor,
    tape,
    units: unitsOf(file, cut.text),
    isApart: !BEYOND.test(cut.text),
    once: read.blocks.flatMap(({ word }) => (ONCE.includes(word) ? [word] : [])),
  }
}
