import { message } from '../facts/message.ts'
import { once } from '../facts/once.ts'
import type { Span } from '../facts/span.ts'
import type { Block, Entry, Measure } from '../language/tree.ts'
import type { Binding } from './binding.ts'

/** Asked for where they are needed: a wall's or a base's thickness, and what a product must say. */
const NEEDED = new Set([
  'LENGTH thick',
  'SIZE',
  'LENGTH wide',
  'LENGTH long',
  'LENGTH stagger',
  'LENGTH shortest end',
  'COUNT planks',
  'COUNT of LENGTH',
])

/**
 * Every `?` keeps the totals open, whatever line it stands on. The readings of a room are listed
 * together, and what is needed is asked for where it is missing; this says the rest, such as a shift or
 * a gap that is still to be settled. `said` are the places that messages point at: a line that has one is
 * left to it.
 */
export function sayWhatIsAsked(
  blocks: readonly Block[],
  said: readonly Span[],
  binding: Binding,
): void {
  const places = Map.groupBy(said, ({ file }) => file)
  const isSaid = ({ file, start, end }: Span) =>
    (places.get(file) ?? []).some((place) => place.start >= start && place.start <= end)
  for (const block of blocks)
    for (const { line, measure } of openIn(block))
      if (!isSaid(line.line.span)) sayOpen(block, line, measure, binding)
}

/** A line with a figure that is still open. */
interface Open {
  readonly line: Entry
  readonly measure: Measure
}

/** The open lines of a block. */
const openIn = once((block: Block): readonly Open[] =>
  linesOf(block).flatMap((line) => {
    const measure = openMeasure(block, line)
    return measure === undefined ? [] : [{ line, measure }]
  }),
)

function openMeasure(block: Block, line: Entry): Measure | undefined {
  return line.phrases
    .filter(({ form }) => !NEEDED.has(form) && !(block.word === 'product' && line.word === 'gap'))
    .flatMap(({ measures }) => measures)
    .find(({ figure, doubtful }) => figure.kind === 'asked' || doubtful)
}

function sayOpen(block: Block, line: Entry, { figure, span }: Measure, binding: Binding): void {
  const isAsked = figure.kind === 'asked'
  const code = isAsked ? 'readings-to-take' : 'readings-to-take-again'
  const head = isAsked ? 'Still to be settled' : 'To be settled again'
  const of = block.name === null || line === block ? '' : ` for ${block.name.text}`
  binding.say(message('incomplete', code, span, `${head}${of}: ${line.word}.`))
}

function linesOf(entry: Entry): readonly Entry[] {
  return [entry, ...entry.under.flatMap(linesOf)].filter(({ broken }) => !broken)
}
