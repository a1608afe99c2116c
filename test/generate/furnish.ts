import { type Draw, inches, weighted } from './draw.ts'
import {
  type Fixture,
  type Obstacle,
  overlap,
  type Room,
  squareWalls,
  stretch,
  type Wall,
  type WallNote,
} from './house.ts'
import type { Outline, Rectangle, Spot } from './outline.ts'

/** Puts closets, alcoves, hearths, columns, islands, vents, stairs and doors to outside where they fit. */
export function furnish(rooms: readonly Room[], draw: Draw): void {
  const { dice, angles } = draw
  const taken = rooms.flatMap(({ cells }) => cells)
  for (const room of rooms) {
    for (let i = dice.below(4); i > 0; i -= 1) onWall(room, taken, draw)
    if (dice.chance(8) && angles !== 'right') bow(room, draw)
    for (let i = dice.pick([0, 0, 1, 2]); i > 0; i -= 1) edge(room, draw)
    // Things in a room are tied to two walls square to one another.
    if (room.isOutOfSquare || room.walls.some(({ kind }) => kind === 'bow')) continue
    for (let i = dice.pick([0, 0, 0, 1, 1, 2]); i > 0; i -= 1) inside(room, draw)
  }
}

const ON_WALLS = [
  [30, 'closet'],
  [12, 'alcove'],
  [20, 'hearth'],
  [20, 'door'],
] as const

function onWall(room: Room, taken: Rectangle[], draw: Draw): void {
  const { dice, grid } = draw
  const kind = weighted(dice, ON_WALLS)
  const wall = dice.pick(squareWalls(room.corners, room.isOutOfSquare))
  const isNarrow = draw.nasty && kind !== 'door' && dice.chance(25)
  const width = isNarrow ? inches(draw, 6, 12) : inches(draw, kind === 'door' ? 30 : 20, 72)
  const deep = kind === 'door' ? 0 : inches(draw, draw.nasty && dice.chance(20) ? 4 : 12, 32)
  const last = wall.length - width - 6 * grid.inch
  if (last < 6 * grid.inch) return
  const left = dice.between(6 * grid.inch, last)
  const returns = kind === 'closet' && dice.chance(40) ? returnsOf(draw) : ([0, 0] as const)
  const beyond = beyondOf(kind, room, draw)
  const common = { kind, wall: wall.index, left, width, deep, returns, thick: draw.thick }
  const fixture: Fixture = { ...common, ...beyond, isWritten: true }
  if (!isFree(room, fixture, draw)) return
  const isIn = kind === 'hearth'
  if (isIn ? !isClear(room, fixture, wall, draw) : !isBeyondFree(room, fixture, wall, taken, draw))
    return
  room.fixtures.push(fixture)
  draw.has(`on a wall: ${inWords(fixture)}`)
  if (isNarrow) draw.has('on a wall: narrower than a foot')
}

function inWords({ kind, to, returns }: Fixture): string {
  if (kind === 'door') return to === 'outside' ? 'door to outside' : 'door to no measured room'
  return returns[1] > 0 ? 'closet wider than its opening' : kind
}

function isClear(room: Room, { left, width, deep }: Fixture, wall: Wall, draw: Draw): boolean {
  const box = stretch(wall, left, width, 0, -deep)
  return clears(room, box, 4 * draw.grid.inch, wall.index)
}

/** A door to outside keeps the ground before it free of other rooms. */
function isBeyondFree(
  room: Room,
  { kind, left, width, deep, returns: [first, second] }: Fixture,
  wall: Wall,
  taken: Rectangle[],
  draw: Draw,
): boolean {
  const { thick, grid } = draw
  // A kept base puts a closet farther out, by its thickness.
  const through = thick + 2 * draw.base.thick
  const reach = kind === 'closet' ? through + deep : Math.max(deep, 12 * grid.inch)
  const beyond = stretch(wall, left - first, first + width + second, thick, reach + thick)
  const others = taken.filter((cell) => !room.cells.includes(cell))
  if (overlap([beyond], others, through) || overlapsOwn(beyond, room, draw)) return false
  taken.push(beyond)
  return true
}

function returnsOf(draw: Draw): readonly [number, number] {
  return [inches(draw, 0, 20), inches(draw, 1, 20)]
}

/** The first closet has the name that the language gives it; each further one a name of its own. */
function beyondOf(
  kind: Fixture['kind'],
  { name, fixtures }: Room,
  { dice }: Draw,
): Pick<Fixture, 'to' | 'called'> {
  const count = fixtures.filter((other) => other.kind === kind).length
  if (kind === 'closet') {
    if (count === 0 && dice.chance(75)) return { to: `${name} closet`, called: null }
    const own = `${name} cupboard ${count + 1}`
    return { to: own, called: own }
  }
  if (kind === 'door') return { to: dice.chance(80) ? 'outside' : 'crawl space', called: null }
  return { to: '', called: dice.chance(15) ? `${kind} ${count + 1}` : null }
}

function isFree(room: Room, { wall, left, width }: Place, { grid }: Draw): boolean {
  const margin = 10 * grid.inch
  if (room.walls.some((note) => note.wall === wall)) return false
  return room.fixtures.every(
    (other) =>
      other.wall !== wall ||
      left + width + margin <= other.left ||
      other.left + other.width + margin <= left,
  )
}

