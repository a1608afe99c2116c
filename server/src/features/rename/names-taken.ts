import type { Span } from '../../facts/span.ts'
import { fileName } from '../../job/includes.ts'
import type { Room } from '../../job/job.ts'
import { keyOf } from '../../language/name.ts'
import type { Measured } from '../../report/compiled.ts'
import { jobIndex } from '../names/job-index.ts'
import type { Thing } from '../names/thing.ts'
import { lineAt } from '../place/line-at.ts'

/** Why a thing of a job cannot have a name: another one has it. Null where it is free. */
export function taken(measured: Measured, thing: Thing, name: string): string | null {
  const found = holderOf(measured, thing, name) ?? closetsHolder(measured, thing, name)
  if (found === null) return null
  const where = placeInWords(measured, found.span)
  return `${found.name} is already the name of ${found.what}, on ${where}. Nothing was changed.`
}

interface Holder {
  /** The name that it has, as it was asked for. */
  readonly name: string
  readonly what: string
  readonly span: Span
}

function holderOf(measured: Measured, thing: Thing, name: string): Holder | null {
  switch (thing.kind) {
    case 'room':
    case 'closet':
      return roomCalled(measured, name)
    case 'product':
    case 'floor':
    case 'prices': {
      const block = jobIndex(measured).blocks.get(thing.kind)?.get(keyOf(name))
      const kind = thing.kind === 'prices' ? 'price book' : thing.kind
      return block === undefined ? null : { name, what: `another ${kind}`, span: block.line.span }
    }
    case 'wall':
      return wallCalled(thing.room, name)
    case 'corner':
      return cornerCalled(thing.room, name)
    case 'opening':
      return openingCalled(measured, thing, name)
    default:
      return null
  }
}

/** A closet without a name of its own is called by its room, and changes its name with it. */
function closetsHolder(measured: Measured, thing: Thing, name: string): Holder | null {
  if (thing.kind !== 'room') return null
  const goesByRoom = `${thing.room.name.text} closet`
  const has = thing.room.recesses.some(({ label }) => label === goesByRoom)
  return has ? roomCalled(measured, `${name} closet`) : null
}

/** Rooms and closets share their names: a floor lists both. */
function roomCalled(measured: Measured, name: string): Holder | null {
  const { rooms, closets } = jobIndex(measured)
  const room = rooms.get(keyOf(name))
  if (room !== undefined) return { name, what: 'another room', span: room.span }
  const closet = closets.get(keyOf(name))
  return closet === undefined ? null : { name, what: 'a closet', span: closet.recess.span }
}

function wallCalled({ walls, name: room }: Room, name: string): Holder | null {
  const wall = walls.find((one) => one.name?.key === keyOf(name))
  return wall === undefined ? null : { name, what: `another wall of ${room.text}`, span: wall.span }
}

function cornerCalled({ corners, name: room }: Room, name: string): Holder | null {
  const corner = corners.find((one) => one.name.key === keyOf(name))
  if (corner === undefined) return null
  return { name, what: `another corner of ${room.text}`, span: corner.name.span }
}

/** In neither of the rooms that it joins may another opening have the name. */
function openingCalled(
  measured: Measured,
  { room, opening }: Extract<Thing, { kind: 'opening' }>,
  name: string,
): Holder | null {
  const beyond = jobIndex(measured).rooms.get(opening.to?.key ?? '')
  for (const one of beyond === undefined ? [room] : [room, beyond]) {
    const other = one.openings.find((found) => found.name?.key === keyOf(name))
    if (other !== undefined) {
      return { name, what: `another opening of ${one.name.text}`, span: other.span }
    }
  }
  return null
}

function placeInWords({ trees, root }: Measured, { file, start }: Span): string {
  const tree = trees.find((one) => one.file === file)!
  return `line ${lineAt(tree, start).number} of ${fileName(file, root)}`
}
