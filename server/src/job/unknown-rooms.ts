import { type Message, message, type Related } from '../facts/message.ts'
import type { Name } from '../language/tree.ts'
import type { Binding } from './binding.ts'
import { type Named, nearestName, unknownName } from './names.ts'
import { allOf, said } from './sentence.ts'

/** A name that is no room's, where it stands, and what else to do about it. */
export interface Astray {
  readonly name: Name
  readonly known: readonly Named[]
  /** In whole sentences. */
  readonly help: string
}

/**
 * The names of a job that are no room's, kept until every line was read. One that is near to a room's is
 * said where it first stands; all others are said together, for a job is typed room by room and its
 * first doors lead to those to come.
 */
export interface UnknownRooms {
  readonly add: (astray: Astray) => void
  /** Says them; `unnamed` are the rooms that no line names: the likeliest to be meant. */
  readonly say: (unnamed: readonly Name[]) => void
}

export function openUnknownRooms(binding: Binding): UnknownRooms {
  const kept: Astray[] = []
  const say = (unnamed: readonly Name[]): void => {
    const groups = [...Map.groupBy(kept, ({ name }) => name.key).values()]
    const keys = groups.map(([first]) => first!.name.key)
    const far: (readonly Astray[])[] = []
    for (const group of groups) {
      const [first] = group
      if (isClosetOfOne(first!.name, keys)) continue
      const near = nearRoom(first!, unnamed, binding)
      if (near === null) far.push(group)
      else binding.say(nearlyNamed(group, near, binding))
    }
    // A room that is not known may stand where it could not be read, which is said.
    if (far.length > 0 && !binding.mayBeUnread('room')) binding.say(together(far, unnamed, binding))
  }
  return { add: (astray) => kept.push(astray), say }
}

/** "hall closet", where it is said already that there is no hall. */
function isClosetOfOne({ key }: Name, rooms: readonly string[]): boolean {
  return rooms.some((room) => key.startsWith(`${room} `))
}

function nearRoom(
  { name, known }: Astray,
  unnamed: readonly Name[],
  binding: Binding,
): Name | null {
  const likeliest = nearestName(
    name,
    unnamed.map((room) => ({ name: room })),
    binding,
  )
  return likeliest ?? nearestName(name, known, binding)
}

function nearlyNamed(group: readonly Astray[], near: Name, binding: Binding): Message {
  const { name, help } = group[0]!
  const one = unknownName({ kind: 'room', name, known: [{ name: near }], help }, binding)
  return { ...one, related: [...one.related, ...elsewhere(group.slice(1))].slice(0, MOST_RELATED) }
}

function together(
  groups: readonly (readonly Astray[])[],
  unnamed: readonly Name[],
  binding: Binding,
): Message {
  const [group] = groups
  const [first] = group!
  if (groups.length > 1) return noneOf(groups)
  const one = unknownName({ kind: 'room', ...first!, known: [] }, binding)
  const related = elsewhere(group!.slice(1))
  const [other, more] = unnamed
  if (other === undefined || more !== undefined) return { ...one, related }
  const where = binding.place(other.span, first!.name.span)
  return {
    ...one,
    text: `${one.text} Or is it ${said(other.text)} on ${where}, which no line names?`,
    related: [{ span: other.span, text: 'No line names this room.' }, ...related],
  }
}

function noneOf(groups: readonly (readonly Astray[])[]): Message {
  const names = groups.map((group) => group[0]!.name)
  const text =
    `There are no rooms called ${allOf(names.map(({ text }) => said(text)))}. For one that is not measured ` +
    `yet a line is enough, such as: room ${names[0]!.text}.`
  const related = groups.slice(1).map(([first]) => ({
    span: first!.name.span,
    text: `No room is called ${said(first!.name.text)}.`,
  }))
  return message('error', 'name-unknown', names[0]!.span, text, {
    related: related.slice(0, MOST_RELATED),
  })
}

function elsewhere(others: readonly Astray[]): readonly Related[] {
  return others.map(({ name }) => ({ span: name.span, text: 'Here too.' })).slice(0, MOST_RELATED)
}

/** More places of one trouble help nobody. */
const MOST_RELATED = 20
