import type { Block } from '../language/tree.ts'
import type { Binding } from './binding.ts'
import { type FloorsAround, floorOf } from './floor.ts'
import type { Floor } from './job.ts'
import { directory, type Named } from './names.ts'
import type { BoundProducts } from './products.ts'
import type { BoundRooms } from './rooms.ts'

/** Binds all floors in written order: a room that two of them list belongs to the first. */
export function bindFloors(
  blocks: readonly Block[],
  rooms: BoundRooms,
  products: BoundProducts,
  binding: Binding,
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
  return [...directory('floor', named, binding).values()].map(({ block, name }) =>
    floorOf(block, name, around, binding),
  )
}
