import { type Message, message } from '../facts/message.ts'
import { samePoint, twiceArea } from '../geometry/exact.ts'
import type { Ring } from '../geometry/point.ts'
import { firstFault } from '../geometry/simple.ts'
import type { Room } from '../job/job.ts'
import type { UnitStyle } from '../units/length.ts'
import { lengthWords, wallWords } from './labels.ts'
import { directionOf, dot, lengthOf, meet, minus } from './vector.ts'

/** What makes a room's corners no shape at all: a wall without length, walls that cross or run left. */
export function shapeFault(room: Room, corners: Ring, style: UnitStyle): Message | null {
  const count = corners.length
  const empty = corners.findIndex((corner, i) => samePoint(corner, corners[(i + 1) % count]!))
  if (empty >= 0) return noLength(room, empty)
  const fault = firstFault(corners)
  if (fault !== null) {
    const { first, second } = fault
    const gap = second - first
    if (gap === 1) return doublesBack(room, first, second)
    if (gap === count - 1) return doublesBack(room, second, first)
    return wallsCross(room, { first, second, corners }, style)
  }
  return twiceArea(corners) > 0n ? runsLeft(room) : null
}

function noLength(room: Room, index: number): Message {
  const text = `${wallWords(room, index)} has no length. Leave the line out, or write what was read.`
  return message('error', 'wall-without-length', room.walls[index]!.span, text)
}

function doublesBack(room: Room, before: number, after: number): Message {
  const text =
    `${wallWords(room, after)} runs straight back along ${wallWords(room, before)}, so that no floor lies between them. ` +
    'Is a wall missing, or is one way wrong?'
  return message('error', 'walls-double-back', room.walls[after]!.span, text, {
    related: [{ span: room.walls[before]!.span, text: 'The wall before it.' }],
  })
}

function wallsCross(
  room: Room,
  {
    first,
    second,
    corners,
  }: { readonly first: number; readonly second: number; readonly corners: Ring },
  style: UnitStyle,
): Message {
  const place = lengthWords(placeOn(first, second, corners), style)
  const text =
    `${wallWords(room, second)} crosses or touches ${wallWords(room, first)}, ${place} from the left of ${wallWords(room, first)}. ` +
    'Walls meet at their ends only: look at the ways and readings of these two and of those between.'
  return message('error', 'walls-cross', room.walls[second]!.span, text, {
    related: [{ span: room.walls[first]!.span, text: 'The other wall.' }],
  })
}

/** How far along the first wall the second one meets it. */
function placeOn(first: number, second: number, corners: Ring): number {
  const at = (corner: number) => corners[corner % corners.length]!
  const [a, b, c, d] = [at(first), at(first + 1), at(second), at(second + 1)]
  const along = directionOf(a, b)
  const found = meet(a, along, c, directionOf(c, d))
  if (found !== null) return Math.max(0, found[0])
  const ends = [dot(minus(c, a), along), dot(minus(d, a), along)].map((t) => Math.max(0, t))
  return Math.min(lengthOf(minus(b, a)), ...ends)
}

function runsLeft(room: Room): Message {
  const text = `The walls of ${room.name.text} run right to left. Stand in the room and list each next wall on the right.`
  return message('error', 'walls-run-left', room.name.span, text)
}
