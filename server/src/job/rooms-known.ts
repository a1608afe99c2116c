import { message } from '../facts/message.ts'
import { keyOf } from '../language/name.ts'
import type { Name } from '../language/tree.ts'
import type { Binding } from './binding.ts'
import type { Recess, Room } from './job.ts'
import { nameTwice } from './names.ts'
import type { Outline } from './outline.ts'
import type { UnknownRooms } from './unknown-rooms.ts'

/** Every room of a job by name, measured or not, and what lines say when a name is none of them. */
export interface RoomsKnown {
  readonly outlines: ReadonlyMap<string, Outline>
  /** A name on an opening line that could not be read, or of its closet: nothing more is said of it. */
  readonly isLost: (key: string) => boolean
  readonly unknown: UnknownRooms
  /** Keys of the rooms that some line names. */
  readonly named: { readonly has: (key: string) => boolean; readonly add: (key: string) => unknown }
}

/** The walls of the room that a name means; null, with a message, for none. `holder` has the line, if a room. */
export function outlineNamed(
  rooms: RoomsKnown,
  name: Name,
  holder: Name | null = null,
): Outline | null {
  const found = rooms.outlines.get(name.key)
  rooms.named.add(name.key)
  if (found === undefined) sayNoRoom(rooms, name, holder)
  return found ?? null
}

/** Whether a name is a room's or the outside; says so when it is neither. `holder` has the line, if a room. */
export function isRoom(rooms: RoomsKnown, name: Name, holder: Name | null = null): boolean {
  rooms.named.add(name.key)
  if (isKnown(rooms, name)) return true
  sayNoRoom(rooms, name, holder)
  return false
}

/** A room of the job, or the outside. */
export function isKnown({ outlines }: RoomsKnown, { key }: Name): boolean {
  return key === 'outside' || outlines.has(key)
}

/** Says what names are no room's, now that every line was read. */
export function sayUnknownRooms({ outlines, named, unknown }: RoomsKnown): void {
  const rooms = [...outlines.values()].map(({ name }) => name)
  unknown.say(rooms.filter(({ key }) => !named.has(key)))
}

function sayNoRoom(
  { outlines, isLost, unknown }: RoomsKnown,
  name: Name,
  holder: Name | null,
): void {
  if (isLost(name.key)) return
  const help = `If it is not measured yet, a line "room ${name.text}" is enough.`
  unknown.add({ name, known: [...outlines.values()], help, holder })
}

/** A closet is a small room to take or to drop; it is placed with the room that it opens from. */
export interface Closet {
  readonly name: Name
  readonly room: Room
  readonly recess: Recess
}

/** The closets of all rooms by name. A name that a room or another closet has is an error. */
export function closetsOf(rooms: readonly Room[], binding: Binding): ReadonlyMap<string, Closet> {
  const taken = new Map(rooms.map(({ name }) => [name.key, name]))
  const closets = new Map<string, Closet>()
  for (const room of rooms) {
    for (const recess of room.recesses) {
      if (recess.kind !== 'closet') continue
      const name: Name = { text: recess.label, key: keyOf(recess.label), span: recess.span }
      const other = taken.get(name.key)
      if (other !== undefined) binding.say(closetTwice(name, other, binding))
      else closets.set(name.key, { name, room, recess })
      taken.set(name.key, other ?? name)
    }
  }
  return closets
}

function closetTwice(name: Name, other: Name, binding: Binding) {
  const { text, related } = nameTwice('room', name, other, binding)
  return message('error', 'name-twice', name.span, `${text} For a closet write: called NAME.`, {
    related,
  })
}
