import type { Message } from '../facts/message.ts'
import type { Tree } from '../language/tree.ts'
import { acceptsOf } from './accepts.ts'
import { sayWhatIsAsked } from './asked.ts'
import { openBinding } from './binding.ts'
import { bindFloors, type FloorsKept } from './floors.ts'
import { headOf } from './head.ts'
import { holdsOf } from './holds.ts'
import type { Job } from './job.ts'
import { pricesOf } from './prices.ts'
import { bindProducts, type ProductsKept } from './products.ts'
import { bindRooms, type RoomsKept } from './rooms.ts'
import { sayUnknownRooms } from './rooms-known.ts'
import { saySettingsTaken, settingsOf, unitsOf } from './settings.ts'

/** Blocks as earlier runs bound them. */
export interface JobKept {
  readonly rooms: RoomsKept
  readonly products: ProductsKept
  readonly floors: FloorsKept
}

/**
 * What the texts of a job say, on one page: names bound over all files, readings typed, lines held
 * against one another; nothing is computed from them. `trees` are the root and all that it includes
 * (see `reach`). Never throws: what cannot be bound is a message and costs what hangs on it alone. What
 * is `kept` of earlier runs is taken for blocks that are the same and ask for the same.
 */
export function bind(
  trees: readonly Tree[],
  root: string,
  kept?: JobKept,
): { readonly job: Job; readonly messages: readonly Message[] } {
  const files = rootFirst(trees, root)
  const own = files.find((tree) => tree.file === root)
  const units = unitsOf(own)
  const binding = openBinding(files, root, units)
  const blocks = files.flatMap((tree) => tree.blocks).filter(({ word }) => BLOCKS.includes(word))

  const head = headOf(own, binding)
  const settings = settingsOf(files, binding)
  const rooms = bindRooms(files, binding, kept?.rooms)
  const products = bindProducts(blocks, binding, kept?.products)
  const floors = bindFloors(blocks, rooms, products, binding, kept?.floors)
  sayUnknownRooms(rooms.known)
  if (floors[0] !== undefined) saySettingsTaken(settings, floors[0].span, binding)
  const job: Job = {
    ...head,
    units,
    ...settings,
    rooms: rooms.rooms,
    products: products.products,
    floors,
    prices: pricesOf(blocks, binding),
    holds: holdsOf(blocks, binding),
    accepts: acceptsOf(blocks, binding),
  }
  const said = binding
    .messages()
    .flatMap(({ span, related }) => [span, ...related.map((r) => r.span)])
  sayWhatIsAsked(
    files.flatMap((tree) => tree.blocks),
    said,
    binding,
  )
  return { job, messages: binding.messages() }
}

const BLOCKS = ['job', 'room', 'product', 'floor', 'prices']

function rootFirst(trees: readonly Tree[], root: string): readonly Tree[] {
  return [
    ...trees.filter(({ file }) => file === root),
    ...trees.filter(({ file }) => file !== root),
  ]
}
