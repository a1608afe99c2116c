import type { Thing } from '../names/thing.ts'
import type { Asked } from './asked.ts'
import { checkParts } from './check.ts'
import { cornerParts } from './corner.ts'
import { floorParts } from './floor.ts'
import { obstacleParts } from './obstacle.ts'
import { openingParts } from './opening.ts'
import { type HoverPart, text, title } from './parts.ts'
import { productParts } from './product.ts'
import { recessParts } from './recess.ts'
import { roomParts } from './room.ts'
import { acceptParts } from './settled.ts'
import { wallParts } from './wall.ts'

/** A thing of the job with all its numbers. */
export function thingParts(asked: Asked, thing: Thing): readonly HoverPart[] {
  switch (thing.kind) {
    case 'room':
      return roomParts(asked, thing.room)
    case 'wall':
      return wallParts(asked, thing.room, thing.wall)
    case 'corner':
      return cornerParts(thing.room, thing.corner)
    case 'opening':
      return openingParts(asked, thing.room, thing.opening)
    case 'closet':
    case 'recess':
      return recessParts(asked, thing.room, thing.recess)
    case 'obstacle':
      return obstacleParts(thing.room, thing.obstacle)
    case 'check':
      return checkParts(asked, thing.room, thing.check)
    case 'product':
      return productParts(asked, thing.block, thing.product)
    case 'floor':
      return floorParts(asked, thing.floor)
    case 'code':
      return acceptParts(asked, thing.code)
    case 'prices':
      return [
        title(thing.block.name?.text ?? ''),
        text('A price book: read and kept as it stands.'),
      ]
    case 'outside':
      return [title('outside'), text('What lies beyond every room.')]
    case 'stair':
      return [title('stair'), text('The side of the room where a stair begins.')]
    case 'trim':
      return [title(thing.key), text('A trim piece: it is known by this name alone.')]
  }
}
