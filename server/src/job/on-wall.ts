import type { Entry, Phrase } from '../language/tree.ts'
import type { Binding } from './binding.ts'
import type { OnWall, Part, Reading } from './job.ts'
import type { Outline } from './outline.ts'
import { nameOf, phrase } from './phrases.ts'
import { composed, mainReading, readingOf } from './reading.ts'
import { stillNeeds } from './still-needs.ts'
import { endNamed, wallNamed } from './wall-names.ts'
import { total } from './walls.ts'
import type { Tape } from './worth.ts'

/** A line that puts something on a wall, and the wall it stands under; null where it names one. */
export interface OnWallLine {
  readonly line: Entry
  readonly wall: number | null
}

const BOTH_JAMBS = 'LENGTH and LENGTH from left|right'
const PLACE = 'its place along the wall, such as 14" from left, as you face it'
const FROM_SIDE = 'LENGTH from left|right'
const FROM_WALL = 'LENGTH from WALL'

/**
 * The lines of a room that stand on walls: below their wall, or naming it. One below a line that could
 * not be read has no wall: it waits for that line, and slides to no other.
 */
export function onWallLines(room: Outline, words: readonly string[]): readonly OnWallLine[] {
  return room.block.under.flatMap((entry) => {
    const wall = room.indexOf.get(entry) ?? null
    return [entry, ...entry.under]
      .filter((line) => words.includes(line.word) && !line.broken)
      .map((line) => ({ line, wall: line === entry ? null : wall }))
  })
}

/** The wall that a line stands on, or null with a message (none while it waits for a broken line). */
export function wallOfLine(room: Outline, found: OnWallLine, binding: Binding): number | null {
  const name = nameOf(found.line, 'in WALL')
  if (name === null) return found.wall
  const use = { help: `Put the ${found.line.word} under its wall, or write: in ` }
  return wallNamed(room, name, binding, use)
}

/**
 * Where a line puts its thing on a wall. Without a distance it takes the wall's `part`, if there is
 * one for it; with neither, it has no place yet.
 */
export function placeOnWall(
  room: Outline,
  found: { readonly line: Entry; readonly wall: number },
  part: PartPlace | null,
  binding: Binding,
): OnWall | null {
  const { line, wall } = found
  const { tape } = room
  const both = phrase(line, BOTH_JAMBS)
  if (both !== null) return betweenJambs(line, wall, both, tape)
  const width = mainReading(line, tape)
  const said = distanceSaid(room, line, wall, binding)
  if (said !== null) return { wall, width, far: null, ...said }
  if (phrase(line, FROM_WALL) !== null) return null
  if (part === null) return stillNeeds(line, PLACE, binding)
  const wide = phrase(line, 'LENGTH') === null ? part.width : width
  return { wall, from: 'left', distance: part.distance, width: wide, far: null }
}

function distanceSaid(
  room: Outline,
  line: Entry,
  wall: number,
  binding: Binding,
): { readonly from: 'left' | 'right'; readonly distance: Reading } | null {
  const side = phrase(line, FROM_SIDE)
  const end = phrase(line, FROM_WALL)
  const measure = (side ?? end)?.measures[0]
  if (measure === undefined) return null
  const from = side !== null ? side.choices[0] : endNamed(room, wall, end!.names[0]!, binding)
  if (from !== 'left' && from !== 'right') return null
  return { from, distance: readingOf(measure, room.tape) }
}

/** Both jambs off one hook: the width is what lies between them, unless the line also reads it. */
function betweenJambs(line: Entry, wall: number, said: Phrase, tape: Tape): OnWall {
  const [first, second] = said.measures.map((measure) => readingOf(measure, tape))
  const swapped = first!.nm !== null && second!.nm !== null && first!.nm > second!.nm
  const [near, far] = swapped ? [second!, first!] : [first!, second!]
  const between = near.nm === null || far.nm === null ? null : far.nm - near.nm
  const width =
    phrase(line, 'LENGTH') === null
      ? composed(between, [near, far], `${near.text} to ${far.text}`, said.span)
      : mainReading(line, tape)
  return { wall, from: said.choices[0] as 'left' | 'right', distance: near, width, far }
}

/** A part of a wall that stands for an opening or a recess. */
export interface PartPlace {
  readonly of: NonNullable<Part['of']>
  readonly distance: Reading
  readonly width: Reading
}

/** What the parts of a wall stand for, each at the sum of the parts on its left. */
export function placesInParts(room: Outline, wall: number): readonly PartPlace[] {
  const { parts } = room.walls[wall]!
  const places: PartPlace[] = []
  let distance: Reading | null = null
  for (const { of, reading } of parts) {
    if (of !== null) places.push({ of, width: reading, distance: distance ?? atTheEnd(reading) })
    distance = distance === null ? reading : laidEnd(distance, reading)
  }
  return places
}

/** The wall's own end, where a first part begins: no tape was needed for it. */
function atTheEnd(part: Reading): Reading {
  return { ...part, nm: 0, text: '0"', about: false, doubtful: false, again: [] }
}

/** One reading laid end to end with the next. */
function laidEnd(before: Reading, next: Reading): Reading {
  const nm = total([before, next])
  return composed(nm, [before, next], `${before.text} + ${next.text}`, next.span)
}
