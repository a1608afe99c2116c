import { message } from '../facts/message.ts'
import type { Span } from '../facts/span.ts'
import type { Entry, Name } from '../language/tree.ts'
import type { Nm } from '../units/length.ts'
import type { Binding } from './binding.ts'
import type { Given, Opening, Wall } from './job.ts'
import { type OnWallLine, onWallLines, type PartPlace, placeOnWall, wallOfLine } from './on-wall.ts'
import type { Outline } from './outline.ts'
import type { Parts } from './parts.ts'
import { lengthIn, measureOf, nameOf, phrase } from './phrases.ts'
import { sizeAllowed } from './sizes.ts'

const WORDS = ['door', 'opening', 'pass-through'] as const

/** What the lines of a room take from beyond it. */
export interface Beyond {
  /** How thick a wall is unless it says otherwise; null where nobody said. */
  readonly thickness: Given<Nm> | null
  /** Says it when a name is no room's; `outside` is one. */
  readonly isRoom: (name: Name) => boolean
}

/** The openings of a room: its lines in written order, then parts without a line, then open sides. */
export function openingsOf(
  room: Outline,
  beyond: Beyond,
  parts: Parts,
  binding: Binding,
): readonly Opening[] {
  const written = onWallLines(room, WORDS).map((found) =>
    openingOf(room, found, beyond, parts, binding),
  )
  const inParts = WORDS.flatMap((word) => parts.left(word)).map(({ part, wall }) =>
    openingInParts(room, wall, part, beyond),
  )
  const open = room.walls.filter((wall) => wall.openTo !== null)
  return [...written, ...inParts, ...open.map((wall) => openSide(room, wall, beyond))]
}

function openingOf(
  room: Outline,
  found: OnWallLine,
  beyond: Beyond,
  parts: Parts,
  binding: Binding,
): Opening {
  const { line } = found
  const kind = line.word as (typeof WORDS)[number]
  const wall = wallOfLine(room, found, binding)
  const width = measureOf(line, 'LENGTH')
  if (width !== null) sizeAllowed(width, kind, binding)
  const part = wall === null ? null : parts.take(wall, kind)
  const place = wall === null ? null : placeOnWall(room, { line, wall }, part, binding)
  const to = nameOf(line, 'to ROOM')
  if (to !== null) beyond.isRoom(to)
  const name = nameOf(line, 'called NAME')
  const sliding = phrase(line, 'sliding') !== null
  return {
    kind,
    label: name?.text ?? labelOf(kind, to),
    name,
    place,
    to,
    thickness: thicknessOf(line, room, wall, beyond),
    jambs: kind !== 'pass-through' && !(sliding && to?.key === 'outside'),
    sliding,
    trim: nameOf(line, 'with TRIM')?.text ?? null,
    span: line.line.span,
  }
}

function labelOf(kind: string, to: Name | null): string {
  return to === null ? kind : `${kind} to ${to.text}`
}

/** Its own, else its wall's, else the job's; null while it is asked or nobody says. */
export function thicknessOf(
  line: Entry,
  room: Outline,
  wall: number | null,
  beyond: Beyond,
): Given<Nm> | null {
  for (const said of wall === null ? [line] : [line, room.lines[wall]!]) {
    const own = phrase(said, 'LENGTH thick')
    if (own === null) continue
    const value = lengthIn(own.measures[0])
    return value === null ? null : { value, span: own.span }
  }
  return beyond.thickness
}

/** A part that stands for an opening of which no line says more. */
function openingInParts(room: Outline, wall: number, part: PartPlace, beyond: Beyond): Opening {
  const kind = part.of as (typeof WORDS)[number]
  return {
    kind,
    label: kind,
    name: null,
    place: { wall, from: 'left', distance: part.distance, width: part.width, far: null },
    to: null,
    thickness: thicknessOf(room.lines[wall]!, room, null, beyond),
    jambs: kind !== 'pass-through',
    sliding: false,
    trim: null,
    span: part.width.span,
  }
}

/** A side without a wall: it spans its line whole, and no thickness lies between unless it says so. */
function openSide(room: Outline, wall: Wall, beyond: Beyond): Opening {
  const own = phrase(room.lines[wall.index]!, 'LENGTH thick')
  const { reading } = wall
  beyond.isRoom(wall.openTo!)
  const distance = { ...reading, nm: 0, again: [], doubtful: false, about: false }
  return {
    kind: 'open side',
    label: wall.name?.text ?? `open to ${wall.openTo!.text}`,
    name: wall.name,
    place: { wall: wall.index, from: 'left', distance, width: reading, far: null },
    to: wall.openTo,
    thickness: { value: lengthIn(own?.measures[0]) ?? 0, span: own?.span ?? null },
    jambs: false,
    sliding: false,
    trim: null,
    span: wall.span,
  }
}

/** Says what an opening still lacks before the floor in it can be drawn. */
export function sayWhatOpeningLacks(opening: Opening, binding: Binding): void {
  const { kind, label, place, span } = opening
  if (kind === 'open side') return
  if (place !== null && opening.thickness === null) sayThickness(label, span, binding)
}

/** A wall's thickness is asked for, never assumed: rooms beyond would lie wrong by as much. */
export function sayThickness(label: string, span: Span, binding: Binding): void {
  const text =
    `How thick is the wall at the ${label}? ` +
    binding.samples('Write it here (4 1/2" thick), or once for the job: walls 4 1/2" thick.')
  binding.sayOnce('thickness', span, () => message('incomplete', 'thickness-not-said', span, text))
}
