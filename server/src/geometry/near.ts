import type { Nm } from '../units/length.ts'
import type { Line } from './exact.ts'
import type { Point } from './point.ts'

/**
 * Lines sorted into the cells of a square grid, to find those near a place. The cell is as wide as the
 * lines are long on the average, so that filling the grid takes a number of steps linear in their
 * number; looking up takes constant time unless the lines crowd together.
 */
export interface Near<T extends Line> {
  readonly lines: readonly T[]
  /** Indices of all lines that come within the margin of a point, and of others close by. */
  at(point: Point): readonly number[]
  /** Calls back once for each cell with the indices of the lines in it. */
  cells(visit: (indices: readonly number[]) => void): void
}

/** Rows of cells that fit beside each other in one key. */
const COLUMN = 2 ** 26

/** Sorts the lines into a grid; `margin` widens each of them on every side. */
export function near<T extends Line>(lines: readonly T[], margin: Nm): Near<T> {
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
  return {
    lines,
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
