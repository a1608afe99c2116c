import type { Room } from '../../job/job.ts'
import type { NameWanted } from '../../language/forms.ts'
import { keyOf } from '../../language/name.ts'
import { type JobIndex, jobIndex } from '../names/job-index.ts'
import { roomOfBlock } from '../names/meaning.ts'
import type { View } from '../view.ts'
import { accepting } from './accept-choices.ts'
import type { NameChoice, NamePlace } from './name-choice.ts'
import { roomsBeyond, roomsForFloor, roomsToCome, roomsToLay } from './room-choices.ts'
import { cornersOf, wallsOf } from './wall-choices.ts'

/** The names of this job that may stand at a place, likeliest first. Empty where any name may be given. */
export function nameChoices(wanted: NameWanted, place: NamePlace): readonly NameChoice[] {
  const index = jobIndex(place.view.measured)
  const room = roomOfBlock(index, place.block)
  switch (wanted) {
    case 'ROOM':
      return place.block.word === 'floor'
        ? roomsForFloor(index, place)
        : roomsBeyond(index, room, place)
    case 'WALL':
      return room === undefined ? [] : wallsOf(room, place)
    case 'CORNER':
      return room === undefined ? [] : cornersOf(room)
    case 'PRODUCT':
      return productsOf(index)
    case 'TRIM':
      return trimsOf(place.view)
    case 'NAME':
      return plainNames(index, room, place)
  }
}

/** Names on lines that take one, or a list of them. */
function plainNames(
  index: JobIndex,
  room: Room | undefined,
  place: NamePlace,
): readonly NameChoice[] {
  switch (place.word) {
    case 'rooms':
      return roomsToLay(index, place)
    case 'room':
      return roomsToCome(index)
    case 'square':
      return room === undefined ? [] : cornersOf(room)
    case 'accept':
      return place.form === 'NAME' ? accepting(place.view, place.block, place.said) : []
    case 'edge':
    case 'break':
      return place.form === 'called NAME' ? doorwayNames(index) : []
    default:
      return []
  }
}

function productsOf({ blocks }: JobIndex): readonly NameChoice[] {
  return [...(blocks.get('product')?.values() ?? [])].flatMap(({ name }) =>
    name === null ? [] : [{ name: name.text, kind: 'product', detail: 'A product of this job.' }],
  )
}

/** The trim that this job names so far. */
function trimsOf({ measured: { job } }: View): readonly NameChoice[] {
  const trims = [
    ...job.floors.flatMap(({ breaks, edges }) => [...breaks, ...edges].map(({ trim }) => trim)),
    ...job.rooms.flatMap(({ openings }) => openings.map(({ trim }) => trim)),
  ].filter((trim) => trim !== null)
  return [...new Map(trims.map((trim) => [keyOf(trim), trim])).values()].map((name) => ({
    name,
    kind: 'trim',
    detail: 'Trim that this job uses.',
  }))
}

function doorwayNames({ rooms }: JobIndex): readonly NameChoice[] {
  const names = [...rooms.values()].flatMap(({ openings }) =>
    openings.flatMap(({ name }) => (name === null ? [] : [name])),
  )
  const detail = 'The name of an opening.'
  return [...new Map(names.map(({ key, text }) => [key, text])).values()].map((name) => ({
    name,
    kind: 'opening',
    detail,
  }))
}
