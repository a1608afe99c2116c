import { message } from '../facts/message.ts'
import type { Entry, Phrase } from '../language/tree.ts'
import { NM_PER_INCH, type Nm } from '../units/length.ts'
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
  const along = saidFor(line, 'along', binding)
  const across = saidFor(line, 'across', binding)
  return {
    along: along ?? { value: usual.value.along, span: null },
    across: across ?? { value: usual.value.across, span: null },
    assumed: along !== null && across !== null ? null : assumption(usual.value, way, binding),
  }
}

/** No saw takes as much; a common blade takes an eighth of it (common practice, no source). */
const WIDEST_KERF = NM_PER_INCH

function saidFor(line: Entry | undefined, way: keyof Kerfs, binding: Binding): Given<Nm> | null {
  if (line === undefined) return null
  const said = phrase(line, `LENGTH kerf ${way}`) ?? phrase(line, 'LENGTH kerf')
  const value = lengthIn(said?.measures[0])
  if (said === null || value === null) return null
  if (value > WIDEST_KERF) sayUnlikely(said, value, binding)
  return { value, span: said.span }
}

function sayUnlikely(said: Phrase, value: Nm, binding: Binding): void {
  const usual = binding.length(NM_PER_INCH / 8)
  const text = `No cut takes ${binding.length(value)}: the kerf is what the blade itself takes away, ${usual} of a saw. What is kept to spare is said so: ${binding.length(NM_PER_INCH / 4)} to spare.`
  binding.sayOnce(`kerf ${said.span.file} ${said.span.start}`, said.span, () =>
    message('error', 'kerf-unlikely', said.span, text),
  )
}

function assumption(kerfs: Kerfs, way: string | null, binding: Binding): string {
  const { along, across } = kerfs
  const takes =
    along === across
      ? `${binding.length(along)} for a cut`
      : `${binding.length(along)} for a rip and ${binding.length(across)} for a cross cut`
  return way === null ? `${takes} by a saw` : `${takes} by ${way}`
}
