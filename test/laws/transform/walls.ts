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

/** Each room told from another of its corners; one out of square lies on the plan by its first wall. */
export function fromOtherCorners(text: string, dice: Dice): string | null {
  const tree = treeOf(text)
  const rooms = blocksNamed(tree, 'room').filter(
    (room) =>
      groupsOf(room).walls.length > 1 && !room.under.some(({ word }) => word === 'out of square'),
  )
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

/** A room that nothing ties to the others and no floor lists, before all others. */
export function withRoomBefore(text: string): string | null {
  return withRoomAt(text, blocksNamed(treeOf(text), 'room')[0]?.line.span.start)
}

/** The same room after all others. */
export function withRoomBehind(text: string): string | null {
  return blocksNamed(treeOf(text), 'room').length === 0
    ? null
    : withRoomAt(`${text}\n`, text.length + 1)
}

function withRoomAt(text: string, at: number | undefined): string | null {
  if (at === undefined) return null
  return `${text.slice(0, at)}${SHED}${text.slice(at)}`
}

const SHED = `room garden shed
  north       3071 mm
  east        2203 mm
  south       3071 mm
  west        2203 mm

`
