import type { Span } from '../../facts/span.ts'
import type { Check, Floor, Obstacle, Opening, Product, Recess, Room, Wall } from '../../job/job.ts'
import type { Block, Name } from '../../language/tree.ts'

/** Something of the job that a name means or a line tells. */
export type Thing =
  /** A room with its block; the block of a room is where its name is given. */
  | { readonly kind: 'room'; readonly block: Block; readonly room: Room }
  | { readonly kind: 'closet'; readonly room: Room; readonly recess: Recess }
  | { readonly kind: 'wall'; readonly room: Room; readonly wall: Wall }
  /** Where wall `corner` begins; `name` is where it was given one. */
  | {
      readonly kind: 'corner'
      readonly room: Room
      readonly corner: number
      readonly name: Name | null
    }
  | { readonly kind: 'opening'; readonly room: Room; readonly opening: Opening }
  | { readonly kind: 'recess'; readonly room: Room; readonly recess: Recess }
  | { readonly kind: 'obstacle'; readonly room: Room; readonly obstacle: Obstacle }
  | { readonly kind: 'check'; readonly room: Room; readonly check: Check }
  /** `product` is null while its block does not tell it whole. */
  | { readonly kind: 'product'; readonly block: Block; readonly product: Product | null }
  | { readonly kind: 'floor'; readonly block: Block; readonly floor: Floor }
  | { readonly kind: 'prices'; readonly block: Block }
  /** What lies beyond every room. */
  | { readonly kind: 'outside' }
  /** The side of a room where a stair begins. */
  | { readonly kind: 'stair' }
  /** A trim piece: known by its name alone. */
  | { readonly kind: 'trim'; readonly key: string }
  /** The code of a message. */
  | { readonly kind: 'code'; readonly code: string }

/**
 * Where a thing is told: at its name where it has one of its own, else its line; null for what no line
 * of the job tells.
 */
export function definitionOf(thing: Thing): Span | null {
  switch (thing.kind) {
    case 'room':
    case 'product':
    case 'floor':
    case 'prices':
      return thing.block.name?.span ?? thing.block.line.span
    case 'wall':
      return thing.wall.name?.span ?? thing.wall.span
    case 'corner':
      return thing.name?.span ?? thing.room.walls[thing.corner]?.span ?? null
    case 'opening':
      return thing.opening.name?.span ?? thing.opening.span
    case 'closet':
    case 'recess':
      return thing.recess.span
    case 'obstacle':
      return thing.obstacle.span
    case 'check':
      return thing.check.span
    default:
      return null
  }
}
