import { apart, type Draw, inches, weighted } from './draw.ts'
import { outOfSquare, withCutCorners } from './off-square.ts'
import { type Outline, type Rectangle, rightAngled, type Shape, type Spot } from './outline.ts'

export interface Room {
  readonly name: string
  readonly corners: Outline
  readonly cells: readonly Rectangle[]
  readonly isOutOfSquare: boolean
  /** What stands on its walls, and in it; filled while the house is furnished. */
  readonly fixtures: Fixture[]
  readonly obstacles: Obstacle[]
  readonly walls: WallNote[]
}

/** What the line of one wall says besides its length: such a wall carries nothing. */
export interface WallNote {
  readonly wall: number
  readonly kind: 'open side' | 'bow' | 'edge' | 'stair'
  /** The room that an open side leads to, an edge's words, `up`, `in`. */
  readonly words: string
  /** The rise of a bow, the gap of an edge where it says one. */
  readonly size: number | null
}

/** Something on a wall: `left` is the distance of its near side from the wall's left end. */
export interface Fixture {
  readonly kind: 'door' | 'opening' | 'pass-through' | 'closet' | 'alcove' | 'hearth'
  readonly wall: number
  readonly left: number
  readonly width: number
  /** The room beyond, or the closet's own name. */
  readonly to: string
  /** The name that a doorway has in both its rooms, or that of another thing; null for none. */
  readonly called: string | null
  /** How thick its wall is. */
  readonly thick: number
  readonly deep: number
  /** How far a closet reaches left and right past its opening. */
  readonly returns: readonly [number, number]
  /** False for a doorway that is written from its other room only. */
  readonly isWritten: boolean
}

export interface Obstacle {
  readonly kind: 'column' | 'island' | 'stairwell' | 'vent'
  readonly isRound: boolean
  readonly box: Rectangle
}

export interface Wall {
  readonly index: number
  readonly from: Spot
  readonly to: Spot
  readonly length: number
  /** One step along it, left to right as seen from inside. */
  readonly along: Spot
}

/** One to five rooms, each behind a wall of one before it, all but the first with a doorway to one. */
export function roomsOf(names: readonly string[], draw: Draw): readonly Room[] {
  const { dice, angles, nasty } = draw
  const inSquare = angles !== 'other' && dice.chance(nasty ? 15 : 8)
  const placed = inSquare ? fourInASquare(draw) : rowOfShapes(draw)
  return placed.map(({ shape, isOutOfSquare }, i) => {
    draw.has(`shape: ${shape.kind}`)
    draw.has(`walls: ${bracket(shape.corners.length)}`)
    for (const angle of shape.askew) draw.has(`angles: ${angle}`)
    const { corners, cells } = shape
    const name = names[i]!
    return { name, corners, cells, isOutOfSquare, fixtures: [], obstacles: [], walls: [] }
  })
}

function bracket(walls: number): string {
  const least = [15, 9, 5].find((from) => walls >= from) ?? 4
  return { 4: '4', 5: '5 to 8', 9: '9 to 14', 15: '15 to 24' }[least]!
}

interface Placed {
  readonly shape: Shape
  readonly isOutOfSquare: boolean
}

/** Two by two; side by side they may have no wall between them. */
function fourInASquare(draw: Draw): Placed[] {
  const size = () => inches(draw, 84, 168)
  const [west, east, south, north] = [size(), size(), size(), size()]
  const [middle, line] = [west + (draw.dice.chance(50) ? 0 : apart(draw)), south + apart(draw)]
  const boxes = [
    { west: 0, south: 0, east: west, north: south },
    { west: middle, south: 0, east: middle + east, north: south },
    { west: 0, south: line, east: west, north: line + north },
    { west: middle, south: line, east: middle + east, north: line + north },
  ]
  return boxes.map((box) => ({ shape: rectangle(box), isOutOfSquare: false }))
}

function rectangle(box: Rectangle): Shape {
  const { west, south, east, north } = box
  const corners = [
    { x: west, y: south },
    { x: west, y: north },
    { x: east, y: north },
    { x: east, y: south },
  ]
  return { kind: 'rectangle', corners, cells: [box], askew: [] }
}

const COUNTS = [
  [30, 1],
  [30, 2],
  [20, 3],
  [12, 4],
  [8, 5],
] as const

