import { type Message, message } from '../facts/message.ts'
import type { Name } from '../language/tree.ts'
import type { Binding } from './binding.ts'
import type { RoomsKnown } from './rooms-known.ts'
import { said } from './sentence.ts'

/** The rooms and closets of a job that a floor may be laid in, by key. */
export type Layable = ReadonlyMap<string, { readonly name: Name }>

/** Where each room is laid: a room lies in one floor only. */
export interface LaidIn {
  readonly get: (key: string) => LaidPlace | undefined
  readonly set: (key: string, place: LaidPlace) => unknown
}

/** The floor that a room is laid in, and the room's name on its list. */
export interface LaidPlace {
  readonly floor: Name
  readonly room: Name
}

export interface RoomsListed {
  readonly rooms: readonly Name[]
  /** A name on the list is no room's, or a room of another floor: the list is not whole. */
  readonly whole: boolean
}

/** The rooms of one floor as its list gives them; what is no room is said and left out. */
export function roomsListed(
  floor: Name,
  listed: readonly Name[],
  known: {
    readonly layable: Layable
    readonly known: RoomsKnown
    readonly laidIn: LaidIn
  },
  binding: Binding,
): RoomsListed {
  const rooms: Name[] = []
  for (const name of listed) {
    const before = known.laidIn.get(name.key)
    if (!known.layable.has(name.key)) {
      sayNoRoom(name, known.layable, known.known, binding)
    } else if (before !== undefined) {
      binding.say(laidTwice(name, before, floor, binding))
    } else {
      known.laidIn.set(name.key, { floor, room: name })
      known.known.named.add(name.key)
      rooms.push(name)
    }
  }
  return { rooms, whole: rooms.length === listed.length }
}

function laidTwice(name: Name, before: LaidPlace, floor: Name, binding: Binding): Message {
  const where = before.floor.key === floor.key ? 'this floor' : `floor ${before.floor.text}`
  const text = `${name.text} is already laid in ${where}, on ${binding.place(before.room.span, name.span)}. A room lies in one floor; take it off one of the lists.`
  const related = [{ span: before.room.span, text: 'It was first listed here.' }]
  return message('error', 'room-laid-twice', name.span, text, { related })
}

const ROOMS_LISTED = 'A floor lists rooms and closets of the job.'

/** `bedroom 1 hall` is two rooms with the comma between them lost. */
function sayNoRoom(
  name: Name,
  layable: Layable,
  { isLost, unknown }: RoomsKnown,
  binding: Binding,
): void {
  if (isLost(name.key)) return
  const parted = partedIntoNames(name.key.split(' '), layable)
  if (parted === null)
    unknown.add({ name, known: [...layable.values()], help: ROOMS_LISTED, holder: null })
  else binding.sayOnce(`room ${name.key}`, name.span, () => commaLost(name, parted))
}

function commaLost(name: Name, parted: readonly string[]): Message {
  const commas = parted.join(', ')
  const text = `No room is called ${said(name.text)}. A comma? ${commas}.`
  const fixes = [{ title: `Write ${commas}`, edits: [{ span: name.span, text: commas }] }]
  return message('error', 'name-unknown', name.span, text, { fixes })
}

/** More words than this were not meant as a list. */
const MOST_WORDS = 40

/** The words as names of known rooms end to end, longest names first; null when they are none. */
function partedIntoNames(words: readonly string[], layable: Layable): readonly string[] | null {
  if (words.length > MOST_WORDS) return null
  // From the end: the parting of each tail, so that the time is the square of the words.
  const tails: (readonly string[] | null)[] = [[]]
  for (let from = words.length - 1; from >= 0; from--) {
    tails.unshift(null)
    for (let end = words.length; end > from && tails[0] === null; end--) {
      const known = layable.get(words.slice(from, end).join(' '))
      const rest = tails[end - from]
      if (known !== undefined && rest != null) tails[0] = [known.name.text, ...rest]
    }
  }
  return tails[0] ?? null
}
