import type { Point } from '../geometry/point.ts'
import { boxOf } from '../geometry/ring.ts'
import type { FloorArea } from './floor-area.ts'

/** The middle of the box around a floor, in whole or half nanometres: it turns with the house. */
export function middleOf({ rim }: FloorArea): Point {
  const { west, south, east, north } = boxOf(rim.map(({ from }) => from))
  return { x: (west + east) / 2, y: (south + north) / 2 }
}
