import type { Entry } from '../language/tree.ts'
import type { Nm } from '../units/length.ts'
import type { Binding } from './binding.ts'
import { NARROWEST_RIP, TO_SPARE } from './defaults.ts'
import type { Given, ProductRules } from './job.ts'
import { type KerfRead, kerfOf } from './kerf.ts'
import { choiceOf, lengthIn, phrase } from './phrases.ts'

/** The lines of a product by their first words. */
export type ProductLines = ReadonlyMap<string, Entry>

/** A fact that only the product can tell: asked for, never assumed. */
export interface Wanted {
  /** The line that gives it. */
  readonly word: string
  readonly what: string
  /** How it is written. */
  readonly write: string
}

const STAGGER: Wanted = { word: 'joints', what: 'the stagger', write: '8" stagger' }
const SHORTEST: Wanted = { word: 'joints', what: 'the shortest end', write: '10" shortest end' }
const GAP: Wanted = { word: 'gap', what: 'the gap at a wall', write: '1/4"' }

const LAID = 'left to right|right to left|either way'

/** The rules of a product as its lines give them; null stands for what they do not say. */
export interface RulesSaid {
  readonly stagger: Given<Nm> | null
  readonly shortestEnd: Given<Nm> | null
  readonly gap: Given<Nm> | null
  readonly narrowestRip: Given<Nm> | null
  readonly toSpare: Given<Nm> | null
  readonly kerf: KerfRead
  readonly longestRun: ProductRules['longestRun']
  readonly doorways: ProductRules['doorways'] | null
  readonly laid: ProductRules['laid'] | null
}

/** Reads the rules of a product: `joints`, `gap`, `run`, `laid` and `cut`. */
export function rulesSaid(lines: ProductLines, binding: Binding): RulesSaid {
  const [joints, run, cut] = [lines.get('joints'), lines.get('run'), lines.get('cut')]
  const laid = lines.get('laid')
  return {
    stagger: given(joints, 'LENGTH stagger'),
    shortestEnd: given(joints, 'LENGTH shortest end'),
    gap: given(lines.get('gap'), 'LENGTH'),
    narrowestRip: given(joints, 'LENGTH narrowest rip'),
    toSpare: given(cut, 'LENGTH to spare'),
    kerf: kerfOf(cut, binding),
    longestRun: {
      along: given(run, 'LENGTH long')?.value ?? null,
      across: given(run, 'LENGTH wide')?.value ?? null,
    },
    doorways: doorwaysSaid(run),
    laid: laid === undefined ? null : (choiceOf(laid, LAID) as RulesSaid['laid']),
  }
}

/** What nobody may assume and the lines do not say. */
export function rulesWanted(said: RulesSaid): readonly Wanted[] {
  const { stagger, shortestEnd, gap } = said
  return [
    ...(stagger === null ? [STAGGER] : []),
    ...(shortestEnd === null ? [SHORTEST] : []),
    ...(gap === null ? [GAP] : []),
  ]
}

/** The rules with the usual values where the lines are silent; null while a wanted one is missing. */
export function rulesOf(said: RulesSaid): ProductRules | null {
  const { stagger, shortestEnd, gap } = said
  if (stagger === null || shortestEnd === null || gap === null) return null
  return {
    stagger,
    shortestEnd,
    gap,
    narrowestRip: said.narrowestRip ?? { value: NARROWEST_RIP.value, span: null },
    longestRun: said.longestRun,
    doorways: said.doorways ?? 'through',
    laid: said.laid ?? 'left to right',
    kerfAlong: said.kerf.along,
    kerfAcross: said.kerf.across,
    toSpare: said.toSpare ?? { value: TO_SPARE.value, span: null },
  }
}

/** What `rulesOf` takes without being told, in words. */
export function rulesAssumed(said: RulesSaid, binding: Binding): readonly string[] {
  const [rip, spare] = [binding.length(NARROWEST_RIP.value), binding.length(TO_SPARE.value)]
  return [
    ...(said.narrowestRip === null ? [`no rip narrower than ${rip}`] : []),
    ...(said.kerf.assumed === null ? [] : [said.kerf.assumed]),
    ...(said.toSpare === null
      ? [`${spare} to spare on a plank that gives an end and a start`]
      : []),
    ...(said.laid === null ? ['laid left to right'] : []),
    ...(said.doorways === null ? ['run through doorways'] : []),
  ]
}

function given(line: Entry | undefined, form: string): Given<Nm> | null {
  const said = line === undefined ? null : phrase(line, form)
  const value = lengthIn(said?.measures[0])
  return said === null || value === null ? null : { value, span: said.span }
}

function doorwaysSaid(line: Entry | undefined): RulesSaid['doorways'] {
  if (line === undefined) return null
  const under = given(line, 'breaks at doorways under LENGTH')
  if (under !== null) return { breakUnder: under.value }
  if (phrase(line, 'breaks at doorways') !== null) return 'break'
  return phrase(line, 'through doorways') === null ? null : 'through'
}
