import { message } from '../facts/message.ts'
import type { Entry } from '../language/tree.ts'
import type { Binding } from './binding.ts'
import type { RoomBeyond } from './checks.ts'
import type { Check } from './job.ts'
import type { Outline } from './outline.ts'
import { lengthIn, phrase, phrasesOf } from './phrases.ts'
import { mainReading } from './reading.ts'
import { stillNeeds } from './still-needs.ts'
import { sideWhereMeets, wallNamed } from './wall-names.ts'

/** A tie: between marks along two walls of a corner, or through doors to a wall of another room. */
export function tieOf(
  room: Outline,
  line: Entry,
  beyond: RoomBeyond,
  binding: Binding,
): Check | null {
  if (phrase(line, 'from WALL to WALL of ROOM') !== null)
    return roomTie(room, line, beyond, binding)
  if (phrasesOf(line, 'LENGTH along WALL').length === 2) return cornerTie(room, line, binding)
  return stillNeeds(
    line,
    'its two ends, such as 6\' 0" along north, 8\' 0" along east; or from west to east of den',
    binding,
  )
}

function roomTie(room: Outline, line: Entry, beyond: RoomBeyond, binding: Binding): Check | null {
  const [start, end, there] = phrase(line, 'from WALL to WALL of ROOM')!.names
  const other = beyond(there!)
  const from = wallNamed(room, start!, binding)
  const to = other === null ? null : wallNamed(other, end!, binding)
  if (from === null || to === null || other === null) return null
  const reading = mainReading(line, room.tape)
  return { kind: 'room tie', from, room: other.name, to, reading, span: line.line.span }
}

function cornerTie(room: Outline, line: Entry, binding: Binding): Check | null {
  const marks = phrasesOf(line, 'LENGTH along WALL')
  const [alongFirst, alongSecond] = marks.map((mark) => lengthIn(mark.measures[0]))
  const [first, second] = marks.map((mark) => wallNamed(room, mark.names[0]!, binding))
  if (first == null || second == null) return null
  if (alongFirst == null || alongSecond == null) {
    return stillNeeds(line, 'how far its marks are from the corner', binding)
  }
  const side = sideWhereMeets(room, first, second)
  if (side === null) {
    const [one, two] = [room.walls[first]!.label, room.walls[second]!.label]
    const text = `${one} and ${two} do not meet in a corner, so the marks of this tie have none to be read from. Name two walls that meet.`
    binding.say(message('error', 'wall-does-not-meet', line.line.span, text))
    return null
  }
  return {
    kind: 'corner tie',
    corner: side === 'left' ? first : second,
    alongFirst,
    alongSecond,
    first,
    second,
    reading: mainReading(line, room.tape),
    span: line.line.span,
  }
}