function rowOfShapes(draw: Draw): Placed[] {
  const { dice, nasty } = draw
  if (nasty && dice.below(200) === 0) return [hugeRoom(draw)]
  const placed = [shapeOf(draw)]
  const count = weighted(dice, COUNTS)
  for (let i = 1; i < count; i += 1) {
    const next = shapeOf(draw)
    for (let tries = 40; tries > 0; tries -= 1) {
      const found = behind(dice.pick(placed), next, draw)
      if (found === null) continue
      if (placed.some(({ shape }) => overlap(shape.cells, found.shape.cells, draw.thick))) continue
      placed.push(found)
      break
    }
  }
  return placed
}

/** Near what is laid at most: 20,000 planks. */
function hugeRoom(draw: Draw): Placed {
  const [east, north] = [inches(draw, 600, 1000), inches(draw, 600, 900)]
  draw.has('room: huge')
  return { shape: rectangle({ west: 0, south: 0, east, north }), isOutOfSquare: false }
}

function shapeOf(draw: Draw): Placed {
  const { dice, angles, nasty } = draw
  const shape = rightAngled(draw)
  if (angles === 'right') return { shape, isOutOfSquare: false }
  const isPlain = shape.kind === 'rectangle' || (shape.corners.length <= 8 && dice.chance(30))
  const isLarge = shape.cells.every(isWide(draw.grid.foot))
  const skewed =
    isPlain && isLarge && dice.chance(nasty ? 40 : 25) ? outOfSquare(shape, draw) : null
  if (skewed !== null) return { shape: skewed, isOutOfSquare: true }
  const isCut = dice.chance(nasty ? 35 : 15)
  return { shape: isCut ? withCutCorners(shape, draw) : shape, isOutOfSquare: false }
}

const isWide =
  (least: number) =>
  ({ west, east, south, north }: Rectangle): boolean =>
    Math.min(east - west, north - south) >= least

/** The shape moved so that one of its walls lies a wall's thickness behind one of the base's. */
function behind(base: Placed, { shape, isOutOfSquare }: Placed, draw: Draw): Placed | null {
  const [wall, other] = [squareWall(base, draw), squareWall({ shape, isOutOfSquare }, draw)]
  const need = 4 * draw.grid.foot
  if (wall === null || other === null) return null
  if (wall.along.x !== -other.along.x || wall.along.y !== -other.along.y) return null
  if (wall.length < need || other.length < need) return null
  const slide = draw.dice.between(need - other.length, wall.length - need)
  const through = apart(draw) + (draw.dice.chance(15) ? inches(draw, 1, 8) : 0)
  const target = {
    x: wall.from.x + wall.along.x * slide - wall.along.y * through,
    y: wall.from.y + wall.along.y * slide + wall.along.x * through,
  }
  return { shape: moved(shape, target.x - other.to.x, target.y - other.to.y), isOutOfSquare }
}

/** Walls along the axes; of a room out of square only the first, which was not moved. */
export function squareWalls(corners: Outline, isOutOfSquare: boolean): readonly Wall[] {
  const walls: Wall[] = []
  corners.forEach((from, index) => {
    const to = corners[(index + 1) % corners.length]!
    if ((from.x !== to.x && from.y !== to.y) || (isOutOfSquare && index > 0)) return
    const length = Math.abs(to.x - from.x) + Math.abs(to.y - from.y)
    const along = { x: Math.sign(to.x - from.x) + 0, y: Math.sign(to.y - from.y) + 0 }
    walls.push({ index, from, to, length, along })
  })
  return walls
}

function squareWall({ shape, isOutOfSquare }: Placed, { dice }: Draw): Wall | null {
  const walls = squareWalls(shape.corners, isOutOfSquare)
  return walls.length === 0 ? null : dice.pick(walls)
}

function moved(shape: Shape, x: number, y: number): Shape {
  return {
    ...shape,
    corners: shape.corners.map((spot) => ({ x: spot.x + x, y: spot.y + y })),
    cells: shape.cells.map(({ west, south, east, north }) => ({
      west: west + x,
      south: south + y,
      east: east + x,
      north: north + y,
    })),
  }
}

/** Whether any two come nearer than a margin. */
export function overlap(
  some: readonly Rectangle[],
  others: readonly Rectangle[],
  margin: number,
): boolean {
  return some.some((a) =>
    others.some(
      (b) =>
        a.west - margin < b.east &&
        b.west - margin < a.east &&
        a.south - margin < b.north &&
        b.south - margin < a.north,
    ),
  )
}

/** The rectangle before (negative) or behind a stretch of a wall, from one distance to another. */
export function stretch(
  wall: Wall,
  left: number,
  width: number,
  from: number,
  to: number,
): Rectangle {
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
