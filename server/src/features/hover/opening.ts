import { COMMON_PRACTICE, FROM_THE_JOB } from '../../facts/source.ts'
import type { Opening, Room } from '../../job/job.ts'
import { loopText } from '../../report/text/survey.ts'
import type { Doorway } from '../../survey/survey.ts'
import { printLength } from '../../units/print.ts'
import { lineKey } from '../names/job-index.ts'
import { textAt } from '../place/text-at.ts'
import type { Asked } from './asked.ts'
import { type HoverPart, type Step, source, step, steps, text, textIf, title } from './parts.ts'
import { placeWords, wallOf } from './place-words.ts'

/** An opening: its clear width as both rooms read it, how thick the wall is, what becomes of its jambs. */
export function openingParts(asked: Asked, room: Room, opening: Opening): readonly HoverPart[] {
  const { index } = asked
  const doorway = index.doorways.get(lineKey(opening.span))
  return [
    title(`${opening.label}, in ${wallOf(room, opening.place)}`),
    ...textIf(opening.place === null, 'It has no place on its wall yet.'),
    ...(doorway === undefined ? [] : clearWidth(asked, doorway)),
    ...steps(sidesOf(asked, room, opening, doorway)),
    ...(doorway === undefined ? [] : loopParts(asked, doorway)),
    ...thicknessParts(asked, opening),
    ...(doorway?.jambs ? jambParts(asked) : []),
    ...textIf(opening.trim !== null, `Covered by ${opening.trim}.`),
  ]
}

function clearWidth({ units }: Asked, { width, other, toText }: Doorway): readonly HoverPart[] {
  const read = other === null ? '' : ' Both rooms read it; the room written first is drawn from.'
  const beyond = toText === '' ? '' : ` It leads to ${toText}.`
  return [text(`Clear width ${printLength(width, units)}.${beyond}${read}`)]
}

/** How the loop of rooms that comes round in it closes. */
function loopParts({ view, units }: Asked, { opening, other }: Doorway): readonly HoverPart[] {
  const lines = [opening, other].flatMap((one) => (one === null ? [] : [lineKey(one.span)]))
  return view.measured.survey.loops
    .filter(({ span }) => lines.includes(lineKey(span)))
    .map((loop) => text(loopText(loop, units)))
}

/** The line of each room that tells it. */
function sidesOf(
  { index }: Asked,
  room: Room,
  opening: Opening,
  doorway: Doorway | undefined,
): readonly Step[] {
  if (doorway === undefined || doorway.other === null) return sideStep(room, opening)
  const [near, far] = [index.rooms.get(doorway.room), index.rooms.get(doorway.to ?? '')]
  return [
    ...(near === undefined ? [] : sideStep(near, doorway.opening)),
    ...(far === undefined ? [] : sideStep(far, doorway.other)),
  ]
}

function sideStep(room: Room, { place, span }: Opening): readonly Step[] {
  return place === null ? [] : [step(`from ${room.name.text}: ${placeWords(room, place)}`, span)]
}

function thicknessParts(
  { view, units }: Asked,
  { thickness, kind }: Opening,
): readonly HoverPart[] {
  if (kind === 'open side') return []
  if (thickness === null) return [text('How thick the wall is here is not said yet.')]
  const { value, span } = thickness
  return [
    text(`The wall is ${printLength(value, units)} thick here.`),
    ...(span === null ? [] : steps([step(textAt(view.measured, span), span)])),
  ]
}

function jambParts({ view, units }: Asked): readonly HoverPart[] {
  const { jambsUnder } = view.measured.job
  return [
    text(
      `Its jambs are undercut: the floor runs ${printLength(jambsUnder.value, units)} under each.`,
    ),
    source(jambsUnder.span === null ? COMMON_PRACTICE : FROM_THE_JOB),
  ]
}
