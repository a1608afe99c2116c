import { COMMON_PRACTICE, FROM_THE_JOB } from '../../facts/source.ts'
import type { Obstacle, OnWall, Opening, Reading, Recess, Room } from '../../job/job.ts'
import { keyOf } from '../../language/name.ts'
import { loopText } from '../../report/text/survey.ts'
import { cornerWords, wallWords } from '../../survey/labels.ts'
import type { Doorway } from '../../survey/survey.ts'
import { measuresOf } from '../../takeoff/amount.ts'
import { closetAreas } from '../../takeoff/areas.ts'
import { printLength } from '../../units/print.ts'
import { lineKey } from '../job-index.ts'
import { textAt } from '../text-at.ts'
import type { Asked } from './asked.ts'
import {
  derivationParts,
  type HoverPart,
  type Step,
  source,
  step,
  steps,
  text,
  textIf,
  title,
} from './parts.ts'

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

function wallOf(room: Room, place: OnWall | null): string {
  return place === null ? room.name.text : `${wallWords(room, place.wall)} of ${room.name.text}`
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

/** "30" wide, 14" from left of north". */
function placeWords(room: Room, { width, distance, far, from, wall }: OnWall): string {
  const ends = far === null ? distance.text : `${distance.text} and ${far.text}`
  return `${width.text} wide, ${ends} from ${from} of ${wallWords(room, wall)}`
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

/** A closet, alcove or hearth; of a closet its floor area as well. */
export function recessParts(asked: Asked, room: Room, recess: Recess): readonly HoverPart[] {
  const { kind, label, place, deep, inside, leftReturn, rightReturn, span } = recess
  const sizes: readonly (readonly [string, Reading | null])[] = [
    ['deep', deep],
    ['inside', inside],
    ['left return', leftReturn],
    ['right return', rightReturn],
  ]
  const head = `${kind === 'closet' ? label : kind}, in ${wallOf(room, place)}`
  const read = sizes.flatMap(([what, reading]) =>
    reading === null ? [] : [step(`${reading.text} ${what}`, reading.span)],
  )
  return [
    ...(kind === 'closet' ? closetParts(asked, room, recess, head) : [title(head)]),
    ...steps([...(place === null ? [] : [step(placeWords(room, place), span)]), ...read]),
  ]
}

function closetParts(
  { index, units }: Asked,
  room: Room,
  recess: Recess,
  head: string,
): readonly HoverPart[] {
  const surveyed = index.surveyed.get(room.name.key)
  const areas = surveyed === undefined ? [] : closetAreas(surveyed, measuresOf(units))
  const area = areas.find(({ room: name }) => name === recess.label)
  const floor = index.laidIn.get(keyOf(recess.label))
  return [
    ...(area === undefined ? [title(head)] : derivationParts({ ...area.derivation, inputs: [] })),
    ...textIf(area !== undefined, `${head}.`),
    ...textIf(floor !== undefined, `Laid in floor ${floor?.name.text}.`),
  ]
}

/** A column, island, stairwell or vent: its size and its place. */
export function obstacleParts(room: Room, obstacle: Obstacle): readonly HoverPart[] {
  const { kind, label, round, eastWest, northSouth, from } = obstacle
  const sizes: readonly (readonly [string, Reading | null])[] = [
    ['round', round],
    ['east-west', eastWest],
    ['north-south', northSouth],
  ]
  return [
    title(`${label === kind ? kind : `${kind}, ${label}`} in ${room.name.text}`),
    ...steps([
      ...sizes.flatMap(([what, reading]) =>
        reading === null ? [] : [step(`${reading.text} ${what}`, reading.span)],
      ),
      ...from.map(({ wall, distance }) =>
        step(`${distance.text} from ${wallWords(room, wall)}`, distance.span),
      ),
    ]),
    text('The floor goes round it.'),
  ]
}

/** A corner: the walls that meet in it. */
export function cornerParts(room: Room, corner: number): readonly HoverPart[] {
  const [before, after] = [room.walls.at(corner - 1), room.walls[corner]]
  const ends = [before, after].flatMap((wall) =>
    wall === undefined
      ? []
      : [step(`${wallWords(room, wall.index)}: ${wall.reading.text}`, wall.reading.span)],
  )
  return [
    title(`corner ${cornerWords(room, corner)} of ${room.name.text}`),
    text('Where these two walls meet:'),
    ...steps(ends),
  ]
}
