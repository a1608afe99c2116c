import { once } from '../facts/once.ts'
import type { Block } from '../language/tree.ts'
import type { Binding } from './binding.ts'
import { type FloorsAround, floorOf } from './floor.ts'
import type { LaidPlace } from './floor-rooms.ts'
import type { Floor } from './job.ts'
import { allLines } from './lines.ts'
import { directory, type Named } from './names.ts'
import { type BlocksKept, boundAgain, type Notes, noting } from './notes.ts'
import type { BoundProducts } from './products.ts'
import type { BoundRooms } from './rooms.ts'

/** Binds all floors in written order: a room that two of them list belongs to the first. */
export function bindFloors(
  blocks: readonly Block[],
  rooms: BoundRooms,
  products: BoundProducts,
  binding: Binding,
  kept?: FloorsKept,
): readonly Floor[] {
  const named = blocks.flatMap((block) =>
    block.word === 'floor' && block.name !== null ? [{ block, name: block.name }] : [],
  )
  const around: FloorsAround = {
    known: rooms.known,
    house: { rooms: rooms.byName, closets: rooms.closets },
    layable: new Map<string, Named>([...rooms.byName, ...rooms.closets]),
    laidIn: new Map(),
    products: products.declared,
  }
  return [...directory('floor', named, binding).values()].map(({ block, name }) => {
    const now = { binding, around }
    const given = kept === undefined ? [] : namesIn(block).flatMap((key) => meant(key, around))
    return boundAgain(kept, block, { given, now }, (notes) =>
      notes === null
        ? floorOf(block, name, around, binding)
        : floorOf(block, name, notedAround(notes, now), noting(notes, now, bindingOf)),
    )
  })
}

/** The job around a floor while it is bound. */
interface FloorAround {
  readonly binding: Binding
  readonly around: FloorsAround
}

/** Floors of earlier runs. */
export type FloorsKept = BlocksKept<FloorAround, Floor>

/** The keys of all names that a floor's lines hold. */
const namesIn = once((block: Block): readonly string[] =>
  allLines(block.under).flatMap(({ phrases }) =>
    phrases.flatMap(({ names }) => names.map(({ key }) => key)),
  ),
)

/** All that a name may mean to a floor: what its lines look up, they look up by such names. */
function meant(key: string, { known, house, laidIn, products }: FloorsAround): readonly unknown[] {
  const room = house.rooms.get(key)
  const other = known.outlines.get(key) ?? house.closets.get(key)?.recess
  return [room ?? other, laidIn.get(key)?.room, products.has(key)]
}

// Out here they hold on to no run: see the notes.

const bindingOf = ({ binding }: FloorAround): Binding => binding

const nameIt = (key: string) => (now: FloorAround) => now.around.known.named.add(key)

const layIn = (key: string, place: LaidPlace) => (now: FloorAround) =>
  now.around.laidIn.set(key, place)

/** What a floor does to the job around it is noted; where a name is no room's, it is bound anew. */
function notedAround(notes: Notes<FloorAround>, now: FloorAround): FloorsAround {
  const { around } = now
  const { known, laidIn } = around
  return {
    ...around,
    known: {
      ...known,
      isLost: (key) => {
        notes.spoil()
        return known.isLost(key)
      },
      named: {
        has: (key) => known.named.has(key),
        add: (key) => notes.step(now, nameIt(key)),
      },
    },
    laidIn: {
      get: (key) => laidIn.get(key),
      set: (key, place) => notes.step(now, layIn(key, place)),
    },
  }
}
