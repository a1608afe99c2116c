import { message } from '../facts/message.ts'
import type { Entry, Name } from '../language/tree.ts'
import { EDGE_KINDS } from '../language/words.ts'
import type { Binding } from './binding.ts'
import { type House, isOneDoorway } from './doorways.ts'
import type { EdgeKind, EdgeSaid, Floor, FloorEdge } from './job.ts'
import { lengthIn, measureOf, nameOf, phrase } from './phrases.ts'
import { isRoom, outlineNamed, type RoomsKnown } from './rooms-known.ts'
import { said } from './sentence.ts'
import { stillNeeds } from './still-needs.ts'
import { wallNamed } from './wall-names.ts'

/** What the lines of a floor refer to. */
export interface FloorScope {
  readonly floor: Name
  /** Keys of the rooms and closets that it is laid in. */
  readonly inside: ReadonlySet<string>
  /** All names on its list could be read; else a room may be inside that is not in `inside`. */
  readonly whole: boolean
  readonly known: RoomsKnown
  readonly house: House
}

/** A wall of a room of the floor ("north of hall"), or null with a message. */
export function wallOfFloor(
  scope: FloorScope,
  wall: Name,
  room: Name,
  binding: Binding,
): { readonly room: Name; readonly wall: number } | null {
  const outline = outlineNamed(scope.known, room)
  if (outline === null || !isInside(scope, room, binding)) return null
  const index = wallNamed(outline, wall, binding)
  return index === null ? null : { room: outline.name, wall: index }
}

function isInside(scope: FloorScope, room: Name, binding: Binding): boolean {
  if (scope.inside.has(room.key) || !scope.whole) return true
  const text = `${said(room.text)} is not among the rooms of floor ${scope.floor.text}. Name one that is, or add it to the list.`
  binding.say(message('error', 'room-not-in-floor', room.span, text))
  return false
}

/** A `break` line: the run is parted in a doorway between two rooms of the floor. */
export function breakOf(
  line: Entry,
  scope: FloorScope,
  binding: Binding,
): Floor['breaks'][number] | null {
  const ends = doorwaySaid(line, scope, binding)
  if (ends === null) return null
  const { from, to, called } = ends
  if (scope.whole && !(scope.inside.has(from.key) && scope.inside.has(to.key))) {
    const text = `A break parts the run between two rooms of one floor, and ${outsideOf(scope, [from, to])} is not in this one. For the rim write: edge ${from.text} to ${to.text}.`
    binding.say(message('error', 'break-at-rim', line.line.span, text))
    return null
  }
  return { from, to, called, trim: nameOf(line, 'with TRIM')?.text ?? null, span: line.line.span }
}

function outsideOf(scope: FloorScope, names: readonly Name[]): string {
  return said(names.find((name) => !scope.inside.has(name.key))!.text)
}

/** An `edge` line: what the rim meets at a wall, a doorway or a stair. */
export function edgeOf(line: Entry, scope: FloorScope, binding: Binding): FloorEdge | null {
  const where = placeOf(line, scope, binding)
  if (where === null) return null
  const edge = edgeSaid(line)
  if (edge.kind !== null || edge.trim !== null || saysGap(line)) return { ...edge, where }
  return stillNeeds(
    line,
    'what the floor meets there, such as tub, with end cap, or 3/8" gap',
    binding,
  )
}

function edgeSaid(line: Entry): EdgeSaid {
  return {
    kind: (phrase(line, EDGE_KINDS)?.choices[0] ?? null) as EdgeKind | null,
    gap: lengthIn(measureOf(line, 'LENGTH gap')),
    trim: nameOf(line, 'with TRIM')?.text ?? null,
    span: line.line.span,
  }
}

/** A gap that is still asked for is said too. */
function saysGap(line: Entry): boolean {
  return measureOf(line, 'LENGTH gap') !== null
}

function placeOf(line: Entry, scope: FloorScope, binding: Binding): FloorEdge['where'] | null {
  const [wall, of] = phrase(line, 'WALL of ROOM')?.names ?? []
  if (wall !== undefined && of !== undefined) {
    const found = wallOfFloor(scope, wall, of, binding)
    return found === null ? null : { kind: 'wall', ...found }
  }
  const [from, to] = phrase(line, 'ROOM to ROOM')?.names ?? []
  if (from === undefined || to === undefined) {
    return stillNeeds(line, 'its place, such as hall to bath, or north of hall', binding)
  }
  if (to.key === 'stair') return stairOf(from, to, scope, binding)
  const ends = doorwaySaid(line, scope, binding)
  if (ends === null) return null
  if (scope.inside.has(ends.from.key) && scope.inside.has(ends.to.key)) {
    const text = `The run goes through from ${said(from.text)} to ${said(to.text)}: both are in this floor. To part it there write: break ${from.text} to ${to.text}.`
    binding.say(message('error', 'edge-inside-floor', line.line.span, text))
    return null
  }
  return { kind: 'doorway', ...ends }
}

/** The doorway of a "ROOM to ROOM", told from the room that lies in the floor. */
function doorwaySaid(
  line: Entry,
  scope: FloorScope,
  binding: Binding,
): { readonly from: Name; readonly to: Name; readonly called: Name | null } | null {
  const [first, second] = phrase(line, 'ROOM to ROOM')?.names ?? []
  if (first === undefined || second === undefined) return null
  const [from, to] = scope.inside.has(first.key) ? [first, second] : [second, first]
  const called = nameOf(line, 'called NAME')
  if (!isKnown(from, scope) || !isKnown(to, scope)) return null
  if (!isInside(scope, from, binding)) return null
  return isOneDoorway(scope.house, from, to, called, binding) ? { from, to, called } : null
}

function isKnown(name: Name, scope: FloorScope): boolean {
  return scope.house.closets.has(name.key) || isRoom(scope.known, name)
}

/** The side of a room where a stair begins. */
function stairOf(
  from: Name,
  stair: Name,
  scope: FloorScope,
  binding: Binding,
): FloorEdge['where'] | null {
  const outline = outlineNamed(scope.known, from)
  if (outline === null || !isInside(scope, from, binding)) return null
  const steps = outline.walls.filter((wall) => wall.stair !== null)
  if (steps.length === 1) return { kind: 'wall', room: outline.name, wall: steps[0]!.index }
  if (outline.hasBrokenLine) return null
  const text =
    steps.length === 0
      ? `No side of ${said(from.text)} is a stair. Write on its wall: stair down.`
      : `${said(from.text)} has ${steps.length} stairs. Name the side instead, such as ${steps[0]!.label} of ${from.text}.`
  binding.say(message('error', 'stair-not-clear', stair.span, text))
  return null
}