type Place = Pick<Fixture, 'wall' | 'left' | 'width'>

function overlapsOwn(beyond: Rectangle, room: Room, { thick }: Draw): boolean {
  const shrunk = {
    west: beyond.west + thick,
    south: beyond.south + thick,
    east: beyond.east - thick,
    north: beyond.north - thick,
  }
  return overlap([shrunk], room.cells, thick)
}

/** A square wall that nothing stands on, chosen by chance; null where the chosen one is not bare. */
function bareWall(room: Room, draw: Draw): Wall | null {
  const wall = draw.dice.pick(squareWalls(room.corners, room.isOutOfSquare))
  const whole: Place = { wall: wall.index, left: 0, width: wall.length }
  return isFree(room, whole, draw) ? wall : null
}

/** Bows a bare wall out, within its own thickness, or into a room where nothing stands. */
function bow(room: Room, draw: Draw): void {
  const wall = bareWall(room, draw)
  const hasHearth = room.fixtures.some(({ kind }) => kind === 'hearth')
  if (wall === null || hasHearth || wall.length < 3 * draw.grid.foot) return
  if (room.cells.some(isNarrow(draw))) return
  const most = Math.min(4, Math.floor(draw.thick / draw.grid.inch))
  if (most < 1) return
  const words = draw.dice.pick(['in', 'out', ''])
  room.walls.push({ wall: wall.index, kind: 'bow', words, size: inches(draw, 1, most) })
  draw.has('wall: bow')
}

const isNarrow =
  ({ grid }: Draw) =>
  ({ west, east, south, north }: Rectangle): boolean =>
    Math.min(east - west, north - south) < 20 * grid.inch

const EDGES = [
  'base kept',
  'base off and back',
  'base new',
  'no base',
  'tub',
  'hearth',
  'slider',
  'cabinet',
  'nosing',
  'open edge',
  'carpet',
] as const

/** Says what a bare wall is: an edge of some kind, or the top of a stair. */
function edge(room: Room, draw: Draw): void {
  const wall = bareWall(room, draw)
  if (wall === null) return
  const { dice } = draw
  const hasStair = room.walls.some(({ kind }) => kind === 'stair')
  const note: WallNote =
    dice.chance(20) && !hasStair
      ? { wall: wall.index, kind: 'stair', words: dice.pick(['up', 'down']), size: null }
      : { wall: wall.index, kind: 'edge', words: dice.pick(EDGES), size: gapOf(draw) }
  room.walls.push(note)
  draw.has(note.kind === 'stair' ? 'wall: stair' : `wall: ${note.words}`)
}

function gapOf(draw: Draw): number | null {
  if (!draw.dice.chance(35)) return null
  return draw.dice.chance(30) ? 0 : inches(draw, 0.125, 0.75)
}

const INSIDE = [
  [40, 'column'],
  [15, 'island'],
  [15, 'vent'],
  [10, 'stairwell'],
] as const

/** A column, an island, a stairwell or a vent, clear of the walls and of what stands there. */
function inside(room: Room, draw: Draw): void {
  const { dice, grid } = draw
  const kind = weighted(dice, INSIDE)
  const canBeRound = kind === 'column' || kind === 'island'
  const isRound = canBeRound && draw.angles !== 'right' && dice.chance(40)
  const isLarge = kind === 'island' || kind === 'stairwell'
  const size = () => (isLarge ? inches(draw, 24, 72) : inches(draw, draw.nasty ? 1 : 3, 14))
  const width = size()
  const height = isRound ? width : size()
  const cell = dice.pick(room.cells)
  const margin = dice.pick([2, 4, 12]) * grid.inch
  const [spanX, spanY] = [cell.east - cell.west - width, cell.north - cell.south - height]
  if (spanX < 0 || spanY < 0) return
  const [west, south] = [cell.west + dice.below(spanX + 1), cell.south + dice.below(spanY + 1)]
  const box = { west, south, east: west + width, north: south + height }
  const obstacle: Obstacle = { kind, isRound, box }
  if (!clears(room, box, margin, null)) return
  room.obstacles.push(obstacle)
  draw.has(`inside: ${isRound ? 'round ' : ''}${kind}`)
}

/** Whether a rectangle lies inside the room, so far off every wall but one and everything in it. */
function clears(room: Room, box: Rectangle, margin: number, butWall: number | null): boolean {
  const wide = grown(box, margin)
  const isOffWalls = room.corners.every(
    (a, i) => i === butWall || misses(wide, a, room.corners[(i + 1) % room.corners.length]!),
  )
  const middle = { x: (box.west + box.east) / 2, y: (box.south + box.north) / 2 }
  if (!isOffWalls || !holds(room.corners, middle)) return false
  const walls = squareWalls(room.corners, false)
  const hearths = room.fixtures
    .filter(({ kind }) => kind === 'hearth')
    .map(({ wall, left, width, deep }) =>
      stretch(walls.find(({ index }) => index === wall)!, left, width, 0, -deep),
    )
  const others = [...hearths, ...room.obstacles.map((other) => other.box)]
  return others.every((other) => isApart(wide, other))
}

function grown(box: Rectangle, by: number): Rectangle {
  return { west: box.west - by, south: box.south - by, east: box.east + by, north: box.north + by }
}

function isApart(a: Rectangle, b: Rectangle): boolean {
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
  if (isApart(box, around)) return true
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
