import { asBefore, type Shelf } from '../facts/kept.ts'
import type { Block, Entry, Name, Tree } from '../language/tree.ts'
import type { Binding } from './binding.ts'
import { baseAfter, type FileSays, fileSays, NOTHING_SAID, onlyOne } from './file-lines.ts'
import type { BaseSaid, Room } from './job.ts'
import { lostNames } from './lost-names.ts'
import { directory } from './names.ts'
import { type BlocksKept, boundAgain, itself, type Notes, noting } from './notes.ts'
import { type Outline, outlineOf } from './outline.ts'
import { type Around, roomOf } from './room.ts'
import {
  type Closet,
  closetsOf,
  isKnown,
  isRoom,
  outlineNamed,
  type RoomsKnown,
} from './rooms-known.ts'
import { openUnknownRooms } from './unknown-rooms.ts'
import { tapeAfter, touchingBase } from './worth.ts'

/** The rooms of a job, and how other lines find them. */
export interface BoundRooms {
  readonly rooms: readonly Room[]
  readonly known: RoomsKnown
  readonly byName: ReadonlyMap<string, Room>
  readonly closets: ReadonlyMap<string, Closet>
}

/** The job around a room while its second half is bound. */
interface RoomAround {
  readonly binding: Binding
  readonly known: RoomsKnown
}

/** Rooms of earlier runs, and what their files said for them. */
export interface RoomsKept {
  readonly says: Shelf<string, FileSays>
  readonly outlines: BlocksKept<Binding, ReturnType<typeof begun>>
  readonly rooms: BlocksKept<RoomAround, Room>
}

/** A room's block and what the lines of its file say for it. */
interface Declared {
  readonly name: Name
  readonly block: Block
  readonly says: FileSays
}

/** Binds all rooms: first the walls of each, for others may name them, then everything else. */
export function bindRooms(files: readonly Tree[], binding: Binding, kept?: RoomsKept): BoundRooms {
  const declared = directory('room', roomBlocks(files, binding, kept), binding)
  const outlines = new Map<string, Outline>()
  const bases = new Map<string, BaseSaid | null>()
  for (const [key, { block, name, says }] of declared) {
    const before = { given: [says], now: binding }
    const { base, outline } = boundAgain(kept?.outlines, block, before, (notes) =>
      begun(block, name, says, noting(notes, binding, itself)),
    )
    bases.set(key, base)
    outlines.set(key, outline)
  }
  const unknown = openUnknownRooms(binding)
  const known: RoomsKnown = { outlines, isLost: lostNames(files), unknown, named: new Set() }
  const rooms = [...outlines].map(([key, outline]) => {
    const { says, block } = declared.get(key)!
    const base = bases.get(key)!
    const before = { given: [outline, says], now: { binding, known } }
    return boundAgain(kept?.rooms, block, before, (notes) => {
      const around = {
        thickness: says.thickness,
        base,
        ...roomsBeyond(outline.name, notes, before.now),
      }
      return roomOf(outline, around, noting(notes, before.now, bindingOf))
    })
  })
  const byName = new Map(rooms.map((room) => [room.name.key, room]))
  return { rooms, known, byName, closets: closetsOf(rooms, binding) }
}

/** The first half of a room: the base and the tape in force, and its walls. */
function begun(block: Block, name: Name, says: FileSays, binding: Binding) {
  const base = baseAfter(says.base, roomLine(block, 'base', binding), binding)
  const tape = tapeAfter(says.tape, roomLine(block, 'tape', binding), binding)
  return { base, outline: outlineOf(block, name, touchingBase(tape, base), binding) }
}

/** How the lines of a room, the holder, look up others; noted as far as they find them. */
function roomsBeyond(
  holder: Name,
  notes: Notes<RoomAround> | null,
  now: RoomAround,
): Pick<Around, 'isRoom' | 'outline'> {
  const { known } = now
  const isThere = (name: Name) => isRoom(known, name, holder)
  const wallsOf = (name: Name) => outlineNamed(known, name, holder)
  if (notes === null) return { isRoom: isThere, outline: wallsOf }
  const note = (name: Name, question: (now: RoomAround) => unknown): void => {
    if (!isKnown(known, name)) notes.spoil()
    notes.ask(now, question)
    notes.later(nameIt(name.key))
  }
  return {
    isRoom: (name) => {
      note(name, isKnownNow(name))
      return isThere(name)
    },
    outline: (name) => {
      note(name, outlineNow(name.key))
      return wallsOf(name)
    },
  }
}

// Out here they hold on to no run: see the notes.

const bindingOf = ({ binding }: RoomAround): Binding => binding

const isKnownNow = (name: Name) => (now: RoomAround) => isKnown(now.known, name)

const outlineNow = (key: string) => (now: RoomAround) => now.known.outlines.get(key)

const nameIt = (key: string) => (now: RoomAround) => now.known.named.add(key)

/** A file says for its own rooms what it says; where it is silent the root speaks. */
function roomBlocks(
  files: readonly Tree[],
  binding: Binding,
  kept: RoomsKept | undefined,
): readonly Declared[] {
  let root = NOTHING_SAID
  return files.flatMap((tree, index) => {
    const says = asBefore(kept?.says, tree.file, fileSays(tree, root, binding))
    if (index === 0) root = says
    return tree.blocks.flatMap((block) =>
      block.word === 'room' && block.name !== null ? [{ name: block.name, block, says }] : [],
    )
  })
}

function roomLine(block: Block, word: string, binding: Binding): Entry | null {
  return onlyOne(
    block.under.filter((entry) => entry.word === word && !entry.broken),
    binding,
  )
}
