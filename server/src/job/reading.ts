import type { Span } from '../facts/span.ts'
import type { Entry, Measure } from '../language/tree.ts'
import type { Nm } from '../units/length.ts'
import { roundToNm } from '../units/round.ts'
import type { Plane, Reading } from './job.ts'
import { choiceOf, lengthIn, measureOf } from './phrases.ts'
import { sigmaOf, type Tape, TOUCHING, worthOf } from './worth.ts'

/** The reading of one measure: its own doubts first, then what the tape lines in force say. */
export function readingOf(measure: Measure, tape: Tape, plane: Plane = tape.plane): Reading {
  return lengthReading(measure, lengthIn(measure), tape, plane)
}

/** The two readings of a size, in written order. */
export function readingsOfSize(measure: Measure, tape: Tape): readonly [Reading, Reading] {
  const [first, second] = measure.figure.kind === 'size' ? measure.figure.nm : [null, null]
  return [
    ofSomething(lengthReading(measure, first, tape, tape.plane)),
    ofSomething(lengthReading(measure, second, tape, tape.plane)),
  ]
}

function lengthReading(measure: Measure, nm: Nm | null, tape: Tape, plane: Plane): Reading {
  return {
    nm,
    sigma: sigmaOf(worthOf(measure, tape), nm ?? 0),
    text: measure.figure.text,
    span: measure.span,
    about: measure.about,
    doubtful: measure.doubtful || nm === null,
    plane,
    again: [],
  }
}

/** The reading that a line opens with, with what stands below it as `again`. */
export function mainReading(line: Entry, tape: Tape): Reading {
  const measure = measureOf(line, 'LENGTH')
  const plane = planeSaid(line) ?? tape.plane
  if (measure === null || line.broken) return unread(line.wordSpan, tape)
  const again = line.under
    .filter((entry) => entry.word === 'again' && !entry.broken)
    .map((entry) => ({ measure: measureOf(entry, 'LENGTH'), plane: planeSaid(entry) ?? plane }))
    .flatMap(({ measure, plane }) => (measure === null ? [] : [readingOf(measure, tape, plane)]))
  return { ...ofSomething(readingOf(measure, tape, plane)), again }
}

/** A size of nothing is no reading; whoever asks for a size says so. */
function ofSomething(reading: Reading): Reading {
  return reading.nm !== null && reading.nm <= 0 ? { ...reading, nm: null } : reading
}

/** The reading of a phrase that tells a size ("2' deep"), or null where the line has none. */
export function sizeReading(line: Entry, form: string, tape: Tape): Reading | null {
  const reading = roleReading(line, form, tape)
  return reading === null ? null : ofSomething(reading)
}

/** The reading of a phrase with a role, nothing included, or null where the line has none. */
export function roleReading(line: Entry, form: string, tape: Tape): Reading | null {
  const measure = measureOf(line, form)
  return measure === null ? null : readingOf(measure, tape, planeSaid(line) ?? tape.plane)
}

/** A reading that is still to be taken. */
export function unread(span: Span, tape: Tape): Reading {
  return {
    nm: null,
    sigma: sigmaOf(tape.worth, 0),
    text: '?',
    span,
    about: false,
    doubtful: true,
    plane: tape.plane,
    again: [],
  }
}

/**
 * A length that no tape showed but readings make: its worth is the root of the sum of their squared
 * worths, rounded half to even to whole nanometres.
 */
export function composed(
  nm: Nm | null,
  from: readonly Reading[],
  text: string,
  span: Span,
): Reading {
  const variance = from.reduce((sum, reading) => sum + reading.sigma * reading.sigma, 0)
  return {
    nm,
    sigma: roundToNm(Math.sqrt(variance)),
    text,
    span,
    about: from.some((reading) => reading.about),
    doubtful: from.some((reading) => reading.doubtful),
    plane: from[0]?.plane ?? 'wall',
    again: [],
  }
}

function planeSaid(line: Entry): Plane | null {
  return choiceOf(line, TOUCHING) as Plane | null
}
