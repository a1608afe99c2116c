import { message } from '../facts/message.ts'
import type { Name } from '../language/tree.ts'
import type { Binding } from './binding.ts'
import type { Opening, Room } from './job.ts'
import type { Closet } from './rooms-known.ts'
import { numberWord, said } from './sentence.ts'

/** The rooms of a job and how doorways join them, as the lines of both rooms tell. */
export interface House {
  readonly rooms: ReadonlyMap<string, Room>
  readonly closets: ReadonlyMap<string, Closet>
}

/** Openings of one room that lead to another, in written order. */
function leading(from: Room | undefined, to: string): readonly Opening[] {
  return from?.openings.filter((opening) => opening.to?.key === to) ?? []
}

/**
 * Whether one doorway is meant by "ROOM to ROOM" and a name. Says what is wrong when none or several
 * are; says nothing while a line of either room is broken, for that may be the doorway's.
 */
export function isOneDoorway(
  house: House,
  from: Name,
  to: Name,
  called: Name | null,
  binding: Binding,
): boolean {
  const [near, far] = [house.rooms.get(from.key), house.rooms.get(to.key)]
  if (house.closets.get(to.key)?.room === near && near !== undefined) return true
  const [there, back] = [leading(near, to.key), leading(far, from.key)]
  if (called !== null) {
    const named = [...there, ...back].some((opening) => opening.name?.key === called.key)
    if (!named && !isBroken(near) && !isBroken(far)) binding.say(notCalled(from, to, called))
    return named
  }
  const more = there.length >= back.length ? there : back
  if (more.length === 1) return true
  if (more.length > 1) binding.say(several(from, to, more, binding))
  else if (!isBroken(near) && !isBroken(far)) binding.say(none(from, to, binding))
  return false
}

function isBroken(room: Room | undefined): boolean {
  return room !== undefined && (room.broken || room.unfinished)
}

function between(from: Name, to: Name): string {
  return `from ${said(from.text)} to ${said(to.text)}`
}

function none(from: Name, to: Name, binding: Binding) {
  const sample = binding.samples('door 30", 14" from left')
  const text = `No doorway leads ${between(from, to)}. Write it under its wall, such as: ${sample}, to ${to.text}.`
  return message('error', 'doorway-unknown', from.span, text)
}

function notCalled(from: Name, to: Name, called: Name) {
  const text = `No doorway ${between(from, to)} is called ${said(called.text)}. Name it on its line: called ${called.text}.`
  return message('error', 'doorway-unknown', called.span, text)
}

function several(from: Name, to: Name, found: readonly Opening[], binding: Binding) {
  const places = found.map((opening) => binding.place(opening.span, from.span)).join(', ')
  const text = `${numberWord(found.length)} doorways lead ${between(from, to)} (${places}). Give each a name on its line (called …) and add it here.`
  const related = found.map((opening) => ({ span: opening.span, text: 'One of them.' }))
  return message('error', 'doorway-not-clear', from.span, text, { related })
}
