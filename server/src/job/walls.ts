import type { Block, Entry } from '../language/tree.ts'
import { EDGE_KINDS } from '../language/words.ts'
import { ZERO } from '../units/ratio.ts'
import type { Binding } from './binding.ts'
import { headingOf } from './heading.ts'
import type { EdgeKind, EdgeSaid, Part, Reading, Wall } from './job.ts'
import { choiceOf, lengthIn, measureOf, nameOf, phrase } from './phrases.ts'
import { composed, mainReading, readingOf } from './reading.ts'
import { sizeAllowed } from './sizes.ts'
import { isWallWord } from './ways.ts'
import type { Tape } from './worth.ts'

/** The wall lines of a room block, in written order. */
export function wallLines(block: Block): readonly Entry[] {
  return block.under.filter((entry) => isWallWord(entry.word))
}

/** One wall from its line. A line that could not be read keeps its place, with no reading. */
export function wallOf(line: Entry, index: number, tape: Tape, binding: Binding): Wall {
  const heading = headingOf(line, binding)
  const parts = partsOf(line, tape)
  const reading = wallReading(line, parts, tape, binding)
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
    parts,
    edge: edgeSaid(line),
    span: line.line.span,
    broken: line.broken,
  }
}

/** A wall read only in parts is as long as they make it. */
function wallReading(line: Entry, parts: readonly Part[], tape: Tape, binding: Binding): Reading {
  const whole = measureOf(line, 'LENGTH')
  if (whole !== null) sizeAllowed(whole, line.word, binding)
  if (whole !== null || parts.length === 0) return mainReading(line, tape)
  const readings = parts.map((part) => part.reading)
  const span = line.under.find((entry) => entry.word === 'parts')?.line.span ?? line.wordSpan
  return composed(total(readings), readings, readings.map((part) => part.text).join(' + '), span)
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
