import { COMMON_PRACTICE, FROM_THE_JOB } from '../../facts/source.ts'
import type { Reading } from '../../job/job.ts'
import { phrase } from '../../job/phrases.ts'
import type { Block, Entry, Measure, Phrase } from '../../language/tree.ts'
import type { Measured } from '../../report/compiled.ts'
import { lengthFrom } from '../../survey/reading.ts'
import { jobIndex } from '../names/job-index.ts'
import { textAt } from '../place/text-at.ts'
import { fineLength } from './how-read.ts'
import { type HoverPart, type Step, source, step, steps, text } from './parts.ts'

/** What a reading is worth, which line says so, and what it comes to with those taken again. */
export function worthParts(
  measured: Measured,
  block: Block,
  measure: Measure,
  reading: Reading,
): readonly HoverPart[] {
  const { units } = measured.job
  const said = worthSaid(measured, block, measure)
  const worth = fineLength(reading.sigma, units)
  const from = said === null ? [source(COMMON_PRACTICE)] : [source(FROM_THE_JOB)]
  const why: readonly Step[] = said === null ? [] : [step(said.words, said.span)]
  return [
    text(
      `Worth ${worth} (one standard deviation)${said === null ? ', for no line says otherwise' : ''}.`,
    ),
    ...steps(why),
    ...from,
  ]
}

/** A reading and those taken again, and their mean; nothing for one that was taken once. */
export function repeatParts(measured: Measured, reading: Reading): readonly HoverPart[] {
  const taken = [reading, ...reading.again].filter(({ nm }) => nm !== null)
  const mean = lengthFrom(reading)
  if (taken.length < 2 || mean === null) return []
  const { units } = measured.job
  return [
    text(
      `Taken ${taken.length} times: the mean ${fineLength(mean.nm, units)} counts, worth ${fineLength(mean.sigma, units)}.`,
    ),
    ...steps(
      taken.map(({ text: read, sigma, span }) =>
        step(`${read}, worth ${fineLength(sigma, units)}`, span),
      ),
    ),
    { kind: 'formula', text: 'mean weighted by 1 ÷ σ²; its σ = √(1 ÷ Σ 1 ÷ σ²)' },
  ]
}

interface Said {
  readonly words: string
  readonly span: Phrase['span']
}

/** The words that give a reading its worth: its own, else the nearest tape line that speaks of it. */
function worthSaid(measured: Measured, block: Block, measure: Measure): Said | null {
  if (measure.within !== null) return { words: 'its own "within"', span: measure.span }
  const forms = measure.about ? ['about LENGTH'] : ['LENGTH + LENGTH per LENGTH', 'LENGTH']
  for (const line of tapeLines(measured, block)) {
    const found = forms.map((form) => phrase(line, form)).find((one) => one !== null)
    if (found !== undefined)
      return { words: `tape ${textAt(measured, found.span)}`, span: found.span }
  }
  return null
}

/** The tape lines in force, the nearest first: the room's, its file's, the job's. */
function tapeLines(measured: Measured, block: Block): readonly Entry[] {
  const { fileLines } = jobIndex(measured)
  const ofFile = (file: string) => fileLines.get(file)?.get('tape')
  const own = block.under.find(({ word, broken }) => word === 'tape' && !broken)
  return [own, ofFile(block.line.span.file), ofFile(measured.root)].filter(
    (line) => line !== undefined,
  )
}
