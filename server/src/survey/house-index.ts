import { keyOf } from '../language/name.ts'
import type { Survey } from './survey.ts'

/** Where in a survey's list the rooms of a name stand, and those with a closet of a name. */
export interface HouseIndex {
  readonly rooms: ReadonlyMap<string, readonly number[]>
  readonly withCloset: ReadonlyMap<string, readonly number[]>
}

const known = new WeakMap<Survey, HouseIndex>()

/** A survey looked through once by the keys of its names, however many floors ask. */
export function houseIndex(survey: Survey): HouseIndex {
  const there = known.get(survey)
  if (there !== undefined) return there
  const rooms = new Map<string, number[]>()
  const withCloset = new Map<string, number[]>()
  for (const [i, { room, closets }] of survey.rooms.entries()) {
    put(rooms, room.name.key, i)
    for (const { name } of closets) put(withCloset, keyOf(name), i)
  }
  const made = { rooms, withCloset }
  known.set(survey, made)
  return made
}

function put(index: Map<string, number[]>, key: string, room: number): void {
  const there = index.get(key)
  if (there === undefined) index.set(key, [room])
  else if (there.at(-1) !== room) there.push(room)
}
