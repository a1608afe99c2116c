import { message } from '../facts/message.ts'
import type { Name } from '../language/tree.ts'
import type { Binding } from './binding.ts'
import type { Wall } from './job.ts'
import { unknownName } from './names.ts'
import { isUnsettled, type Outline } from './outline.ts'
import { allOf, numberWord, oneOf, said } from './sentence.ts'
import { isWay } from './ways.ts'

/** A message shows so many of the walls that it speaks of. */
const MOST_RELATED = 8

/** What to do about a way that several walls share, when it is an opening that stands astray. */
export interface Use {
  /** "Put the door under its wall, or write: in " before the names that are clear. */
  readonly help: string
}

const PLAIN_USE: Use = {
  help: 'Name the one that is meant on its line and write that name, or write: ',
}

/**
 * The wall that a name means: its own name, else its way while the room has just one. Null, with a
 * message, when none or several are meant; null without one while a line of the room is broken, for
 * that line may be the wall or part this room from the next, and so while its walls do not come round.
 */
export function wallNamed(
  room: Outline,
  name: Name,
  binding: Binding,
  use: Use = PLAIN_USE,
): number | null {
  const own = room.byName.get(name.key)
  if (own !== undefined) return own.index
  const found = isWay(name.key) ? (room.byWord.get(name.key) ?? []) : []
  const key = `wall ${room.name.key}: ${name.key}`
  if (found.length === 1) return found[0]!.index
  if (isUnsettled(room)) return null
  binding.sayOnce(key, name.span, () =>
    found.length > 1 ? several(room, name, found, use, binding) : unknownWall(room, name, binding),
  )
  return null
}

function several(room: Outline, name: Name, walls: readonly Wall[], use: Use, binding: Binding) {
  const places = walls.map((wall) => placeOf(wall, name, binding))
  const own = walls.flatMap((wall) => (wall.name === null ? [] : [wall.name.text]))
  const help =
    own.length > 0
      ? `${use.help}${oneOf(own)}.`
      : 'Give the one that is meant a name on its line, such as "called long wall", and write that.'
  const text = `${numberWord(walls.length)} walls of ${room.name.text} are ${name.key}: ${allOf(places)}. ${help}`
  const related = walls
    .slice(0, MOST_RELATED)
    .map((wall) => ({ span: wall.span, text: `This wall is ${name.key}.` }))
  return message('error', 'wall-not-clear', name.span, text, { related })
}

function placeOf(wall: Wall, name: Name, binding: Binding): string {
  const line = binding.place(wall.span, name.span)
  return wall.name === null ? `${line} (${wall.reading.text})` : `${line}, ${wall.name.text}`
}

function unknownWall(room: Outline, name: Name, binding: Binding) {
  const known = room.walls
    .map((wall) => wall.name ?? { text: wall.label, key: wall.label, span: wall.span })
    .filter(({ key }) => key !== 'slant')
  const have = [...new Set(known.map(({ text }) => text))]
  const help = have.length === 0 ? 'It has no walls yet.' : `Its walls are ${allOf(have)}.`
  const kind = `wall of ${said(room.name.text)}`
  return unknownName({ kind, name, known: known.map((name) => ({ name })), help }, binding)
}

/** The side of a wall on which another one meets it, or null where they do not meet. */
export function sideWhereMeets(
  room: Outline,
  wall: number,
  other: number,
): 'left' | 'right' | null {
  const walls = room.walls.length
  if ((other + 1) % walls === wall) return 'left'
  return (wall + 1) % walls === other ? 'right' : null
}

/**
 * Which end of a wall a name means (`from west`): the wall of that name that meets it there, so that
 * a way which several walls share is clear when only one of them does.
 */
export function endNamed(
  room: Outline,
  wall: number,
  name: Name,
  binding: Binding,
): 'left' | 'right' | null {
  const around = [room.walls.at(wall - 1)!, room.walls[(wall + 1) % room.walls.length]!]
  const candidates = around
    .filter((other) => other.name?.key === name.key || room.lines[other.index]!.word === name.key)
    .flatMap((other) => sideWhereMeets(room, wall, other.index) ?? [])
  if (candidates.length === 1) return candidates[0]!
  const other = candidates.length > 1 ? null : wallNamed(room, name, binding)
  if (other === null && candidates.length < 2) return null
  const label = room.walls[wall]!.label
  const text =
    candidates.length > 1
      ? `${name.text} meets ${label} at both ends. Write from left or from right.`
      : `${name.text} does not meet ${label}, so it is no end of it. Write from left or from right, as you face ${label}.`
  binding.say(message('error', 'wall-does-not-meet', name.span, text))
  return null
}
