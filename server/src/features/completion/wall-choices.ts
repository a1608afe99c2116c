import type { Room, Wall } from '../../job/job.ts'
import type { NameChoice, NamePlace } from './name-choice.ts'

/** The walls of a room by the names that are clear; on a line below a wall, those that meet it first. */
export function wallsOf(
  room: Room,
  { form, word, block, offset }: NamePlace,
): readonly NameChoice[] {
  const above = block.under.findLast(({ line }) => line.span.start < offset)
  const onWall = form === 'LENGTH from WALL' && WALL_THINGS.includes(word)
  const here = onWall ? room.walls.find(({ span }) => span.start === above?.line.span.start) : null
  const walls = here == null ? room.walls : meeting(room, here)
  const names = clearNames(room)
  return walls.flatMap((wall) => {
    const name = names.get(wall)
    return name === undefined ? [] : [{ name, kind: 'wall', detail: wallDetail(room, wall) }]
  })
}

const WALL_THINGS: readonly string[] = [
  'door',
  'opening',
  'pass-through',
  'closet',
  'alcove',
  'hearth',
]

function meeting({ walls }: Room, { index }: Wall): readonly Wall[] {
  const around = [walls.at(index - 1)!, walls[(index + 1) % walls.length]!]
  return [...new Set(around)].filter((wall) => wall.index !== index)
}

function wallDetail(room: Room, { reading }: Wall): string {
  const read = reading.nm === null ? 'still to be read' : `read ${reading.text}`
  return `A wall of ${room.name.text}, ${read}.`
}

/** What each wall of a room is called by: its own name, else its way while no other wall has it. */
export function clearNames({ walls }: Room): ReadonlyMap<Wall, string> {
  const facing = Map.groupBy(walls, wayOf)
  return new Map(
    walls.flatMap((wall): readonly (readonly [Wall, string])[] => {
      if (wall.name !== null) return [[wall, wall.name.text]]
      const way = wayOf(wall)
      return way !== '' && facing.get(way)!.length === 1 ? [[wall, way]] : []
    }),
  )
}

function wayOf({ heading }: Wall): string {
  return heading.kind === 'way' ? heading.way : ''
}

/** Corners that have a name, then those between two ways that no other corner has. */
export function cornersOf(room: Room): readonly NameChoice[] {
  const named = room.corners.map(({ name }) => name.text)
  const between = Map.groupBy(room.walls, ({ index }) => cornerWays(room, index))
  const clear = [...between].flatMap(([ways, walls]) =>
    ways !== null && walls.length === 1 ? [ways] : [],
  )
  const detail = `A corner of ${room.name.text}.`
  return [...named, ...clear].map((name) => ({ name, kind: 'corner', detail }))
}

/** `north-west` for the corner of north and west: north or south first. */
function cornerWays({ walls }: Room, index: number): string | null {
  const ways = [walls.at(index - 1)!, walls[index]!].map(wayOf)
  const first = ways.find((way) => way === 'north' || way === 'south')
  const second = ways.find((way) => way === 'east' || way === 'west')
  return first === undefined || second === undefined ? null : `${first}-${second}`
}
