import type { Box } from './ring.ts'

/**
 * Things with boxes around them, to find those near a place. Each thing is kept with others of its size
 * in square cells as wide as it is, so that it takes four cells at most and a look into few finds it.
 * More can be put in at any time.
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

/** The things of one size. */
interface Level<T> {
  readonly size: number
  readonly entries: Entry<T>[]
  readonly cells: Map<number, Entry<T>[]>
}

/** The least cell, in nm: about a millimetre. */
const LEAST_CELL = 2 ** 20

/** Rows of cells that fit beside each other in one key. */
const COLUMN = 2 ** 26

export function boxes<T>(): Boxes<T> {
  const levels = new Map<number, Level<T>>()
  return {
    add: (thing, box) => {
      const size = cellFor(box)
      const level: Level<T> = levels.get(size) ?? { size, entries: [], cells: new Map() }
      levels.set(size, level)
      const entry = { thing, box }
      level.entries.push(entry)
      eachCell(box, size, (key) => {
        const cell = level.cells.get(key)
        if (cell) cell.push(entry)
        else level.cells.set(key, [entry])
        return false
      })
    },
    some: (box, test) => {
      const meets = (entry: Entry<T>) => touches(entry.box, box) && test(entry.thing)
      for (const { size, entries, cells } of levels.values()) {
        // A look at every thing is quicker than one into more cells than there are things.
        const found =
          cellsIn(box, size) > entries.length
            ? entries.some(meets)
            : eachCell(box, size, (key) => cells.get(key)?.some(meets) ?? false)
        if (found) return true
      }
      return false
    },
  }
}

/** The least power of two as wide and as high as the box. */
function cellFor({ west, east, south, north }: Box): number {
  const reach = Math.max(east - west, north - south)
  let size = LEAST_CELL
  while (size < reach) size *= 2
  return size
}

function cellsIn({ west, east, south, north }: Box, size: number): number {
  return (
    (Math.floor(east / size) - Math.floor(west / size) + 1) *
    (Math.floor(north / size) - Math.floor(south / size) + 1)
  )
}

/** Visits the cells that a box lies in until one says so. */
function eachCell(box: Box, size: number, visit: (key: number) => boolean): boolean {
  const top = Math.floor(box.north / size)
  const right = Math.floor(box.east / size)
  for (let column = Math.floor(box.west / size); column <= right; column++)
    for (let row = Math.floor(box.south / size); row <= top; row++)
      if (visit(column * COLUMN + row)) return true
  return false
}

function touches(a: Box, b: Box): boolean {
  return a.west <= b.east && b.west <= a.east && a.south <= b.north && b.south <= a.north
}
