import type { Vector } from './vector.ts'
import type { ReadWall } from './walls.ts'

/** Answers how sure the way from one corner to another is, in square nanometres along a direction. */
export type PathVariance = (from: number, to: number, along: Vector) => number

/**
 * For a closed traverse: each of the two ways round gives the vector once, and the mean of both,
 * weighted by 1/σ², has 1/V = 1/V₁ + 1/V₂. Sums are kept from the first wall on, so that an answer
 * takes constant time.
 */
export function pathVariance(walls: readonly ReadWall[]): PathVariance {
  const sums = sumsOf(walls)
  const all = sums[walls.length]!
  return (from, to, along) => {
    const a = project(sums[from]!, along)
    const b = project(sums[to]!, along)
    const whole = project(all, along)
    const inside = Math.abs(b - a)
    const outside = Math.max(0, whole - inside)
    return inside + outside === 0 ? 0 : (inside * outside) / (inside + outside)
  }
}

/** Σσ² of the walls before a corner: east × east, east × north, north × north. */
interface Sum {
  readonly ee: number
  readonly en: number
  readonly nn: number
}

function sumsOf(walls: readonly ReadWall[]): readonly Sum[] {
  const sums: Sum[] = [{ ee: 0, en: 0, nn: 0 }]
  for (const { sigma, direction } of walls) {
    const { ee, en, nn } = sums[sums.length - 1]!
    const [e, n] = [sigma * direction.x, sigma * direction.y]
    sums.push({ ee: ee + e * e, en: en + e * n, nn: nn + n * n })
  }
  return sums
}

const project = ({ ee, en, nn }: Sum, { x, y }: Vector) => x * x * ee + 2 * x * y * en + y * y * nn
