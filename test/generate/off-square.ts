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
  const cut = [toward(b, a, back), toward(b, c, on)]
  return {
    corners: [...corners.slice(0, place), ...cut, ...corners.slice(place + 1)],
    kind: on === back ? 'a corner at 45°' : 'a slant',
  }
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
 * where another room may lie behind it.
 */
export function outOfSquare(shape: Shape, draw: Draw): Shape {
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
  return { ...shape, corners: moved, askew: ['out of square'] }
}

/** One step to the right of a way along an axis. */
function right(from: Spot, to: Spot): Spot {
  return { x: Math.sign(to.y - from.y), y: -Math.sign(to.x - from.x) }
}
