import type { Block, Entry } from '../../../server/src/language/tree.ts'
import type { Dice } from '../../generate/dice.ts'
import { blocksNamed, treeOf } from './edit.ts'
import { inPlaceOf } from './order.ts'

/** A wall with what stands under it, and the line that names the corner after it, if there is one. */
export interface WallGroup {
  readonly wall: Entry
  readonly corner: Entry | null
}

const WALL = /^((north|south)(-east|-west)?|east|west|slant)$/

export function isWall({ word }: Entry): boolean {
  return WALL.test(word)
}

/** The walls of a room in the order that they are told, and its other lines. */
export function groupsOf(room: Block): {
  readonly walls: readonly WallGroup[]
  readonly free: readonly Entry[]
} {
  const ring = room.under.filter((entry) => isWall(entry) || entry.word === 'corner')
  const walls = ring.flatMap((entry, i): WallGroup[] => {
    if (!isWall(entry)) return []
    const next = ring[(i + 1) % ring.length]!
    return [{ wall: entry, corner: next.word === 'corner' ? next : null }]
  })
  return { walls, free: room.under.filter((entry) => !ring.includes(entry)) }
}

/** Walls as lines again, the name of a corner before or after its wall. */
export function listed(
  walls: readonly WallGroup[],
  order: 'corner first' | 'corner last',
): readonly Entry[] {
  return walls.flatMap(({ wall, corner }) => {
    if (corner === null) return [wall]
    return order === 'corner first' ? [corner, wall] : [wall, corner]
  })
}

/** Each room told from another of its corners. */
export function fromOtherCorners(text: string, dice: Dice): string | null {
  const tree = treeOf(text)
  const rooms = blocksNamed(tree, 'room').filter((room) => groupsOf(room).walls.length > 1)
  const byTurn = rooms.some((room) =>
    room.under.some(({ phrases }) => phrases.some(({ form }) => form.startsWith('ANGLE'))),
  )
  if (byTurn || rooms.length === 0) return null
  return inPlaceOf(
    tree,
    rooms.flatMap((room) => room.under),
    rooms.flatMap((room) => {
      const { walls, free } = groupsOf(room)
      const first = dice.between(1, walls.length - 1)
      return [...listed([...walls.slice(first), ...walls.slice(0, first)], 'corner last'), ...free]
    }),
  )
}
