import { message } from '../facts/message.ts'
import type { Entry, Name } from '../language/tree.ts'
import type { Binding } from './binding.ts'
import { cornerNamed } from './corner-names.ts'
import type { Check } from './job.ts'
import type { Outline } from './outline.ts'
import { lengthIn, measureOf, phrase } from './phrases.ts'
import { mainReading } from './reading.ts'
import { sizeAllowed } from './sizes.ts'
import { stillNeeds } from './still-needs.ts'
import { tieOf } from './ties.ts'
import { wallNamed } from './wall-names.ts'

/** The walls of another room, for a tie that ends there; null with a message when it is not known. */
export type RoomBeyond = (name: Name) => Outline | null

/** The diagonals, widths across, ties and tested corners of a room, in written order. */
export function checksOf(room: Outline, beyond: RoomBeyond, binding: Binding): readonly Check[] {
  return room.block.under.flatMap((line) => {
    if (line.broken) return []
    return checkOf(room, line, beyond, binding) ?? []
  })
}

function checkOf(room: Outline, line: Entry, beyond: RoomBeyond, binding: Binding): Check | null {
  const measure = measureOf(line, 'LENGTH')
  switch (line.word) {
    case 'diagonal':
      if (measure !== null) sizeAllowed(measure, 'diagonal', binding)
      return diagonalOf(room, line, binding)
    case 'across':
      if (measure !== null) sizeAllowed(measure, 'width', binding)
      return acrossOf(room, line, binding)
    case 'tie':
      if (measure !== null) sizeAllowed(measure, 'tie', binding)
      return tieOf(room, line, beyond, binding)
    case 'square':
      return squareOf(room, line, binding)
    default:
      return null
  }
}

function diagonalOf(room: Outline, line: Entry, binding: Binding): Check | null {
  const ends = phrase(line, 'from CORNER to CORNER')?.names
  if (ends === undefined) {
    return stillNeeds(
      line,
      'the corners that it joins, such as from north-west to south-east',
      binding,
    )
  }
  const [from, to] = ends.map((name) => cornerNamed(room, name, binding))
  if (from == null || to == null) return null
  if (from === to) {
    const text = 'This diagonal ends in the corner where it begins. Name two corners.'
    binding.say(message('error', 'diagonal-to-itself', line.line.span, text))
    return null
  }
  return { kind: 'diagonal', from, to, reading: mainReading(line, room.tape), span: line.line.span }
}

function acrossOf(room: Outline, line: Entry, binding: Binding): Check | null {
  const ends = phrase(line, 'from WALL to WALL')?.names
  if (ends === undefined) {
    return stillNeeds(line, 'the walls that it joins, such as from north to south', binding)
  }
  const at = placeAlong(line)
  if (at === null) {
    return stillNeeds(line, 'its place along the first wall: middle, or 6" from left', binding)
  }
  const [from, to] = ends.map((name) => wallNamed(room, name, binding))
  if (from == null || to == null) return null
  if (from === to) {
    const text = 'This width ends at the wall where it begins. Name two walls.'
    binding.say(message('error', 'across-to-itself', line.line.span, text))
    return null
  }
  const reading = mainReading(line, room.tape)
  return { kind: 'across', from, to, at, reading, span: line.line.span }
}

function placeAlong(line: Entry): Extract<Check, { kind: 'across' }>['at'] | null {
  if (phrase(line, 'middle') !== null) return { kind: 'middle' }
  const side = phrase(line, 'LENGTH from left|right')
  const distance = lengthIn(side?.measures[0])
  if (side === null || distance === null) return null
  return { kind: side.choices[0] as 'left' | 'right', distance }
}

function squareOf(room: Outline, line: Entry, binding: Binding): Check | null {
  const name = phrase(line, 'NAME')?.names[0]
  const corner = name === undefined ? null : cornerNamed(room, name, binding)
  return corner === null ? null : { kind: 'square', corner, span: line.line.span }
}
