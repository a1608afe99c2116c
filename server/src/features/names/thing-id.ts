import { keyOf } from '../../language/name.ts'
import { definitionOf, type Thing } from './thing.ts'

/** What two uses of one thing share, and no other thing has; null for what is no thing of the job. */
export function idOf(thing: Thing): string | null {
  switch (thing.kind) {
    case 'outside':
    case 'stair':
      return null
    case 'trim':
      return `trim ${thing.key}`
    case 'code':
      return `code ${thing.code}`
    case 'opening':
      return openingId(thing)
    case 'corner':
      return `corner ${thing.corner} of ${thing.room.name.key}`
    case 'wall':
      return wallId(thing)
    default: {
      const at = definitionOf(thing)
      return at === null ? null : `${thing.kind} ${at.start} of ${at.file}`
    }
  }
}

function wallId({ room, wall }: Pick<Extract<Thing, { kind: 'wall' }>, 'room' | 'wall'>): string {
  return `wall ${wall.index} of ${room.name.key}`
}

/** A doorway has a line in both rooms: by its name and its rooms it is one. A side without a wall is its wall. */
function openingId({ room, opening }: Extract<Thing, { kind: 'opening' }>): string {
  if (opening.kind === 'open side' && opening.place !== null) {
    return wallId({ room, wall: room.walls[opening.place.wall]! })
  }
  const { name, to, span } = opening
  if (name === null || to === null || to.key === 'outside') {
    return `opening ${span.start} of ${span.file}`
  }
  const sides = [room.name.key, to.key].sort()
  return `opening ${name.key} between ${sides.join(', ')}`
}

/** The keys of the names by which a line may mean a thing: its own, and for walls and corners their ways. */
export function keysOf(thing: Thing): readonly string[] {
  switch (thing.kind) {
    case 'room':
      return [thing.room.name.key]
    case 'closet':
      return [keyOf(thing.recess.label)]
    case 'wall':
      return thing.wall.name === null ? [wayOf(thing)] : [thing.wall.name.key, wayOf(thing)]
    case 'corner': {
      const ways = cornerWays(thing)
      return thing.name === null ? ways : [thing.name.key, ...ways]
    }
    case 'opening':
      return [thing.opening.name?.key ?? '']
    case 'recess':
      return [keyOf(thing.recess.label)]
    case 'obstacle':
      return [keyOf(thing.obstacle.label)]
    case 'product':
    case 'floor':
    case 'prices':
      return [thing.block.name?.key ?? '']
    case 'trim':
      return [thing.key]
    case 'code':
      return [thing.code.replaceAll('-', ' '), thing.code]
    default:
      return []
  }
}

function wayOf({ wall }: Pick<Extract<Thing, { kind: 'wall' }>, 'wall'>): string {
  return wall.heading.kind === 'way' ? wall.heading.way : ''
}

function cornerWays({ room, corner }: Extract<Thing, { kind: 'corner' }>): readonly string[] {
  const [before, after] = [room.walls.at(corner - 1), room.walls[corner]]
  if (before === undefined || after === undefined) return []
  const [one, other] = [wayOf({ wall: before }), wayOf({ wall: after })]
  return [`${one}-${other}`, `${other}-${one}`]
}
