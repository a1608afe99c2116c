import type { Entry } from '../language/tree.ts'
import type { Nm } from '../units/length.ts'
import type { Binding } from './binding.ts'
import { KERF_UNSAID, KERFS, type Kerfs } from './defaults.ts'
import type { Given } from './job.ts'
import { choiceOf, lengthIn, phrase } from './phrases.ts'

export interface KerfRead {
  readonly along: Given<Nm>
  readonly across: Given<Nm>
  /** What was taken without being said, in words; null for nothing. */
  readonly assumed: string | null
}

/** What a cut takes: as the `cut` line measures it, else by its way of cutting, else a saw's. */
export function kerfOf(line: Entry | undefined, binding: Binding): KerfRead {
  const way = line === undefined ? null : choiceOf(line, 'saw|score and snap|guillotine|knife')
  const usual = KERFS.get(way ?? '') ?? KERF_UNSAID
  const along = saidFor(line, 'along')
  const across = saidFor(line, 'across')
  return {
    along: along ?? { value: usual.value.along, span: null },
    across: across ?? { value: usual.value.across, span: null },
    assumed: along !== null && across !== null ? null : assumption(usual.value, way, binding),
  }
}

function saidFor(line: Entry | undefined, way: keyof Kerfs): Given<Nm> | null {
  if (line === undefined) return null
  const said = phrase(line, `LENGTH kerf ${way}`) ?? phrase(line, 'LENGTH kerf')
  const value = lengthIn(said?.measures[0])
  return said === null || value === null ? null : { value, span: said.span }
}

function assumption(kerfs: Kerfs, way: string | null, binding: Binding): string {
  const { along, across } = kerfs
  const takes =
    along === across
      ? `${binding.length(along)} for a cut`
      : `${binding.length(along)} for a rip and ${binding.length(across)} for a cross cut`
  return way === null ? `${takes} by a saw` : `${takes} by ${way}`
}
