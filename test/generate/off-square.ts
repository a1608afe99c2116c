import { type Draw, inches } from './draw.ts'
import type { Outline, Shape, Spot } from './outline.ts'

/** Cuts one to three outer corners off: at 45°, or at any slant. The rest of the room stays square. */
export function withCutCorners(shape: Shape, draw: Draw): Shape {
  let corners = shape.corners
  const kinds = new Set<string>()
  for (let i = draw.dice.between(1, 3); i > 0 && corners.length < 24; i -= 1) {
    const cut = cutCorner(corners, draw.dice.below(corners.length), draw)
    if (cut === null) continue
    corners = cut.corners
    kinds.add(cut.kind)
  }
  return { ...shape, corners, askew: [...kinds] }
}

function cutCorner(
  corners: Outline,
  place: number,
  draw: Draw,
): { readonly corners: Outline; readonly kind: string } | null {
  const count = corners.length
  const [a, b, c] = [-1, 0, 1].map((step) => corners[(place + step + count) % count]!) as [
    Spot,
    Spot,
    Spot,
  ]
  const isSquareOn = (p: Spot, q: Spot) => p.x === q.x || p.y === q.y
  const turnsRight = (b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x) < 0
  const room = Math.floor((Math.min(reach(a, b), reach(b, c)) - draw.grid.foot) / draw.grid.inch)
  if (!isSquareOn(a, b) || !isSquareOn(b, c) || !turnsRight || room < 10) return null
  const back = inches(draw, 8, Math.min(room, 60))
  const on = draw.dice.chance(50) ? back : inches(draw, 8, Math.min(room, 60))
  const cut = [toward(b, a, back), toward(b, c, on)] as const
  if (corners.some((spot) => spot !== b && isBetween(spot, ...cut))) return null
  return {
    corners: [...corners.slice(0, place), ...cut, ...corners.slice(place + 1)],
    kind: on === back ? 'a corner at 45°' : 'a slant',
  }
}

/** Whether a spot lies in the box over two others: what is cut off must not reach another wall. */
function isBetween({ x, y }: Spot, a: Spot, b: Spot): boolean {
  const isWithin = (at: number, one: number, other: number) =>
    Math.min(one, other) <= at && at <= Math.max(one, other)
  return isWithin(x, a.x, b.x) && isWithin(y, a.y, b.y)
}

function reach(a: Spot, b: Spot): number {
  return Math.abs(a.x - b.x) + Math.abs(a.y - b.y)
}

function toward(from: Spot, to: Spot, by: number): Spot {
  return {
    x: from.x + Math.sign(to.x - from.x) * by,
    y: from.y + Math.sign(to.y - from.y) * by,
  }
}

/**
 * Moves the corners of a room into it by up to 5", all but the two of its first wall, which stays
 * where another room may lie behind it. Null where no corner's diagonals would hold the shape.
 */
export function outOfSquare(shape: Shape, draw: Draw): Shape | null {
  const { corners } = shape
  const count = corners.length
  const most = count === 4 ? 5 : 1.5
  const moved = corners.map((spot, i): Spot => {
    if (i < 2) return spot
    const [before, after] = [corners[(i + count - 1) % count]!, corners[(i + 1) % count]!]
    // Into the room: to the right of the wall that ends here and of the one that begins here.
    const [a, b] = [right(before, spot), right(spot, after)]
    const [along, across] = [inches(draw, 0, most), inches(draw, 0, most)]
    return { x: spot.x + a.x * along + b.x * across, y: spot.y + a.y * along + b.y * across }
  })
  return fanOf(moved) === null ? null : { ...shape, corners: moved, askew: ['out of square'] }
}

/** The sine of an angle that a corner held by two distances should have at least. */
const FLAT = 0.15

/**
 * The corner from which diagonals to all others hold a shape best: the flattest of its triangles is the
 * least flat. Null where each corner has one that is flat, for that holds no corner.
 */
export function fanOf(corners: Outline): number | null {
  const sines = corners.map((_, from) => flattest(corners, from))
  const best = Math.max(...sines)
  return best < FLAT ? null : sines.indexOf(best)
}

/** Of the triangles from one corner over each wall, the sine at the far corner of the flattest. */
function flattest(corners: Outline, from: number): number {
  const at = (step: number) => corners[(from + step) % corners.length]!
  const sines = corners.slice(2).map((_, i) => {
    const [a, b, c] = [at(0), at(i + 1), at(i + 2)]
    const [x, y] = [c.x - b.x, c.y - b.y]
    const [u, v] = [c.x - a.x, c.y - a.y]
    return Math.abs(x * v - y * u) / Math.sqrt((x * x + y * y) * (u * u + v * v))
  })
  return Math.min(...sines)
}

/** One step to the right of a way along an axis. */
function right(from: Spot, to: Spot): Spot {
  return { x: Math.sign(to.y - from.y), y: -Math.sign(to.x - from.x) }
}
