import type { Dice } from './dice.ts'
import {
  type Angles,
  type Fixture,
  type House,
  type Obstacle,
  overlap,
  type Room,
  squareWalls,
  THICK,
  type Wall,
} from './house.ts'
import type { Outline, Rectangle, Spot } from './outline.ts'
import { FOOT, INCH, taped } from './tape.ts'

/** Puts closets, alcoves, hearths, columns, islands, vents and doors to outside where they fit. */
export function furnish(house: House, angles: Angles, dice: Dice): void {
  const taken = house.rooms.flatMap(({ cells }) => cells)
  for (const room of house.rooms) {
    for (let i = dice.below(4); i > 0; i -= 1) onWall(room, taken, dice)
    if (dice.chance(12) && angles !== 'right') bow(room, dice)
    // Things in a room are tied to two walls square to one another.
    if (room.isOutOfSquare || room.walls.some(({ kind }) => kind === 'bow')) continue
    for (let i = dice.pick([0, 0, 0, 1, 1, 2]); i > 0; i -= 1) inside(room, angles, dice)
  }
}

function onWall(room: Room, taken: Rectangle[], dice: Dice): void {
  const kind = dice.pick(['closet', 'closet', 'alcove', 'hearth', 'hearth', 'door'] as const)
  const wall = dice.pick(squareWalls(room.corners, room.isOutOfSquare))
  const width = dice.between(kind === 'door' ? 30 * INCH : 20 * INCH, 6 * FOOT)
  const deep = kind === 'door' ? 0 : dice.between(12 * INCH, 32 * INCH)
  const last = wall.length - width - 6 * INCH
  if (last < 6 * INCH) return
  const left = dice.between(6 * INCH, last)
  const [first, second] = kind === 'closet' && dice.chance(40) ? returnsOf(dice) : [0, 0]
  const to = kind === 'closet' ? closetName(room) : 'outside'
  const returns = [first, second] as const
  const fixture: Fixture = { kind, wall: wall.index, left, width, to, deep, returns }
  if (!isFree(room, fixture)) return
  if (kind === 'hearth') {
    if (!clears(room, stretch(wall, left, width, 0, -deep), 4 * INCH, wall.index)) return
  } else {
    // A door to outside keeps the ground before it free of other rooms.
    const reach = kind === 'closet' ? THICK + deep : Math.max(deep, 12 * INCH)
    const beyond = stretch(wall, left - first, first + width + second, THICK, reach + THICK)
    if (
      overlap(
        [beyond],
        taken.filter((cell) => !room.cells.includes(cell)),
      )
    )
      return
    if (overlapsOwn(beyond, room)) return
    taken.push(beyond)
  }
  room.fixtures.push(fixture)
}

function returnsOf(dice: Dice): readonly [number, number] {
  return [dice.between(0, 20 * INCH), dice.between(INCH, 20 * INCH)]
}

/** The first closet has the name that the language gives it; each further one a name of its own. */
function closetName({ name, fixtures }: Room): string {
  const closets = fixtures.filter(({ kind }) => kind === 'closet').length
  return closets === 0 ? `${name} closet` : `${name} cupboard ${closets}`
}

function isFree(room: Room, { wall, left, width }: Fixture): boolean {
  const margin = 10 * INCH
  if (room.walls.some((note) => note.wall === wall)) return false
  return room.fixtures.every(
    (other) =>
      other.wall !== wall ||
      left + width + margin <= other.left ||
      other.left + other.width + margin <= left,
  )
}

/** The rectangle before (negative) or behind a stretch of a wall, from one distance to another. */
function stretch(wall: Wall, left: number, width: number, from: number, to: number): Rectangle {
  const { along } = wall
  const spot = (on: number, out: number): Spot => ({
    x: wall.from.x + along.x * on - along.y * out,
    y: wall.from.y + along.y * on + along.x * out,
  })
  const [a, b] = [spot(left, from), spot(left + width, to)]
  return {
    west: Math.min(a.x, b.x),
    south: Math.min(a.y, b.y),
    east: Math.max(a.x, b.x),
    north: Math.max(a.y, b.y),
  }
}

function overlapsOwn(beyond: Rectangle, room: Room): boolean {
  const shrunk = {
    west: beyond.west + THICK,
    south: beyond.south + THICK,
    east: beyond.east - THICK,
    north: beyond.north - THICK,
  }
  return overlap([shrunk], room.cells)
}

