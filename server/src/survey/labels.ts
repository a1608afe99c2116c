import type { Room, Way } from '../job/job.ts'
import type { Nm, UnitStyle } from '../units/length.ts'
import { printLength } from '../units/print.ts'
import { roundToNm } from '../units/round.ts'

/** A computed length in words, rounded for reading only. */
export function lengthWords(nm: Nm, style: UnitStyle): string {
  return printLength(roundToNm(nm), style)
}

/** A wall as messages call it: its label, with its reading where another wall has the same one. */
export function wallWords(room: Room, index: number): string {
  const wall = room.walls[index]!
  const shared = room.walls.some((other) => other !== wall && other.label === wall.label)
  return shared ? `${wall.label} (${wall.reading.text})` : wall.label
}

/** A corner as messages call it: its own name, the two ways that only it has, or its two walls. */
export function cornerWords(room: Room, corner: number): string {
  const named = room.corners.find((other) => other.corner === corner)
  if (named) return named.name.text
  const ways = waysAt(room, corner)
  if (ways !== null) {
    const alone = room.walls.every((_, i) => i === corner || waysAt(room, i) !== ways)
    if (alone) return ways
  }
  const before = (corner + room.walls.length - 1) % room.walls.length
  return `the corner of ${wallWords(room, before)} and ${wallWords(room, corner)}`
}

/** "north-west" for the corner between a north and a west wall. */
function waysAt(room: Room, corner: number): string | null {
  const ways = [wayOf(room, corner - 1), wayOf(room, corner)]
  const upright = ways.find((way) => way === 'north' || way === 'south')
  const level = ways.find((way) => way === 'east' || way === 'west')
  return upright && level ? `${upright}-${level}` : null
}

function wayOf(room: Room, index: number): Way | null {
  const heading = room.walls.at(index)!.heading
  return heading.kind === 'way' ? heading.way : null
}

/** "a", "a and b", "a, b and c". */
export function listWords(words: readonly string[], last: 'and' | 'or'): string {
  if (words.length < 2) return words.join('')
  return `${words.slice(0, -1).join(', ')} ${last} ${words[words.length - 1]}`
}

/** "one", "two" … "nine", then figures. */
export function countWords(count: number): string {
  const words = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine']
  return words[count] ?? `${count}`
}
