import type { Block, Entry, Name, Tree } from '../language/tree.ts'
import type { Binding } from './binding.ts'
import { baseAfter, type FileSays, fileSays, NOTHING_SAID, onlyOne } from './file-lines.ts'
import type { BaseSaid, Room } from './job.ts'
import { lostNames } from './lost-names.ts'
import { directory } from './names.ts'
import { type Outline, outlineOf } from './outline.ts'
import { roomOf } from './room.ts'
import { type Closet, closetsOf, isRoom, outlineNamed, type RoomsKnown } from './rooms-known.ts'
import { openUnknownRooms } from './unknown-rooms.ts'
import { tapeAfter, touchingBase } from './worth.ts'

/** The rooms of a job, and how other lines find them. */
export interface BoundRooms {
  readonly rooms: readonly Room[]
  readonly known: RoomsKnown
  readonly byName: ReadonlyMap<string, Room>
  readonly closets: ReadonlyMap<string, Closet>
}

/** A room's block and what the lines of its file say for it. */
interface Declared {
  readonly name: Name
  readonly block: Block
  readonly says: FileSays
}

/** Binds all rooms: first the walls of each, for others may name them, then everything else. */
export function bindRooms(files: readonly Tree[], binding: Binding): BoundRooms {
  const declared = directory('room', roomBlocks(files, binding), binding)
  const outlines = new Map<string, Outline>()
  const bases = new Map<string, BaseSaid | null>()
  for (const [key, { block, name, says }] of declared) {
    const base = baseAfter(says.base, roomLine(block, 'base', binding), binding)
    const tape = tapeAfter(says.tape, roomLine(block, 'tape', binding), binding)
    bases.set(key, base)
    outlines.set(key, outlineOf(block, name, touchingBase(tape, base), binding))
  }
  const unknown = openUnknownRooms(binding)
  const known: RoomsKnown = { outlines, isLost: lostNames(files), unknown, named: new Set() }
  const rooms = [...outlines].map(([key, outline]) => {
    const { says } = declared.get(key)!
    const around = {
      thickness: says.thickness,
      isRoom: (name: Name) => isRoom(known, name),
      outline: (name: Name) => outlineNamed(known, name),
      base: bases.get(key)!,
    }
    return roomOf(outline, around, binding)
  })
  const byName = new Map(rooms.map((room) => [room.name.key, room]))
  return { rooms, known, byName, closets: closetsOf(rooms, binding) }
}

/** A file says for its own rooms what it says; where it is silent the root speaks. */
function roomBlocks(files: readonly Tree[], binding: Binding): readonly Declared[] {
  let root = NOTHING_SAID
  return files.flatMap((tree, index) => {
    const says = fileSays(tree, root, binding)
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
