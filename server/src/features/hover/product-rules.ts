import { COMMON_PRACTICE, FROM_THE_JOB, sourceInWords } from '../../facts/source.ts'
import type { Span } from '../../facts/span.ts'
import type { Product, ProductRules } from '../../job/job.ts'
import { counted } from '../../job/sentence.ts'
import type { Block } from '../../language/tree.ts'
import { plankStyle } from '../../report/cut-size.ts'
import { printDecimal } from '../../units/decimal.ts'
import type { UnitStyle } from '../../units/length.ts'
import { printLength } from '../../units/print.ts'
import { type Step, step } from './parts.ts'

/** The rules of a product one by one, each with its value and where that comes from. */
export function ruleSteps(
  { rules, spoil }: Product,
  block: Block,
  units: UnitStyle,
): readonly Step[] {
  const length = (nm: number) => printLength(nm, plankStyle(units))
  const { stagger, shortestEnd, narrowestRip, gap, kerfAlong, kerfAcross, toSpare } = rules
  return [
    rule(`stagger ${length(stagger.value)}`, stagger.span),
    rule(`shortest end ${length(shortestEnd.value)}`, shortestEnd.span),
    rule(`narrowest rip ${length(narrowestRip.value)}`, narrowestRip.span),
    rule(`gap at a wall ${length(gap.value)}`, gap.span),
    rule(`kerf of a rip ${length(kerfAlong.value)}`, kerfAlong.span),
    rule(`kerf of a cut across ${length(kerfAcross.value)}`, kerfAcross.span),
    rule(
      `${length(toSpare.value)} to spare on a plank that gives an end and a start`,
      toSpare.span,
    ),
    rule(`laid ${rules.laid}`, lineOf(block, 'laid')),
    rule(doorwaysText(rules.doorways, units), lineOf(block, 'run', 'doorways')),
    ...longestRun(rules, block, units),
    rule(spoilText(spoil), spoil.span),
  ]
}

/** What no line says is common practice. */
function rule(said: string, span: Span | null): Step {
  return step(`${said}  [${sourceInWords(span === null ? COMMON_PRACTICE : FROM_THE_JOB)}]`, span)
}

/** The line of a word, if it says something of `about`. */
function lineOf({ under }: Block, word: string, about = ''): Span | null {
  const line = under.find((entry) => entry.word === word && !entry.broken)
  const says = line?.phrases.some(({ form }) => form.includes(about)) ?? false
  return line !== undefined && says ? line.line.span : null
}

function doorwaysText(doorways: ProductRules['doorways'], units: UnitStyle): string {
  if (doorways === 'through') return 'run through doorways'
  if (doorways === 'break') return 'breaks at doorways'
  return `breaks at doorways under ${printLength(doorways.breakUnder, units)}`
}

function longestRun({ longestRun }: ProductRules, block: Block, units: UnitStyle): readonly Step[] {
  const { along, across } = longestRun
  const said = [
    ...(along === null ? [] : [`${printLength(along, units)} along the planks`]),
    ...(across === null ? [] : [`${printLength(across, units)} across them`]),
  ]
  return said.length === 0
    ? [step('longest run: none said')]
    : [rule(`longest run ${said.join(', ')}`, lineOf(block, 'run'))]
}

function spoilText({ planks, percent }: Product['spoil']): string {
  const said = [
    ...(planks === null ? [] : [counted(planks, 'plank')]),
    ...(percent === null ? [] : [`${printDecimal(percent, 0)} %`]),
  ]
  return `spoil ${said.join(' and ')}`
}
