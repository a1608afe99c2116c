import type { Dice } from './dice.ts'
import type { Outline, Shape, Spot } from './outline.ts'
import { FOOT, INCH } from './tape.ts'

/** Cuts one to three outer corners off: at 45°, or at any slant. The rest of the room stays square. */
export function withCutCorners(shape: Shape, dice: Dice): Shape {
  let corners = shape.corners
  const kinds = new Set<string>()
  for (let i = dice.between(1, 3); i > 0 && corners.length < 24; i -= 1) {
    const place = dice.below(corners.length)
    const cut = cutCorner(corners, place, dice)
    if (cut === null) continue
    corners = cut.corners
    kinds.add(cut.kind)
  }
  if (kinds.size === 0) return shape
  return { ...shape, kind: `${shape.kind}, ${[...kinds].sort().join(' and ')}`, corners }
}

function cutCorner(
  corners: Outline,
  place: number,
  dice: Dice,
): { readonly corners: Outline; readonly kind: string } | null {
  const count = corners.length
  const [a, b, c] = [-1, 0, 1].map((step) => corners[(place + step + count) % count]!) as [
    Spot,
    Spot,
    Spot,
  ]
  const squareOn = (p: Spot, q: Spot) => p.x === q.x || p.y === q.y
  const turnsRight = (b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x) < 0
  const room = Math.min(reach(a, b), reach(b, c)) - FOOT
  if (!squareOn(a, b) || !squareOn(b, c) || !turnsRight || room < 10 * INCH) return null
  const back = dice.between(8 * INCH, Math.min(room, 5 * FOOT))
  const isAt45 = dice.chance(50)
  const on = isAt45 ? back : dice.between(8 * INCH, Math.min(room, 5 * FOOT))
  const cut = [toward(b, a, back), toward(b, c, on)]
  return {
    corners: [...corners.slice(0, place), ...cut, ...corners.slice(place + 1)],
    kind: on === back ? 'corner at 45°' : 'slant',
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
 * Moves the corners of a rectangle inwards by up to 5", all but the two of its first wall, which
 * stays where another room may lie behind it.
 */
export function outOfSquare(shape: Shape, dice: Dice): Shape {
  const corners = shape.corners.map(({ x, y }, i) => {
    if (i < 2) return { x, y }
    const inward = (at: number, least: number) =>
      (at === least ? 1 : -1) * dice.between(0, 5 * INCH)
    const least = (of: (spot: Spot) => number) => Math.min(...shape.corners.map(of))
    return {
      x:
        x +
        inward(
          x,
          least((s) => s.x),
        ),
      y:
        y +
        inward(
          y,
          least((s) => s.y),
        ),
    }
  })
  return { ...shape, kind: 'out of square', corners }
}
