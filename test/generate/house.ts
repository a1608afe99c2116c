import type { Dice } from './dice.ts'
import { outOfSquare, withCutCorners } from './off-square.ts'
import { type Outline, type Rectangle, rightAngled, type Shape, type Spot } from './outline.ts'
import { FOOT, INCH } from './tape.ts'

/** Walls between rooms are as thick as the generated job says. */
export const THICK = 4 * INCH + INCH / 2

export interface Room {
  readonly name: string
  readonly kind: string
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
  readonly kind: 'open side' | 'bow'
  readonly phrase: string
}

/** Something on a wall: `left` is the distance of its near side from the wall's left end. */
export interface Fixture {
  readonly kind: 'door' | 'opening' | 'pass-through' | 'closet' | 'alcove' | 'hearth'
  readonly wall: number
  readonly left: number
  readonly width: number
  /** The room beyond, or the closet's own name. */
  readonly to: string
  readonly deep: number
  /** How far a closet reaches left and right past its opening. */
  readonly returns: readonly [number, number]
}

export interface Obstacle {
  readonly kind: 'column' | 'island' | 'vent'
  readonly isRound: boolean
  readonly box: Rectangle
}

export interface House {
  readonly rooms: readonly Room[]
  /** Doorways beyond those that hang the rooms on one another: each closes a loop. */
  readonly loops: number
}

const NAMES = ['den', 'hall', 'bunk room', 'study'] as const

/** Which angles a house may have: any, none but right ones, or surely others too. */
export type Angles = 'any' | 'right' | 'other'

/** One to four rooms, each behind a wall of one before it, doorways told from both sides. */
export function houseOf(dice: Dice, angles: Angles): House {
  const inSquare = angles !== 'other' && dice.chance(12)
  const outlines = inSquare ? fourInASquare(dice) : rowOfShapes(dice, angles)
  const rooms = outlines.map(({ shape, isOutOfSquare }, i): Room => {
    const { kind, corners, cells } = shape
    return {
      name: NAMES[i]!,
      kind,
      corners,
      cells,
      isOutOfSquare,
      fixtures: [],
      obstacles: [],
      walls: [],
    }
  })
  const doorways = rooms.flatMap((one, i) =>
    rooms.slice(i + 1).map((other) => (connect(one, other, dice) ? 1 : 0)),
  )
  const doors = doorways.reduce<number>((a, b) => a + b, 0)
  return { rooms, loops: Math.max(0, doors - rooms.length + 1) }
}

interface Placed {
  readonly shape: Shape
  readonly isOutOfSquare: boolean
}

/** Two by two; side by side they may have no wall between them. */
function fourInASquare(dice: Dice): Placed[] {
  const size = () => dice.between(7 * FOOT, 14 * FOOT)
  const [west, east, south, north] = [size(), size(), size(), size()]
  const [middle, line] = [west + (dice.chance(50) ? 0 : THICK), south + THICK]
  const boxes = [
    { west: 0, south: 0, east: west, north: south },
    { west: middle, south: 0, east: middle + east, north: south },
    { west: 0, south: line, east: west, north: line + north },
    { west: middle, south: line, east: middle + east, north: line + north },
  ]
  return boxes.map((box) => ({
    shape: { kind: 'rectangle', corners: cornersOf(box), cells: [box] },
    isOutOfSquare: false,
  }))
}

function cornersOf({ west, south, east, north }: Rectangle): Outline {
  return [
    { x: west, y: south },
    { x: west, y: north },
    { x: east, y: north },
    { x: east, y: south },
  ]
}

function rowOfShapes(dice: Dice, angles: Angles): Placed[] {
  const placed = [shapeOf(dice, angles)]
  const count = dice.pick([1, 1, 2, 2, 3, 4])
  for (let attempt = 0; attempt < 60 && placed.length < count; attempt += 1) {
    const next = behind(dice.pick(placed), shapeOf(dice, angles), dice)
    if (next !== null && !placed.some(({ shape }) => overlap(shape.cells, next.shape.cells))) {
      placed.push(next)
    }
  }
  return placed
}

function shapeOf(dice: Dice, angles: Angles): Placed {
  const shape = rightAngled(dice)
  if (angles === 'right') return { shape, isOutOfSquare: false }
  if (shape.corners.length === 4 && dice.chance(35)) {
    return { shape: outOfSquare(shape, dice), isOutOfSquare: true }
  }
  return { shape: dice.chance(30) ? withCutCorners(shape, dice) : shape, isOutOfSquare: false }
}

