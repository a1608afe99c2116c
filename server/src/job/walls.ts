import type { Entry } from '../language/tree.ts'
import { EDGE_KINDS } from '../language/words.ts'
import { ZERO } from '../units/ratio.ts'
import type { Binding } from './binding.ts'
import { headingOf } from './heading.ts'
import type { EdgeKind, EdgeSaid, Part, Reading, Wall } from './job.ts'
import { choiceOf, lengthIn, measureOf, nameOf, phrase } from './phrases.ts'
import { mainReading, readingOf } from './reading.ts'
import { sizeAllowed } from './sizes.ts'
import type { Tape } from './worth.ts'

/** One wall from its line. A line that could not be read keeps its place, with no reading. */
export function wallOf(line: Entry, index: number, tape: Tape, binding: Binding): Wall {
  const heading = headingOf(line, binding)
  const reading = mainReading(line, tape)
  const measure = measureOf(line, 'LENGTH')
  if (measure !== null) sizeAllowed(measure, 'wall', binding)
  const name = nameOf(line, 'called NAME')
  return {
    index,
    label: name?.text ?? line.word,
    name,
    // Straight on is only a place-holder: a wall of unknown heading has no reading that could be used.
    heading: heading ?? { kind: 'turn', degreesRight: ZERO },
    reading: heading === null ? { ...reading, nm: null } : reading,
    bow: bowOf(line),
    openTo: nameOf(line, 'open to ROOM'),
    stair: choiceOf(line, 'stair up|down') as Wall['stair'],
    parts: partsOf(line, tape),
    edge: edgeSaid(line),
    span: line.line.span,
    broken: line.broken,
  }
}

/** The sum of readings, or null while one of them is to be taken. */
export function total(readings: readonly Reading[]): number | null {
  let sum = 0
  for (const reading of readings) {
    if (reading.nm === null) return null
    sum += reading.nm
  }
  return sum
}

function partsOf(line: Entry, tape: Tape): readonly Part[] {
  return line.under
    .filter((entry) => entry.word === 'parts')
    .flatMap((entry) => entry.phrases)
    .flatMap((said) => {
      const measure = said.measures[0]
      if (measure === undefined) return []
      const of = said.form === 'LENGTH' ? null : (said.form.replace(' LENGTH', '') as Part['of'])
      return [{ reading: readingOf(measure, tape), of }]
    })
}

function bowOf(line: Entry): Wall['bow'] {
  const said = phrase(line, 'LENGTH bow in|out') ?? phrase(line, 'LENGTH bow')
  const rise = lengthIn(said?.measures[0])
  if (said === null || rise === null) return null
  return { rise: said.choices[0] === 'in' ? -rise + 0 : rise, span: said.span }
}

function edgeSaid(line: Entry): EdgeSaid {
  const kind = phrase(line, EDGE_KINDS)
  const gap = phrase(line, 'LENGTH gap')
  return {
    kind: (kind?.choices[0] ?? null) as EdgeKind | null,
    gap: lengthIn(gap?.measures[0]),
    trim: null,
    span: kind?.span ?? gap?.span ?? null,
  }
}
