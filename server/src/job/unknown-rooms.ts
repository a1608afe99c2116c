import { type Message, message, type Related } from '../facts/message.ts'
import type { Name } from '../language/tree.ts'
import type { Binding } from './binding.ts'
import { type Named, nearestName, unknownName, writeName } from './names.ts'
import { allOf, said } from './sentence.ts'

/** A name that is no room's, where it stands, and what else to do about it. */
export interface Astray {
  readonly name: Name
  readonly known: readonly Named[]
  /** In whole sentences. */
  readonly help: string
  /** The room whose line holds the name, which leads to another. */
  readonly holder: Name | null
}

/**
 * The names of a job that are no room's, kept until every line was read and then said in one message: a
 * job is typed room by room, and its first doors lead to those to come.
 */
export interface UnknownRooms {
  readonly add: (astray: Astray) => void
  /** Says them; `unnamed` are the rooms that no line names: the likeliest to be meant. */
  readonly say: (unnamed: readonly Name[]) => void
}

/** One name with every place of it, and the room that it is near to. */
interface Unknown {
  readonly first: Astray
  readonly others: readonly Astray[]
  readonly near: Name | null
}

export function openUnknownRooms(binding: Binding): UnknownRooms {
  const kept: Astray[] = []
  const say = (unnamed: readonly Name[]): void => {
    const unknown = unknownOf(kept, unnamed, binding)
    const [one, another] = unknown
    if (another !== undefined) binding.say(several(unknown))
    else if (one !== undefined)
      binding.say(
        one.near === null ? farFromAll(one, unnamed, binding) : nearTo(one, one.near, binding),
      )
  }
  return { add: (astray) => kept.push(astray), say }
}

/** What is to be said; a name that is near to none may stand where it could not be read, which is said. */
function unknownOf(
  kept: readonly Astray[],
  unnamed: readonly Name[],
  binding: Binding,
): readonly Unknown[] {
  const groups = [...Map.groupBy(kept, ({ name }) => name.key)]
  const keys = groups.map(([key]) => key)
  const likeliest = unnamed.map((name) => ({ name }))
  return groups
    .filter(([key]) => !keys.some((room) => key.startsWith(`${room} `)))
    .map(([, [first, ...others]]) => ({
      first: first!,
      others,
      near:
        nearestName(first!.name, likeliest, binding) ??
        nearestName(first!.name, first!.known, binding),
    }))
    .filter(({ near }) => near !== null || !binding.mayBeUnread('room'))
}

function nearTo({ first, others }: Unknown, near: Name, binding: Binding): Message {
  const one = unknownName({ kind: 'room', ...first, known: [{ name: near }] }, binding)
  return { ...one, related: [...one.related, ...hereToo(others)] }
}

function farFromAll(
  { first, others }: Unknown,
  unnamed: readonly Name[],
  binding: Binding,
): Message {
  const one = unknownName({ kind: 'room', ...first, known: [] }, binding)
  const holders = [first, ...others].map(({ holder }) => holder?.key)
  const [other, more] = unnamed.filter(({ key }) => !holders.includes(key))
  if (other === undefined || more !== undefined) return { ...one, related: hereToo(others) }
  const where = binding.place(other.span, first.name.span)
  return {
    ...one,
    text: `${one.text} Or is it ${said(other.text)} on ${where}, which no line names?`,
    related: [{ span: other.span, text: 'No line names this room.' }, ...hereToo(others)],
  }
}

function several(unknown: readonly Unknown[]): Message {
  const called = unknown.map(
    ({ first, near }) => `${said(first.name.text)}${near === null ? '' : ` (${near.text}?)`}`,
  )
  const [{ first }, ...others] = unknown as [Unknown, ...Unknown[]]
  const text =
    `There are no rooms called ${allOf(called)}. For one that is not measured yet a line is enough, ` +
    `such as: room ${first.name.text}.`
  const related = others.map(({ first: { name } }) => ({
    span: name.span,
    text: `No room is called ${said(name.text)}.`,
  }))
  const fixes = unknown.flatMap((one) =>
    one.near === null ? [] : [writeName(one.first.name, one.near.text)],
  )
  return message('error', 'name-unknown', first.name.span, text, {
    related: related.slice(0, MOST_RELATED),
    fixes: fixes.slice(0, MOST_RELATED),
  })
}

function hereToo(others: readonly Astray[]): readonly Related[] {
  return others.slice(0, MOST_RELATED).map(({ name }) => ({ span: name.span, text: 'Here too.' }))
}

/** More places of one trouble help nobody. */
const MOST_RELATED = 20
