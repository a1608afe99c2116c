import type { Recess, Room } from '../../job/job.ts'
import { keyOf } from '../../language/name.ts'
import { measuresOf } from '../../takeoff/amount.ts'
import { closetAreas } from '../../takeoff/areas.ts'
import type { Asked } from './asked.ts'
import { derivationParts, type HoverPart, step, steps, textIf, title } from './parts.ts'
import { placeWords, sizeSteps, wallOf } from './place-words.ts'

/** A closet, alcove or hearth; of a closet its floor area as well. */
export function recessParts(asked: Asked, room: Room, recess: Recess): readonly HoverPart[] {
  const { kind, label, place, deep, inside, leftReturn, rightReturn, span } = recess
  const sizes = sizeSteps([
    ['deep', deep],
    ['inside', inside],
    ['left return', leftReturn],
    ['right return', rightReturn],
  ])
  const head = `${kind === 'closet' ? label : kind}, in ${wallOf(room, place)}`
  return [
    ...(kind === 'closet' ? closetParts(asked, room, recess, head) : [title(head)]),
    ...steps([...(place === null ? [] : [step(placeWords(room, place), span)]), ...sizes]),
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
