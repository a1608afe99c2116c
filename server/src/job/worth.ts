import { message } from '../facts/message.ts'
import type { Entry, Measure } from '../language/tree.ts'
import { NM_PER_INCH, type Nm } from '../units/length.ts'
import { roundToNm } from '../units/round.ts'
import type { Binding } from './binding.ts'
import type { BaseSaid, Plane, Worth } from './job.ts'
import { choiceOf, lengthIn, measureOf, phrase } from './phrases.ts'

/** The phrase that says what the tape's end touched. */
export const TOUCHING = 'touching base|wall|toe-kick|jamb'

/** What the tape lines in force say: the worth of a reading, of one marked "about", and the plane. */
export interface Tape {
  readonly worth: Worth
  readonly about: Worth
  readonly plane: Plane
  /** False for what no line says: the language's own value stands. */
  readonly says: { readonly worth: boolean; readonly about: boolean; readonly plane: boolean }
}

/**
 * The tape where no line speaks: 1/16 in + 0.01 %, and 1/4 in for a reading marked "about" (an
 * awkward reading is worth 1/8 to 1/4 in), both common practice; its end against the finished wall (see `touchingBase`).
 */
export const DEFAULT_TAPE: Tape = {
  worth: { fixed: NM_PER_INCH / 16, rise: 1, per: 10_000 },
  about: flat(NM_PER_INCH / 4),
  plane: 'wall',
  says: { worth: false, about: false, plane: false },
}

/** The tape in force where a line that cannot be read may say all of it. */
export function saidSomewhere(tape: Tape): Tape {
  return { ...tape, says: { worth: true, about: true, plane: true } }
}

/** The same worth at any length. */
export function flat(fixed: Nm): Worth {
  return { fixed, rise: 0, per: 1 }
}

/** One standard deviation of a reading of this length, rounded half to even to whole nanometres. */
export function sigmaOf(worth: Worth, nm: Nm): Nm {
  return worth.fixed + roundToNm((nm * worth.rise) / worth.per)
}

/** The tape after a `tape` line: what the line does not say stays as it was. */
export function tapeAfter(before: Tape, line: Entry | null, binding: Binding): Tape {
  if (line === null) return before
  const worth = worthSaid(line)
  const about = lengthIn(measureOf(line, 'about LENGTH'))
  const plane = choiceOf(line, TOUCHING) as Plane | null
  if (isNothing(worth?.fixed) || isNothing(about)) {
    binding.say(worthless(line, binding))
    return before
  }
  return {
    worth: worth ?? before.worth,
    about: about === null ? before.about : flat(about),
    plane: plane ?? before.plane,
    says: {
      worth: worth !== null || before.says.worth,
      about: about !== null || before.says.about,
      plane: plane !== null || before.says.plane,
    },
  }
}

/**
 * A base that stays is what a tape meets at the floor, and what the floor runs to: where no line says
 * what was touched, it was that (common practice, no source).
 */
export function touchingBase(tape: Tape, base: BaseSaid | null): Tape {
  return base?.fate === 'kept' && !tape.says.plane ? { ...tape, plane: 'base' } : tape
}

function worthSaid(line: Entry): Worth | null {
  const growing = phrase(line, 'LENGTH + LENGTH per LENGTH')?.measures.map(lengthIn)
  if (growing !== undefined) {
    const [fixed, rise, per] = growing
    return fixed == null || rise == null || !per ? null : { fixed, rise, per }
  }
  const fixed = lengthIn(measureOf(line, 'LENGTH'))
  return fixed === null ? null : flat(fixed)
}

function isNothing(nm: Nm | null | undefined): boolean {
  return nm !== null && nm !== undefined && nm <= 0
}

function worthless(line: Entry, binding: Binding) {
  const text =
    'No reading is exact: its worth is one standard deviation and more than nothing, such as ' +
    binding.samples('1/16".')
  return message('error', 'reading-worth-nothing', line.line.span, text)
}

/** What one measure is worth: its own "within", else "about", else the tape. */
export function worthOf(measure: Measure, tape: Tape): Worth {
  if (measure.within !== null && measure.within > 0) return flat(measure.within)
  return measure.about ? tape.about : tape.worth
}
