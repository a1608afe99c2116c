import type { Message } from '../facts/message.ts'
import type { Room, Wall } from '../job/job.ts'
import type { NameWanted } from '../language/forms.ts'
import { keyOf } from '../language/name.ts'
import type { Block, Phrase } from '../language/tree.ts'
import { accepting } from './accept-choices.ts'
import type { CompletionKind } from './completion-item.ts'
import { type JobIndex, jobIndex } from './job-index.ts'
import { linesNaming } from './lines-naming.ts'
import { roomOfBlock, wallNamed } from './meaning.ts'
import type { View } from './view.ts'

/** A name of this job that may stand at a place. */
export interface NameChoice {
  readonly name: string
  /** The room of a wall, where both are chosen at once. */
  readonly of?: string
  readonly kind: CompletionKind
  readonly detail: string
}

/** Where a name is to stand. */
export interface NamePlace {
  readonly view: View
  readonly block: Block
  /** The first word of the line. */
  readonly word: string
  readonly form: string
  /** Which of the names of its phrase it is, from 0. */
  readonly position: number
  readonly offset: number
  /** What was last said of the job. */
  readonly said: readonly Message[]
}

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

/** Rooms that an opening may lead to; first those from which one leads here. */
function roomsBeyond(
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
function roomsToLay(
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
function roomsToCome({ rooms }: JobIndex): readonly NameChoice[] {
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
function roomsForFloor(
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

/** The walls of a room by the names that are clear; on a line below a wall, those that meet it first. */
export function wallsOf(
  room: Room,
  { form, word, block, offset }: NamePlace,
): readonly NameChoice[] {
  const above = block.under.findLast(({ line }) => line.span.start < offset)
  const onWall = form === 'LENGTH from WALL' && WALL_THINGS.includes(word)
  const here = onWall ? room.walls.find(({ span }) => span.start === above?.line.span.start) : null
  const walls = here == null ? room.walls : meeting(room, here)
  return walls.flatMap((wall) => {
    const name = clearName(room, wall)
    return name === null ? [] : [{ name, kind: 'wall', detail: wallDetail(room, wall) }]
  })
}

const WALL_THINGS: readonly string[] = [
  'door',
  'opening',
  'pass-through',
  'closet',
  'alcove',
  'hearth',
]

function meeting({ walls }: Room, { index }: Wall): readonly Wall[] {
  const around = [walls.at(index - 1)!, walls[(index + 1) % walls.length]!]
  return [...new Set(around)].filter((wall) => wall.index !== index)
}

function wallDetail(room: Room, { reading }: Wall): string {
  const read = reading.nm === null ? 'still to be read' : `read ${reading.text}`
  return `A wall of ${room.name.text}, ${read}.`
}

/** Its own name, else its way while no other wall has it. */
export function clearName(room: Room, wall: Wall): string | null {
  if (wall.name !== null) return wall.name.text
  return wallNamed(room, keyOf(wall.label)) === wall ? wall.label : null
}

/** Corners that have a name, then those between two ways that no other corner has. */
function cornersOf(room: Room): readonly NameChoice[] {
  const named = room.corners.map(({ name }) => name.text)
  const ways = room.walls
    .map(({ index }) => cornerWays(room, index))
    .filter((ways) => ways !== null)
  const clear = ways.filter((way) => ways.indexOf(way) === ways.lastIndexOf(way))
  const detail = `A corner of ${room.name.text}.`
  return [...named, ...clear].map((name) => ({ name, kind: 'corner', detail }))
}

/** `north-west` for the corner of north and west: north or south first. */
function cornerWays({ walls }: Room, index: number): string | null {
  const ways = [walls.at(index - 1)!, walls[index]!].map(({ heading }) =>
    heading.kind === 'way' ? heading.way : '',
  )
  const first = ways.find((way) => way === 'north' || way === 'south')
  const second = ways.find((way) => way === 'east' || way === 'west')
  return first === undefined || second === undefined ? null : `${first}-${second}`
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
