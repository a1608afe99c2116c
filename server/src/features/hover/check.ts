import type { Check, Room } from '../../job/job.ts'
import { checkWords } from '../../survey/check-messages.ts'
import { wallWords } from '../../survey/labels.ts'
import type { CheckResult, SurveyedRoom } from '../../survey/survey.ts'
import type { Nm, UnitStyle } from '../../units/length.ts'
import { printLength } from '../../units/print.ts'
import { wallsMade } from '../figures/wall-made.ts'
import type { Asked } from './asked.ts'
import { formula, type HoverPart, sentence, step, steps, stepsFor, text, title } from './parts.ts'

/** A diagonal, width, tie or tested corner: what was read, what the shape makes it, and what is allowed. */
export function checkParts(asked: Asked, room: Room, check: Check): readonly HoverPart[] {
  const words = sentence(checkWords(room, check)).slice(0, -1)
  const read = 'reading' in check ? `: ${check.reading.text}` : ''
  const surveyed = asked.index.surveyed.get(room.name.key)
  const result = surveyed?.checks.find((one) => one.check.span.start === check.span.start)
  return [
    title(`${words}${read}`),
    ...(surveyed === undefined || result === undefined
      ? [text(`There is nothing to hold it against: ${room.name.text} has no shape yet.`)]
      : resultParts(asked, surveyed, result)),
  ]
}

function resultParts(
  { units }: Asked,
  surveyed: SurveyedRoom,
  { check, computed, difference, allowed, fixes }: CheckResult,
): readonly HoverPart[] {
  const by = check.kind === 'room tie' ? 'rooms' : 'walls'
  const [made, limit] = [computed, allowed].map((nm) => printLength(nm, units))
  const verdict =
    Math.abs(difference) <= allowed ? `${limit} is allowed` : `more than the ${limit} allowed`
  if (check.kind === 'square') {
    return [
      text(`The readings put the end of its shorter wall ${made} out of square; ${verdict}.`),
      formula('allowed = shorter wall × 2σ × 5 ÷ (12 × the unit of the largest 3-4-5 that fits)'),
    ]
  }
  if (fixes) {
    return [
      text(`It helps to fix the shape, which makes it ${made}: so it checks nothing.`),
      ...madeOf(surveyed, units),
    ]
  }
  return [
    text(`The ${by} make it ${made}. ${readingText(difference, units)}; ${verdict}.`),
    formula('allowed = 2·√Σσ², over the reading and the way between its ends along the walls'),
    ...(check.kind === 'room tie' ? [] : madeOf(surveyed, units)),
  ]
}

function readingText(difference: Nm, units: UnitStyle): string {
  const off = printLength(Math.abs(difference), units)
  if (!/[1-9]/.test(off)) return 'The reading agrees'
  return `The reading is ${off} ${difference < 0 ? 'shorter' : 'longer'}`
}

/** The walls that make the shape, each with its reading. */
function madeOf(surveyed: SurveyedRoom, units: UnitStyle): readonly HoverPart[] {
  const made = wallsMade(surveyed)
  return steps(
    stepsFor(made.length === 0 ? [] : surveyed.room.walls, ({ index, reading }) => {
      const closed = printLength(made[index]!.closed, units)
      const wall = wallWords(surveyed.room, index)
      return step(`${wall}: ${reading.text}, in the shape ${closed}`, reading.span)
    }),
  )
}
