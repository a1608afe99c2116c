import type { Nm } from '../units/length.ts'
import { boxTree } from './box-tree.ts'
import type { Line } from './exact.ts'
import type { Point } from './point.ts'
import { type Box, boxOf } from './ring.ts'

/**
 * Lines sorted into the cells of a square grid, to find those near a place. The cell is as wide as the
 * lines are long on the average, so that filling the grid takes a number of steps linear in their
 * number, and looking up takes constant time. Where long lines crowd together side by side, as in a
 * spiral, they go by the boxes around them instead.
 */
export interface Near<T extends Line> {
  readonly lines: readonly T[]
  /** Indices of all lines that come within the margin of a point, and of others close by. */
  at(point: Point): readonly number[]
  /** Calls back with lines that stand together: any two that come near each other do somewhere. */
  cells(visit: (indices: readonly number[]) => void): void
}

/** Rows of cells that fit beside each other in one key. */
const COLUMN = 2 ** 26

/** So many pairs in cells for each line are a crowd. */
const CROWD = 64

/** Sorts the lines; `margin` widens each of them on every side. */
export function near<T extends Line>(lines: readonly T[], margin: Nm): Near<T> {
  const grid = nearInGrid(lines, margin)
  return grid.pairs > CROWD * lines.length ? nearByBoxes(lines, margin) : grid
}

function nearByBoxes<T extends Line>(lines: readonly T[], margin: Nm): Near<T> {
  const around = lines.map(({ from, to }) => widened(boxOf([from, to]), margin))
  const tree = boxTree(around)
  const touching = (box: Box) => {
    const found: number[] = []
    tree.touching(box, (index) => found.push(index))
    return found.sort((a, b) => a - b)
  }
  return {
    lines,
    at: ({ x, y }) => touching({ west: x, south: y, east: x, north: y }),
    cells: (visit) => {
      for (const [i, box] of around.entries()) {
        for (const j of touching(box)) if (i <= j) visit(i === j ? [i] : [i, j])
      }
    },
  }
}

function widened({ west, south, east, north }: Box, by: Nm): Box {
  return { west: west - by, south: south - by, east: east + by, north: north + by }
}

function nearInGrid<T extends Line>(
  lines: readonly T[],
  margin: Nm,
): Near<T> & { readonly pairs: number } {
  const low = { x: lowest(lines, 'x') - margin, y: lowest(lines, 'y') - margin }
  const size = cellSize(lines, margin)
  const cells = new Map<number, number[]>()
  const columnOf = (x: number) => Math.floor((x - low.x) / size)
  const rowOf = (y: number) => Math.floor((y - low.y) / size)
  const put = (key: number, index: number) => {
    const cell = cells.get(key)
    if (cell) cell.push(index)
    else cells.set(key, [index])
  }
  lines.forEach((line, index) => {
    const [left, right] = line.from.x <= line.to.x ? [line.from, line.to] : [line.to, line.from]
    const first = columnOf(left.x - margin)
    const last = columnOf(right.x + margin)
    for (let column = first; column <= last; column++) {
      const start = low.x + column * size - margin
      const a = heightAt(left, right, start)
      const b = heightAt(left, right, start + size + 2 * margin)
      const top = rowOf(Math.max(a, b) + margin)
      for (let row = rowOf(Math.min(a, b) - margin); row <= top; row++)
        put(column * COLUMN + row, index)
    }
  })
  let pairs = 0
  for (const { length } of cells.values()) pairs += (length * (length - 1)) / 2
  return {
    lines,
    pairs,
    at: (point) => cells.get(columnOf(point.x) * COLUMN + rowOf(point.y)) ?? [],
    cells: (visit) => {
      for (const indices of cells.values()) visit(indices)
    },
  }
}

function lowest(lines: readonly Line[], axis: 'x' | 'y'): number {
  return lines.reduce((least, line) => Math.min(least, line.from[axis], line.to[axis]), Infinity)
}

function cellSize(lines: readonly Line[], margin: Nm): number {
  const total = lines.reduce(
    (sum, { from, to }) => sum + Math.abs(to.x - from.x) + Math.abs(to.y - from.y),
    0,
  )
  return Math.max(4 * margin + 4, Math.ceil(total / Math.max(1, lines.length)))
}

/** Height of a line at x, held within its ends; only to choose cells, so that rounding does no harm. */
function heightAt(left: Point, right: Point, x: number): number {
  if (x <= left.x) return left.y
  if (x >= right.x) return right.y
  return left.y + ((right.y - left.y) * (x - left.x)) / (right.x - left.x)
}
