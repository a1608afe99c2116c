import { message } from '../facts/message.ts'
import type { Binding } from './binding.ts'
import type { Recess } from './job.ts'
import { type OnWallLine, onWallLines, type PartPlace, placeOnWall, wallOfLine } from './on-wall.ts'
import { type Beyond, sayThickness, thicknessOf } from './openings.ts'
import type { Outline } from './outline.ts'
import type { Parts } from './parts.ts'
import { lengthIn, measureOf, nameOf } from './phrases.ts'
import { roleReading, sizeReading } from './reading.ts'
import { sizeAllowed } from './sizes.ts'

const WORDS = ['closet', 'alcove', 'hearth'] as const

/** The closets, alcoves and hearths of a room, in written order, then parts without a line. */
export function recessesOf(
  room: Outline,
  beyond: Beyond,
  parts: Parts,
  binding: Binding,
): readonly Recess[] {
  const written = onWallLines(room, WORDS).map((found) =>
    recessOf(room, found, beyond, parts, binding),
  )
  const inParts = WORDS.flatMap((word) => parts.left(word)).map(({ part, wall }) =>
    recessInParts(room, wall, part, beyond),
  )
  return [...written, ...inParts]
}

function recessOf(
  room: Outline,
  found: OnWallLine,
  beyond: Beyond,
  parts: Parts,
  binding: Binding,
): Recess {
  const { line } = found
  const kind = line.word as Recess['kind']
  for (const form of ['LENGTH', 'LENGTH deep', 'LENGTH inside']) {
    const measure = measureOf(line, form)
    if (measure !== null) sizeAllowed(measure, kind, binding)
  }
  const wall = wallOfLine(room, found, binding)
  const part = wall === null ? null : parts.take(wall, kind)
  return {
    kind,
    label: nameOf(line, 'called NAME')?.text ?? labelOf(kind, room),
    place: wall === null ? null : placeOnWall(room, { line, wall }, part, binding),
    deep: sizeReading(line, 'LENGTH deep', room.tape),
    inside: sizeReading(line, 'LENGTH inside', room.tape),
    leftReturn: roleReading(line, 'LENGTH left return', room.tape),
    rightReturn: roleReading(line, 'LENGTH right return', room.tape),
    thickness: kind === 'closet' ? thicknessOf(line, room, wall, beyond) : null,
    gap: lengthIn(measureOf(line, 'LENGTH gap')),
    span: line.line.span,
  }
}

function recessInParts(room: Outline, wall: number, part: PartPlace, beyond: Beyond): Recess {
  const kind = part.of as Recess['kind']
  return {
    kind,
    label: labelOf(kind, room),
    place: { wall, from: 'left', distance: part.distance, width: part.width, far: null },
    deep: null,
    inside: null,
    leftReturn: null,
    rightReturn: null,
    thickness: kind === 'closet' ? thicknessOf(room.lines[wall]!, room, null, beyond) : null,
    gap: null,
    span: part.width.span,
  }
}

/** A closet is a room to take or to drop, and so has a name: "bedroom 1 closet". */
function labelOf(kind: Recess['kind'], room: Outline): string {
  return kind === 'closet' ? `${room.name.text} closet` : kind
}

/** Says what a recess still lacks before it can be drawn. */
export function sayWhatRecessLacks(
  { kind, label, place, ...recess }: Recess,
  binding: Binding,
): void {
  if (recess.deep === null) {
    const text = `How deep is the ${label}? Write it as in ${binding.samples('2\' 0" deep')}.`
    binding.say(message('incomplete', 'depth-not-said', recess.span, text))
  }
  if (kind === 'closet' && place !== null && recess.thickness === null) {
    sayThickness(label, recess.span, binding)
  }
}
