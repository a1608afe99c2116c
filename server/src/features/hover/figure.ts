import type { Reading, Room } from '../../job/job.ts'
import type { Measure, Phrase } from '../../language/tree.ts'
import { printLength } from '../../units/print.ts'
import { readingsOf } from '../figures/readings-of.ts'
import type { Thing } from '../names/thing.ts'
import { thingOn } from '../place/line-thing.ts'
import { formSays } from '../words/form-says.ts'
import type { Asked } from './asked.ts'
import { checkParts } from './check.ts'
import { doubts, howRead } from './how-read.ts'
import { openingParts } from './opening.ts'
import { type HoverPart, text, textIf, title } from './parts.ts'
import { ruleMetParts } from './rule-met.ts'
import { shapeParts } from './wall.ts'
import { repeatParts, worthParts } from './worth.ts'

/** A figure: what it says, how it is read, what it is worth, what was touched, what is made of it. */
export function figureParts(
  asked: Asked,
  { form }: Phrase,
  measure: Measure,
): readonly HoverPart[] {
  const { view, entry, units } = asked
  const { start, end } = measure.span
  const says = formSays(entry.word, form)
  const read = howRead(measure.figure, units)
  return [
    title(view.tree.text.slice(start, end)),
    ...(says === null ? [] : [text(says)]),
    ...(read === null ? [] : [text(read)]),
    ...doubts(measure).map(text),
    ...readingParts(asked, measure),
    ...ruleMetParts(asked, form),
  ]
}

/** What is known of a figure that a tape showed. */
function readingParts(asked: Asked, measure: Measure): readonly HoverPart[] {
  const { view, block } = asked
  const thing = toldBy(asked)
  if (thing === null || !('room' in thing)) return []
  const main = readingsOf(thing).find((one) =>
    [one, ...one.again].some((taken) => isOf(taken, measure)),
  )
  if (main === undefined) return []
  const reading = [main, ...main.again].find((taken) => isOf(taken, measure))!
  return [
    ...(reading.nm === null ? [] : worthParts(view.measured, block, measure, reading)),
    ...repeatParts(view.measured, main),
    ...(FIXED_BY_PLANE.includes(thing.kind) ? planeParts(thing.room, reading, asked.units) : []),
    ...madeOf(asked, thing, main),
  ]
}

/** What the tape touched matters where it read a room, not where it read a thing. */
const FIXED_BY_PLANE: readonly Thing['kind'][] = ['wall', 'check']

/** The thing that a line tells, or the one above that it adds a reading to. */
function toldBy({ view, block, path }: Asked): Thing | null {
  for (const entry of path.toReversed()) {
    const thing = entry === block ? null : thingOn(view.measured, block, entry)
    if (thing !== null) return thing
  }
  return null
}

function isOf({ span }: Reading, measure: Measure): boolean {
  return span.start <= measure.span.start && measure.span.end <= span.end
}

/** What the tape touched, and what that means where the base moves. */
function planeParts(
  { base }: Room,
  { plane }: Reading,
  units: Asked['units'],
): readonly HoverPart[] {
  const fate = base?.fate ?? null
  const thick = base?.thickness == null ? 'its thickness' : printLength(base.thickness, units)
  const stays = fate === 'kept'
  const comesOff = fate !== null && !stays
  return [
    text(`The tape touched the ${plane}.`),
    ...textIf(plane === 'base' && stays, 'The base stays, so the floor stops there.'),
    ...textIf(
      plane === 'base' && comesOff,
      `The floor runs to the wall behind it, ${thick} farther.`,
    ),
    ...textIf(plane === 'wall' && stays, `The base stays, so the floor stops ${thick} before it.`),
  ]
}

/** What the shape makes of a wall's or a check's own reading, and what both rooms make of an opening. */
function madeOf(asked: Asked, thing: Thing, main: Reading): readonly HoverPart[] {
  if (main.nm === null) return []
  if (thing.kind === 'wall' && main === thing.wall.reading)
    return shapeParts(asked, thing.room, thing.wall)
  if (thing.kind === 'check') return checkParts(asked, thing.room, thing.check).slice(1)
  if (thing.kind === 'opening') return openingParts(asked, thing.room, thing.opening).slice(1)
  return []
}
