import type { UnitStyle } from '../units/length.ts'
import type { BareUnit, TapeOptions } from '../units/tape.ts'
import { readContent } from './content.ts'
import type { RawLine } from './lines.ts'
import { tokenize } from './tokens.ts'
import type { Phrase, Tree } from './tree.ts'
import { wordIn } from './vocabulary.ts'

/** Without a units line: feet and inches, and every number carries its mark. */
export const DEFAULT_TAPE_OPTIONS: TapeOptions = { bare: null, style: 'feet-inches' }

/**
 * What the first units line of a text says, looked up before anything else is read: the order of lines
 * does not matter, and every number hangs on it. What is wrong with the line is said in its turn.
 */
export function tapeOptionsOf(file: string, text: string, lines: readonly RawLine[]): TapeOptions {
  const entered = wordIn('file', 'units')!
  const line = lines.find(({ head }) => head?.word === 'units')
  if (line === undefined) return DEFAULT_TAPE_OPTIONS
  const base = line.head!.end
  const tokens = tokenize(text.slice(base, line.end), 'phrases')
  const muted = {
    file,
    text,
    tape: DEFAULT_TAPE_OPTIONS,
    anchor: null,
    say: () => {},
    isFull: () => true,
  }
  return optionsFrom(readContent(entered, { base, tokens }, muted).phrases)
}

/** The same for a text that is read already. */
export function tapeOptionsIn(tree: Tree): TapeOptions {
  return optionsFrom(tree.blocks.find((block) => block.word === 'units')?.phrases ?? [])
}

function optionsFrom(phrases: readonly Phrase[]): TapeOptions {
  const choice = (form: string): string | undefined =>
    phrases.find((phrase) => phrase.form === form)?.choices[0]
  const style = choice('feet-inches|inches|mm|cm|m') as UnitStyle | undefined
  const bare = choice('bare inches|mm|cm|m') as BareUnit | undefined
  return { style: style ?? DEFAULT_TAPE_OPTIONS.style, bare: bare ?? null }
}