/** The shape moved so that one of its walls lies a wall's thickness behind one of the base's. */
function behind(base: Placed, { shape, isOutOfSquare }: Placed, dice: Dice): Placed | null {
  const wall = squareWall(base, dice)
  const other = squareWall({ shape, isOutOfSquare }, dice)
  const need = 4 * FOOT
  if (wall === null || other === null) return null
  if (wall.along.x !== -other.along.x || wall.along.y !== -other.along.y) return null
  if (wall.length < need || other.length < need) return null
  const slide = dice.between(need - other.length, wall.length - need)
  const target = {
    x: wall.from.x + wall.along.x * slide - wall.along.y * THICK,
    y: wall.from.y + wall.along.y * slide + wall.along.x * THICK,
  }
  return { shape: moved(shape, target.x - other.to.x, target.y - other.to.y), isOutOfSquare }
}

export interface Wall {
  readonly index: number
  readonly from: Spot
  readonly to: Spot
  readonly length: number
  /** One step along it, left to right as seen from inside. */
  readonly along: Spot
}

/** Walls along the axes; of a room out of square only the first, which was not moved. */
export function squareWalls(corners: Outline, isOutOfSquare: boolean): readonly Wall[] {
  return corners.flatMap((from, index): Wall[] => {
    const to = corners[(index + 1) % corners.length]!
    if ((from.x !== to.x && from.y !== to.y) || (isOutOfSquare && index > 0)) return []
    const length = Math.abs(to.x - from.x) + Math.abs(to.y - from.y)
    const along = { x: Math.sign(to.x - from.x) + 0, y: Math.sign(to.y - from.y) + 0 }
    return [{ index, from, to, length, along }]
  })
}

function squareWall({ shape, isOutOfSquare }: Placed, dice: Dice): Wall | null {
  const walls = squareWalls(shape.corners, isOutOfSquare)
  return walls.length === 0 ? null : dice.pick(walls)
}

function moved(shape: Shape, x: number, y: number): Shape {
  return {
    kind: shape.kind,
    corners: shape.corners.map((spot) => ({ x: spot.x + x, y: spot.y + y })),
    cells: shape.cells.map(({ west, south, east, north }) => ({
      west: west + x,
      south: south + y,
      east: east + x,
      north: north + y,
    })),
  }
}

/** Whether any two come nearer than a wall's thickness. */
export function overlap(some: readonly Rectangle[], others: readonly Rectangle[]): boolean {
  return some.some((a) =>
    others.some(
      (b) =>
        a.west - THICK < b.east &&
        b.west - THICK < a.east &&
        a.south - THICK < b.north &&
        b.south - THICK < a.north,
    ),
  )
}

const PASSAGES = ['door', 'door', 'opening', 'opening', 'pass-through'] as const

/** Makes a doorway where walls of two rooms lie back to back, a wall's thickness apart. */
function connect(one: Room, other: Room, dice: Dice): boolean {
  for (const a of squareWalls(one.corners, one.isOutOfSquare)) {
    for (const b of squareWalls(other.corners, other.isOutOfSquare)) {
      if (isOpenBetween(a, b)) {
        one.walls.push({ wall: a.index, kind: 'open side', phrase: `open to ${other.name}` })
        other.walls.push({ wall: b.index, kind: 'open side', phrase: `open to ${one.name}` })
        return true
      }
      const free = shared(a, b)
      if (free === null) continue
      const width = Math.min(dice.between(28 * INCH, 6 * FOOT), free.to - free.from)
      const left = dice.between(free.from, free.to - width)
      const kind = dice.pick(PASSAGES)
      const beyond = distanceAlong(a, b.from) - left - width
      const doorway = { kind, width, deep: 0, returns: [0, 0] } as const
      one.fixtures.push({ ...doorway, wall: a.index, left, to: other.name })
      other.fixtures.push({ ...doorway, wall: b.index, left: beyond, to: one.name })
      return true
    }
  }
  return false
}

function isOpenBetween(a: Wall, b: Wall): boolean {
  const same = (p: Spot, q: Spot) => p.x === q.x && p.y === q.y
  return same(a.from, b.to) && same(a.to, b.from)
}

function distanceAlong({ from, along }: Wall, { x, y }: Spot): number {
  return (x - from.x) * along.x + (y - from.y) * along.y
}

/** The stretch of wall a, from its left end, that wall b backs; null if it is short of a doorway. */
function shared(a: Wall, b: Wall): { readonly from: number; readonly to: number } | null {
  const apart = (b.from.x - a.from.x) * -a.along.y + (b.from.y - a.from.y) * a.along.x
  const opposite = a.along.x === -b.along.x && a.along.y === -b.along.y
  if (!opposite || apart !== THICK) return null
  const margin = 5 * INCH
  const from = Math.max(0, distanceAlong(a, b.to)) + margin
  const to = Math.min(a.length, distanceAlong(a, b.from)) - margin
  return to - from < 30 * INCH ? null : { from, to }
}
