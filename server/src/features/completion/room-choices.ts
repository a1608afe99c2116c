import type { Room } from '../../job/job.ts'
import type { Block, Phrase } from '../../language/tree.ts'
import type { JobIndex } from '../names/job-index.ts'
import { linesNaming } from '../names/lines-naming.ts'
import type { View } from '../view.ts'
import type { NameChoice, NamePlace } from './name-choice.ts'

/** Rooms that an opening may lead to; first those from which one leads here. */
export function roomsBeyond(
  { rooms }: JobIndex,
  own: Room | undefined,
  { form, view }: NamePlace,
): readonly NameChoice[] {
  const due = new Set(own === undefined ? [] : roomsLeadingTo(view, own))
  for (const { to } of own?.openings ?? []) due.delete(to?.key ?? '')
  const outside: NameChoice = { name: 'outside', kind: 'room', detail: 'Out of the house.' }
  const first = [...due].flatMap((key) => rooms.get(key) ?? [])
  const others = [...rooms.values()].filter((room) => room !== own && !due.has(room.name.key))
  return [
    ...first.map((room) => roomChoice(room, `An opening of ${room.name.text} leads here.`)),
    ...others.map((room) => roomChoice(room)),
    ...(form === 'to ROOM' ? [outside] : []),
  ]
}

/** The keys of rooms with a line that leads to a room. */
function roomsLeadingTo({ measured }: View, { name }: Room): readonly string[] {
  return measured.trees
    .flatMap((tree) => linesNaming(tree, name.key))
    .filter(({ entry }) => entry.phrases.some((one) => leadsTo(one, name.key)))
    .flatMap(({ block }) => (block.word === 'room' && block.name !== null ? [block.name.key] : []))
    .filter((key) => key !== name.key)
}

function leadsTo({ form, names }: Phrase, key: string): boolean {
  return (form === 'to ROOM' || form === 'open to ROOM') && names[0]?.key === key
}

function roomChoice(room: Room, detail?: string): NameChoice {
  const said = room.walls.length === 0 ? 'A room that is not measured.' : 'A room of this job.'
  return { name: room.name.text, kind: 'room', detail: detail ?? said }
}

/** Rooms and closets that no floor lists yet, then those of other floors left out. */
export function roomsToLay(
  { rooms, closets, laidIn }: JobIndex,
  { block }: NamePlace,
): readonly NameChoice[] {
  const listed = new Set(roomsListed(block))
  const isFree = (key: string): boolean => !laidIn.has(key) && !listed.has(key)
  return [
    ...[...rooms].flatMap(([key, room]) => (isFree(key) ? [roomChoice(room)] : [])),
    ...[...closets].flatMap(([key, { room, recess }]): readonly NameChoice[] =>
      isFree(key)
        ? [{ name: recess.label, kind: 'closet', detail: `A closet of ${room.name.text}.` }]
        : [],
    ),
  ]
}

/** The keys of the rooms that a floor's block lists. */
export function roomsListed(block: Block): readonly string[] {
  return block.under.flatMap(({ word, phrases }) =>
    word === 'rooms' ? phrases.flatMap(({ names }) => names.map(({ key }) => key)) : [],
  )
}

/** Rooms that openings lead to and that have no block yet. */
export function roomsToCome({ rooms }: JobIndex): readonly NameChoice[] {
  const wanted = new Map<string, NameChoice>()
  for (const room of rooms.values()) {
    for (const { to } of room.openings) {
      if (to === null || to.key === 'outside' || rooms.has(to.key)) continue
      const detail = `An opening of ${room.name.text} leads there.`
      if (!wanted.has(to.key)) wanted.set(to.key, { name: to.text, kind: 'room', detail })
    }
  }
  return [...wanted.values()]
}

/** Of a floor's own rooms, then for a doorway those beyond. */
export function roomsForFloor(
  { rooms, closets }: JobIndex,
  { block, form, position, word }: NamePlace,
): readonly NameChoice[] {
  const listed = roomsListed(block)
  const own = listed.flatMap((key): readonly NameChoice[] => {
    const room = rooms.get(key)
    if (room !== undefined) return [roomChoice(room, 'A room of this floor.')]
    const closet = closets.get(key)
    const detail = 'A closet of this floor.'
    return closet === undefined || form !== 'ROOM to ROOM'
      ? []
      : [{ name: closet.recess.label, kind: 'closet', detail }]
  })
  if (form !== 'ROOM to ROOM' || position === 0) return own
  const beyond = listed
    .flatMap((key) => rooms.get(key)?.openings ?? [])
    .flatMap(({ to }) => (to === null || listed.includes(to.key) ? [] : [to]))
  const once = new Map(beyond.map((name) => [name.key, name.text]))
  const detail = 'An opening of this floor leads there.'
  const edges = [...once.values()].map((name): NameChoice => ({ name, kind: 'room', detail }))
  return word === 'break' ? own : [...edges, ...own]
}
