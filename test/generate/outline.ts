import type { Dice } from './dice.ts'
import { FOOT, INCH } from './tape.ts'

/** x east and y north in sixteenths of an inch. */
export interface Spot {
  readonly x: number
  readonly y: number
}

/** The corners of a room in the order of standing in it and turning to the right: clockwise. */
export type Outline = readonly Spot[]

export interface Rectangle {
  readonly west: number
  readonly south: number
  readonly east: number
  readonly north: number
}

/** A room's shape before anything stands in it, and rectangles that hold all of it. */
export interface Shape {
  readonly kind: string
  readonly corners: Outline
  readonly cells: readonly Rectangle[]
}

/** Room shapes as cells, north first. Columns and rows get their sizes by chance. */
const MASKS: readonly (readonly [string, readonly string[]])[] = [
  ['rectangle', ['#']],
  ['L', ['#.', '##']],
  ['T', ['###', '.#.']],
  ['U', ['#.#', '###']],
  ['Z', ['##.', '.##']],
  ['cross', ['.#.', '###', '.#.']],
  ['stairs', ['#..', '##.', '###']],
  ['comb of 3', ['#.#.#', '#####']],
  ['comb of 4', ['#.#.#.#', '#######']],
  ['comb of 6', ['#.#.#.#.#.#', '###########']],
  ['double comb', ['#.#.#', '#####', '.#.#.']],
]

/** A right-angled shape whose south-west corner is about the origin. */
export function rightAngled(dice: Dice): Shape {
  const grown = dice.chance(25)
  const [kind, mask] = grown ? (['grown', grow(dice)] as const) : dice.pick(MASKS)
  const turned = turn(mask, dice.below(4))
  const columns = sizes(turned[0]!.length, dice)
  const rows = sizes(turned.length, dice)
  const cells = cellsOf(turned, columns, rows)
  return { kind, corners: around(cells), cells }
}

/** Sizes that keep a shape of many cells within some forty feet. */
function sizes(count: number, dice: Dice): number[] {
  const most = Math.max(3 * FOOT, Math.floor((36 * FOOT) / count))
  return Array.from({ length: count }, () => {
    const size = dice.between(20 * INCH, Math.min(most, 16 * FOOT))
    return count === 1 ? Math.max(size, 5 * FOOT) : size
  })
}

function turn(mask: readonly string[], quarters: number): readonly string[] {
  let turned = mask
  for (let i = 0; i < quarters; i += 1) {
    turned = [...turned[0]!].map((_, x) =>
      turned
        .map((row) => row[x]!)
        .reverse()
        .join(''),
    )
  }
  return turned
}

/** Starts from one cell and adds neighbours as long as the outline stays one loop of at most 24 corners. */
function grow(dice: Dice): readonly string[] {
  const [width, height] = [dice.between(2, 5), dice.between(2, 5)]
  let mask = Array.from({ length: height }, () => '.'.repeat(width))
  const put = (x: number, y: number) =>
    mask.map((row, j) => (j === y ? `${row.slice(0, x)}#${row.slice(x + 1)}` : row))
  mask = put(dice.below(width), dice.below(height))
  const cells = dice.between(2, width * height - 1)
  for (let i = 0; i < 8 * cells && count(mask) < cells; i += 1) {
    const [x, y] = [dice.below(width), dice.below(height)]
    const touches = [at(mask, x - 1, y), at(mask, x + 1, y), at(mask, x, y - 1), at(mask, x, y + 1)]
    const more = put(x, y)
    if (touches.includes('#') && isOneLoop(more)) mask = more
  }
  return mask
}

function at(mask: readonly string[], x: number, y: number): string {
  return mask[y]?.[x] ?? '.'
}

function count(mask: readonly string[]): number {
  return mask.join('').replaceAll('.', '').length
}

function isOneLoop(mask: readonly string[]): boolean {
  const unit = (length: number) => Array.from({ length }, () => 1)
  const cells = cellsOf(mask, unit(mask[0]!.length), unit(mask.length))
  const edges = rimOf(cells)
  const starts = new Set(edges.map(({ from }) => key(from)))
  return (
    starts.size === edges.length &&
    loop(edges).length === edges.length &&
    around(cells).length <= 24
  )
}

function cellsOf(
  mask: readonly string[],
  columns: readonly number[],
  rows: readonly number[],
): Rectangle[] {
  const sum = (list: readonly number[]) => list.reduce((a, b) => a + b, 0)
  return mask.flatMap((row, j) =>
    [...row].flatMap((cell, i) => {
      if (cell !== '#') return []
      const [west, south] = [sum(columns.slice(0, i)), sum(rows.slice(j + 1))]
      return [{ west, south, east: west + columns[i]!, north: south + rows[j]! }]
    }),
  )
}

interface Edge {
  readonly from: Spot
  readonly to: Spot
}

const key = ({ x, y }: Spot) => `${x},${y}`

/** The edges of cells that no other cell shares, the cells on their right. */
function rimOf(cells: readonly Rectangle[]): Edge[] {
  const edges = cells.flatMap(({ west, south, east, north }) => {
    const corners = [
      { x: west, y: south },
      { x: west, y: north },
      { x: east, y: north },
      { x: east, y: south },
    ]
    return corners.map((from, i) => ({ from, to: corners[(i + 1) % 4]! }))
  })
  const both = new Set(edges.map(({ from, to }) => `${key(from)} ${key(to)}`))
  return edges.filter(({ from, to }) => !both.has(`${key(to)} ${key(from)}`))
}

function loop(edges: readonly Edge[]): Spot[] {
  const next = new Map(edges.map(({ from, to }) => [key(from), to]))
  const spots = [edges[0]!.from]
  for (;;) {
    const to = next.get(key(spots[spots.length - 1]!))!
    if (key(to) === key(spots[0]!)) return spots
    spots.push(to)
  }
}

/** Clockwise round cells that make one loop, straight corners left out. */
function around(cells: readonly Rectangle[]): Outline {
  const spots = loop(rimOf(cells))
  return spots.filter((b, i) => {
    const a = spots[(i + spots.length - 1) % spots.length]!
    const c = spots[(i + 1) % spots.length]!
    return (a.x === b.x) !== (b.x === c.x)
  })
}
