import type { Box } from './ring.ts'

/**
 * Things with boxes around them, to find those near a place. Each thing is kept in square cells about as
 * wide as it is, four at most; cells lie in cells twice as wide, and only those that hold something are
 * there, so that a look into a large place costs no more than what is in it. More can be put in at any
 * time.
 */
export interface Boxes<T> {
  add(thing: T, box: Box): void
  /** Whether a thing whose box meets or touches this one passes the test; a thing may be asked twice. */
  some(box: Box, test: (thing: T) => boolean): boolean
}

interface Entry<T> {
  readonly thing: T
  readonly box: Box
}

/** Cells of one size by their column and row; a cell without entries has some in the cells within it. */
type Level<T> = Map<number, Entry<T>[]>

/** The least cell, in nm: about a millimetre; each level's is twice as wide, up to 18 km. */
const LEAST_CELL = 2 ** 20
const LEVELS = 25

/** Rows of cells that fit beside each other in one key. */
const COLUMN = 2 ** 26

export function boxes<T>(): Boxes<T> {
  const levels: readonly Level<T>[] = Array.from({ length: LEVELS }, () => new Map())
  const cellAt = (level: number, column: number, row: number): Entry<T>[] => {
    const key = column * COLUMN + row
    const there = levels[level]!.get(key)
    if (there !== undefined) return there
    const made: Entry<T>[] = []
    levels[level]!.set(key, made)
    if (level + 1 < LEVELS) cellAt(level + 1, Math.floor(column / 2), Math.floor(row / 2))
    return made
  }
  const look = (level: number, box: Box, test: (entry: Entry<T>) => boolean, within: Cells) => {
    const here = cellsIn(box, sizeAt(level), within)
    for (let column = here.left; column <= here.right; column++) {
      for (let row = here.bottom; row <= here.top; row++) {
        const cell = levels[level]!.get(column * COLUMN + row)
        if (cell === undefined) continue
        if (cell.some(test)) return true
        if (level > 0 && look(level - 1, box, test, halves(column, row))) return true
      }
    }
    return false
  }
  return {
    add: (thing, box) => {
      const level = levelFor(box)
      const { left, right, bottom, top } = cellsIn(box, sizeAt(level), EVERYWHERE)
      for (let column = left; column <= right; column++)
        for (let row = bottom; row <= top; row++) cellAt(level, column, row).push({ thing, box })
    },
    some: (box, test) =>
      look(LEVELS - 1, box, (entry) => touches(entry.box, box) && test(entry.thing), EVERYWHERE),
  }
}

/** A block of cells of one size, its outermost columns and rows included. */
interface Cells {
  readonly left: number
  readonly right: number
  readonly bottom: number
  readonly top: number
}

const EVERYWHERE: Cells = { left: -Infinity, right: Infinity, bottom: -Infinity, top: Infinity }

function sizeAt(level: number): number {
  let size = LEAST_CELL
  for (let i = 0; i < level; i++) size *= 2
  return size
}

/** The first level whose cells are as wide and as high as the box, or the last. */
function levelFor({ west, east, south, north }: Box): number {
  const reach = Math.max(east - west, north - south)
  let level = 0
  while (sizeAt(level) < reach && level + 1 < LEVELS) level += 1
  return level
}

/** The cells of a block that a box lies in. */
function cellsIn({ west, east, south, north }: Box, size: number, within: Cells): Cells {
  return {
    left: Math.max(within.left, Math.floor(west / size)),
    right: Math.min(within.right, Math.floor(east / size)),
    bottom: Math.max(within.bottom, Math.floor(south / size)),
    top: Math.min(within.top, Math.floor(north / size)),
  }
}

/** The four cells half as wide in a cell. */
function halves(column: number, row: number): Cells {
  return { left: 2 * column, right: 2 * column + 1, bottom: 2 * row, top: 2 * row + 1 }
}

function touches(a: Box, b: Box): boolean {
  return a.west <= b.east && b.west <= a.east && a.south <= b.north && b.south <= a.north
}
