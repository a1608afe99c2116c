import { expect, test } from 'vitest'
import { canonical } from '../../server/src/geometry/canonical.ts'
import { difference, union } from '../../server/src/geometry/clip.ts'
import type { Region } from '../../server/src/geometry/point.ts'

/** Squares in a row that lap over each other, each with a hole: enough of them to be clipped sideways. */
function row(count: number): { readonly squares: Region; readonly holes: Region } {
  const square = (x: number, y: number, size: number) => [
    { x, y },
    { x: x + size, y },
    { x: x + size, y: y + size },
    { x, y: y + size },
  ]
  const each = Array.from({ length: count }, (_, i) => i)
  return {
    squares: each.map((i) => square(80 * i, i % 7, 100)),
    holes: each.map((i) => square(80 * i + 40, 40, 10)),
  }
}

/** The region with x and y exchanged: it is then high, and is clipped as it stands. */
const turned = (region: Region): Region =>
  region.map((ring) => ring.map(({ x, y }) => ({ x: y, y: x })).toReversed())

test('a long region is clipped as a high one is, and as a short one', () => {
  for (const count of [20, 600]) {
    const { squares, holes } = row(count)
    const across = difference(union(squares), holes)
    expect(canonical(turned(difference(union(turned(squares)), turned(holes))))).toEqual(across)
    expect(across).toHaveLength(count + 1)
  }
})
