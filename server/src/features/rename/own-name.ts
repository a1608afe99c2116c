import type { Thing } from '../names/thing.ts'

/** The name that a thing is given, or that follows from its room; null where it goes by its way or its kind. */
export function ownName(thing: Thing): string | null {
  switch (thing.kind) {
    case 'room':
    case 'product':
    case 'floor':
    case 'prices':
      return thing.block.name?.text ?? null
    case 'closet':
      return thing.recess.label
    case 'wall':
      return thing.wall.name?.text ?? null
    case 'corner':
      return thing.name?.text ?? null
    case 'opening':
      return thing.opening.name?.text ?? null
    case 'recess':
      return thing.recess.label === thing.recess.kind ? null : thing.recess.label
    case 'obstacle':
      return thing.obstacle.label === thing.obstacle.kind ? null : thing.obstacle.label
    default:
      return null
  }
}
