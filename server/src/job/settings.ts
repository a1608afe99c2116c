import { message } from '../facts/message.ts'
import type { Span } from '../facts/span.ts'
import type { Block, Entry, Phrase, Tree } from '../language/tree.ts'
import { printDecimal } from '../units/decimal.ts'
import type { UnitStyle } from '../units/length.ts'
import { wholeNumber } from '../units/number.ts'
import { compare, ratio } from '../units/ratio.ts'
import type { Binding } from './binding.ts'
import { ALLOWANCE, JAMBS_UNDER, PILE } from './defaults.ts'
import { fileLine } from './file-lines.ts'
import type { Job } from './job.ts'
import { lengthIn, numberIn, phrase } from './phrases.ts'

type Settings = Pick<Job, 'jambsUnder' | 'allowance' | 'pile'>

/**
 * The lines that hold for the whole job: the root's own, else those of the first included file that
 * has them, else the language's own values.
 */
export function settingsOf(trees: readonly Tree[], binding: Binding): Settings {
  const line = (word: string): Block | null =>
    trees.map((tree) => fileLine(tree, word, binding)).find((found) => found !== null) ?? null
  return {
    jambsUnder: jambsUnder(line('jambs')),
    allowance: allowance(line('allowance'), binding),
    pile: pile(line('pile'), binding),
  }
}

/** Says once what is taken for the whole job where no line speaks. */
export function saySettingsTaken(
  { jambsUnder, allowance, pile }: Settings,
  first: Span,
  binding: Binding,
): void {
  const taken = [
    ...(jambsUnder.span === null
      ? [`the floor runs ${binding.length(jambsUnder.value)} under each jamb`]
      : []),
    ...(allowance.span === null
      ? [`an allowance of ${printDecimal(allowance.value, 0)} % to compare with`]
      : []),
    ...(pile.span === null
      ? [`${pile.pieces} offcuts wait at most, for ${pile.courses} courses`]
      : []),
  ]
  if (taken.length === 0) return
  const text = `Not said for this job, so taken from common practice: ${taken.join('; ')}.`
  binding.say(message('note', 'job-defaults', first, text))
}

/** What lengths are printed in: the root's own units line. */
export function unitsOf(root: Tree | undefined): UnitStyle {
  const line = root?.blocks.find((block) => block.word === 'units' && !block.broken)
  const said = line === undefined ? null : phrase(line, 'feet-inches|inches|mm|cm|m')
  return (said?.choices[0] as UnitStyle | undefined) ?? 'feet-inches'
}

function jambsUnder(line: Block | null): Settings['jambsUnder'] {
  const said = line === null ? null : phrase(line, 'LENGTH under')
  const value = lengthIn(said?.measures[0])
  return said === null || value === null
    ? { value: JAMBS_UNDER.value, span: null }
    : { value, span: said.span }
}

function allowance(line: Block | null, binding: Binding): Settings['allowance'] {
  const said = line === null ? null : phrase(line, 'PERCENT')
  const value = numberIn(said?.measures[0])
  if (said === null || value === null) return { value: ALLOWANCE.value, span: null }
  if (compare(value, ratio(100)) <= 0) return { value, span: said.span }
  const text = `An allowance of ${said.measures[0]!.figure.text} is more than the floor itself. Write 100% at most; 10% is usual.`
  binding.say(message('error', 'percent-too-high', said.span, text))
  return { value: ALLOWANCE.value, span: null }
}

function pile(line: Block | null, binding: Binding): Settings['pile'] {
  if (line === null) return { ...PILE.value, span: null }
  return {
    pieces: countOf(line, 'COUNT pieces', binding) ?? PILE.value.pieces,
    courses: countOf(line, 'COUNT courses', binding) ?? PILE.value.courses,
    span: line.line.span,
  }
}

/** More pieces, courses or planks than this are no job. */
const MOST = 1_000_000n

/** The count in the first phrase of a form; null where the line does not say it. */
export function countOf(line: Entry, form: string, binding: Binding): number | null {
  const said = phrase(line, form)
  return said === null ? null : countIn(said, binding)
}

/** The count that a phrase begins with; null while it is asked, or with a message when it is absurd. */
export function countIn(said: Phrase, binding: Binding): number | null {
  const value = numberIn(said.measures[0])
  if (value === null) return null
  if (value.n <= MOST) return wholeNumber(value.n)
  const text = `${said.measures[0]!.figure.text} is more than any job holds. Write ${MOST} at most.`
  binding.say(message('error', 'count-too-high', said.span, text))
  return null
}
