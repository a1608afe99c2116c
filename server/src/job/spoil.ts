import { message } from '../facts/message.ts'
import type { Entry } from '../language/tree.ts'
import { compare, ratio } from '../units/ratio.ts'
import type { Binding } from './binding.ts'
import { LEAST_SPOIL } from './defaults.ts'
import type { Spoil } from './job.ts'
import { numberIn, phrase } from './phrases.ts'
import { counted } from './sentence.ts'
import { countOf } from './settings.ts'

/** What will be spoiled, as the `spoil` line says it; the count is never below the least. */
export function spoilOf(line: Entry | undefined, binding: Binding): Spoil {
  if (line === undefined) return { planks: LEAST_SPOIL.value, percent: null, span: null }
  const planks = countOf(line, 'COUNT planks', binding)
  return {
    planks: planks === null ? null : atLeast(line, planks, binding),
    percent: percentOf(line, binding),
    span: line.line.span,
  }
}

function atLeast(line: Entry, planks: number, binding: Binding): number {
  if (planks >= LEAST_SPOIL.value) return planks
  const text = `${counted(planks, 'plank')} of spoil is taken as ${LEAST_SPOIL.value}: hardly a floor is laid with less (common practice).`
  binding.say(message('note', 'spoil-raised', line.line.span, text))
  return LEAST_SPOIL.value
}

function percentOf(line: Entry, binding: Binding): Spoil['percent'] {
  const said = phrase(line, 'PERCENT')
  const percent = numberIn(said?.measures[0])
  if (said === null || percent === null) return null
  if (compare(percent, ratio(100)) <= 0) return percent
  const text = `Spoil of ${said.measures[0]!.figure.text} is more than the floor itself. Write 100% at most.`
  binding.say(message('error', 'percent-too-high', said.span, text))
  return null
}

/** What `spoilOf` takes without being told, in words. */
export function spoilAssumed(spoil: Spoil): readonly string[] {
  return spoil.span === null ? [`${counted(LEAST_SPOIL.value, 'plank')} of spoil`] : []
}
