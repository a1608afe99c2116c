import type { Message } from '../../facts/message.ts'
import type { Block, Line } from '../../language/tree.ts'
import { tapeOptionsIn } from '../../language/units-line.ts'
import { type Entered, wordIn } from '../../language/vocabulary.ts'
import type { Home } from '../../language/word.ts'
import type { TapeOptions } from '../../units/tape.ts'
import type { View } from '../view.ts'
import { blockAt } from './entries.ts'
import { lineAt } from './line-at.ts'
import type { RestOfLine } from './typed-phrase.ts'

/** A line as it is being typed, and the block that it belongs to or would. */
export interface LineScope {
  readonly view: View
  readonly offset: number
  readonly line: Line
  /** The block above it, or that it opens; null at the top of a file. */
  readonly block: Block | null
  /** What lines that block holds. */
  readonly home: Home | null
  /** Its first word as the vocabulary has it; null while that is being typed. */
  readonly entered: Entered | null
  readonly rest: RestOfLine
  /** How the file writes lengths. */
  readonly tape: TapeOptions
  /** What was last said of the job: a line that is being typed may hide it. */
  readonly said: readonly Message[]
}

/** The line at an offset, read anew as far as its first word: what stands behind it may not be whole. */
export function lineScope(view: View, offset: number, said: readonly Message[] = []): LineScope {
  const { tree } = view
  const inside = Math.max(0, Math.min(offset, tree.text.length))
  const line = lineAt(tree, inside)
  const above = blockAt(tree, line.span.start - 1)
  const homeAbove = above === null ? null : homeOf(above)
  const { head } = line
  const entered = head === null ? null : enteredAs(head.word, line, homeAbove)
  const opens = entered !== null && entered.word.home === 'file'
  const own = opens ? blockAt(tree, line.span.start) : above
  const start = head?.span.end ?? line.span.end
  return {
    view,
    offset: inside,
    line,
    block: own,
    home: own === null ? null : homeOf(own),
    entered,
    rest: { start, text: tree.text.slice(start, line.span.end) },
    tape: tapeOptionsIn(tree),
    said,
  }
}

/** What lines a block holds; null for a line of the file alone. */
export function homeOf(block: Block): Home | null {
  return wordIn('file', block.word)?.word.opens ?? null
}

function enteredAs(word: string, line: Line, home: Home | null): Entered | null {
  const inBlock = home === null ? null : wordIn(home, word)
  const inFile = wordIn('file', word)
  return line.indent === 0 ? (inFile ?? inBlock) : (inBlock ?? inFile)
}