/** Bows a bare wall out, within its own thickness, or into a room where nothing stands. */
function bow(room: Room, dice: Dice): void {
  const wall = dice.pick(squareWalls(room.corners, room.isOutOfSquare))
  const isBare = isFree(room, { ...BARE, wall: wall.index, width: wall.length })
  const hasHearth = room.fixtures.some(({ kind }) => kind === 'hearth')
  if (!isBare || hasHearth || wall.length < 3 * FOOT) return
  const phrase = `${taped(dice.between(INCH, 4 * INCH))} bow ${dice.pick(['in', 'out'])}`
  room.walls.push({ wall: wall.index, kind: 'bow', phrase })
}

const BARE: Fixture = {
  kind: 'opening',
  wall: 0,
  left: 0,
  width: 0,
  to: '',
  deep: 0,
  returns: [0, 0],
}

/** A column, an island or a vent, clear of the walls and of what stands there. */
function inside(room: Room, angles: Angles, dice: Dice): void {
  const kind = dice.pick(['column', 'column', 'column', 'island', 'vent'] as const)
  const isRound = kind === 'column' && angles !== 'right' && dice.chance(50)
  const size = () =>
    kind === 'island' ? dice.between(24 * INCH, 6 * FOOT) : dice.between(3 * INCH, 14 * INCH)
  const width = size()
  const height = isRound ? width : size()
  const cell = dice.pick(room.cells)
  const margin = dice.pick([2, 4, 12]) * INCH
  const [spanX, spanY] = [cell.east - cell.west - width, cell.north - cell.south - height]
  if (spanX < 0 || spanY < 0) return
  const [west, south] = [cell.west + dice.below(spanX + 1), cell.south + dice.below(spanY + 1)]
  const box = { west, south, east: west + width, north: south + height }
  const obstacle: Obstacle = { kind, isRound, box }
  if (clears(room, box, margin, null)) room.obstacles.push(obstacle)
}

/** Whether a rectangle lies inside the room, so far off every wall but one and everything in it. */
function clears(room: Room, box: Rectangle, margin: number, butWall: number | null): boolean {
  const wide = grown(box, margin)
  const isOffWalls = room.corners.every(
    (a, i) => i === butWall || misses(wide, a, room.corners[(i + 1) % room.corners.length]!),
  )
  const middle = { x: (box.west + box.east) / 2, y: (box.south + box.north) / 2 }
  const hearths = room.fixtures
    .filter(({ kind }) => kind === 'hearth')
    .map(({ wall, left, width, deep }) => {
      const on = squareWalls(room.corners, false).find(({ index }) => index === wall)!
      return stretch(on, left, width, 0, -deep)
    })
  const others = [...hearths, ...room.obstacles.map((other) => other.box)]
  return isOffWalls && holds(room.corners, middle) && others.every((other) => apart(wide, other))
}

function grown(box: Rectangle, by: number): Rectangle {
  return { west: box.west - by, south: box.south - by, east: box.east + by, north: box.north + by }
}

function apart(a: Rectangle, b: Rectangle): boolean {
  return a.east < b.west || b.east < a.west || a.north < b.south || b.north < a.south
}

/** Whether a straight wall stays out of a box: its own box does, or all corners lie on one side. */
function misses(box: Rectangle, a: Spot, b: Spot): boolean {
  const around = {
    west: Math.min(a.x, b.x),
    east: Math.max(a.x, b.x),
    south: Math.min(a.y, b.y),
    north: Math.max(a.y, b.y),
  }
  if (apart(box, around)) return true
  const side = (x: number, y: number) => (b.x - a.x) * (y - a.y) - (b.y - a.y) * (x - a.x)
  const sides = [
    side(box.west, box.south),
    side(box.east, box.south),
    side(box.east, box.north),
    side(box.west, box.north),
  ]
  return sides.every((s) => s > 0) || sides.every((s) => s < 0)
}

/** Whether a spot lies in a room: an odd number of walls lies east of it. */
function holds(corners: Outline, { x, y }: Spot): boolean {
  return corners.reduce((inside, a, i) => {
    const b = corners[(i + 1) % corners.length]!
    if (a.y > y === b.y > y) return inside
    return x < a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y) ? !inside : inside
  }, false)
}
