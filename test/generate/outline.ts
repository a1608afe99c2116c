import type { Dice } from './dice.ts'
import { type Draw, inches, weighted } from './draw.ts'

/** x east and y north in steps of the job's grid. */
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
  /** What of it is off the axes: "a slant", "out of square". */
  readonly askew: readonly string[]
}

/** Rows of cells, north first: true where there is floor. */
type Mask = readonly (readonly boolean[])[]

const mask = (...rows: readonly string[]): Mask =>
  rows.map((row) => [...row].map((cell) => cell === '#'))

/** Room shapes as cells, with how often a lived-in house has each. Columns and rows get their sizes by chance. */
const MASKS: readonly (readonly [number, readonly [string, Mask]])[] = [
  [60, ['rectangle', mask('#')]],
  [16, ['L', mask('#.', '##')]],
  [5, ['T', mask('###', '.#.')]],
  [4, ['U', mask('#.#', '###')]],
  [4, ['Z', mask('##.', '.##')]],
  [1, ['cross', mask('.#.', '###', '.#.')]],
  [2, ['stairs', mask('#..', '##.', '###')]],
  [1, ['comb of 3', mask('#.#.#', '#####')]],
  [1, ['comb of 4', mask('#.#.#.#', '#######')]],
  [1, ['comb of 6', mask('#.#.#.#.#.#', '###########')]],
  [1, ['double comb', mask('#.#.#', '#####', '.#.#.')]],
]

/** A right-angled shape whose south-west corner is about the origin. */
export function rightAngled(draw: Draw): Shape {
  const { dice, nasty } = draw
  const isGrown = dice.chance(nasty ? 30 : 8)
  const [kind, drawn] = isGrown
    ? (['grown', grow(dice)] as const)
    : nasty
      ? dice.pick(MASKS)[1]
      : weighted(dice, MASKS)
  const turned = turn(drawn, dice.below(4))
  const columns = sizes(turned[0]!.length, draw)
  const rows = sizes(turned.length, draw)
  return {
    kind: kind === 'rectangle' && isTiny(columns, rows, draw) ? 'tiny rectangle' : kind,
    corners: around(turned, columns, rows),
    cells: cellsOf(turned, columns, rows),
    askew: [],
  }
}

function isTiny([width]: readonly number[], [depth]: readonly number[], { grid }: Draw): boolean {
  return Math.min(width!, depth!) < 30 * grid.inch
}

/** Sizes that keep a shape of many cells within some forty feet. */
function sizes(count: number, draw: Draw): number[] {
  const most = Math.max(36, 432 / count)
  return Array.from({ length: count }, () => {
    if (draw.nasty && draw.dice.chance(20)) return inches(draw, count === 1 ? 4 : 2, 14)
    const size = inches(draw, 20, Math.min(most, 192))
    return count === 1 ? Math.max(size, 5 * draw.grid.foot) : size
  })
}

function turn(drawn: Mask, quarters: number): Mask {
  let turned = drawn
  for (let i = 0; i < quarters; i += 1) {
    turned = turned[0]!.map((_, x) => turned.map((row) => row[x]!).reverse())
  }
  return turned
}

const MOST_CORNERS = 24

/** Starts from one cell and adds neighbours as long as the outline stays one loop of at most 24 corners. */
function grow(dice: Dice): Mask {
  const [width, height] = [dice.between(2, 5), dice.between(2, 5)]
  const grown = Array.from({ length: height }, () => Array.from({ length: width }, () => false))
  grown[dice.below(height)]![dice.below(width)] = true
  const wanted = dice.between(2, width * height - 1)
  for (let tries = 8 * wanted, cells = 1; tries > 0 && cells < wanted; tries -= 1) {
    const [x, y] = [dice.below(width), dice.below(height)]
    if (at(grown, x, y) || !keepsOneLoop(grown, x, y)) continue
    grown[y]![x] = true
    if (cornersOf(grown) > MOST_CORNERS) grown[y]![x] = false
    else cells += 1
  }
  return grown
}

function at(cells: Mask, x: number, y: number): boolean {
  return cells[y]?.[x] ?? false
}

const RING = [
  [0, -1],
  [1, -1],
  [1, 0],
  [1, 1],
  [0, 1],
  [-1, 1],
  [-1, 0],
  [-1, -1],
] as const

/** A cell may join where its neighbours make just one run round it, and one of them shares a side. */
function keepsOneLoop(cells: Mask, x: number, y: number): boolean {
  const ring = RING.map(([dx, dy]) => at(cells, x + dx, y + dy))
  const runs = ring.filter((cell, i) => cell && !ring.at(i - 1)!).length
  return runs === 1 && ring.some((cell, i) => cell && i % 2 === 0)
}

/** A grid point is a corner where one or three of its four cells are floor. */
function cornersOf(cells: Mask): number {
  let corners = 0
  for (let y = 0; y <= cells.length; y += 1) {
    for (let x = 0; x <= cells[0]!.length; x += 1) if (isCorner(cells, x, y)) corners += 1
  }
  return corners
}

function isCorner(cells: Mask, x: number, y: number): boolean {
  const around = [
    at(cells, x - 1, y - 1),
    at(cells, x, y - 1),
    at(cells, x - 1, y),
    at(cells, x, y),
  ]
  return around.filter(Boolean).length % 2 === 1
}

/** Where the columns begin, west first, and the rows end, north first: one more than there are. */
function lines(
  columns: readonly number[],
  rows: readonly number[],
): readonly [readonly number[], readonly number[]] {
  const sums = (list: readonly number[]) => {
    let reached = 0
    return [0, ...list.map((one) => (reached += one))]
  }
  return [sums(columns), sums(rows.toReversed()).reverse()]
}

function cellsOf(cells: Mask, columns: readonly number[], rows: readonly number[]): Rectangle[] {
  const [xs, ys] = lines(columns, rows)
  return cells.flatMap((row, j) =>
    row.flatMap((isFloor, i) =>
      isFloor ? [{ west: xs[i]!, south: ys[j + 1]!, east: xs[i + 1]!, north: ys[j]! }] : [],
    ),
  )
}

/** Clockwise round cells that make one loop, from its most north-western corner; straight ones left out. */
function around(cells: Mask, columns: readonly number[], rows: readonly number[]): Outline {
  const [xs, ys] = lines(columns, rows)
  const top = cells.findIndex((row) => row.includes(true))
  const first = cells[top]!.indexOf(true)
  const spots: Spot[] = []
  // East along the top first; the floor stays on the right.
  let [x, y, way] = [first, top, 0]
  do {
    if (isCorner(cells, x, y)) spots.push({ x: xs[x]!, y: ys[y]! })
    const [dx, dy] = STEPS[way]!
    ;[x, y] = [x + dx, y + dy]
    way = nextWay(cells, x, y, way)
  } while (x !== first || y !== top)
  return spots
}

/** East, south, west, north, as rows count downwards. */
const STEPS = [
  [1, 0],
  [0, 1],
  [-1, 0],
  [0, -1],
] as const

/** The cell that lies ahead on the right, and that on the left, of a grid point reached along a way. */
const AHEAD = [
  [0, 0, 0, -1],
  [-1, 0, 0, 0],
  [-1, -1, -1, 0],
  [0, -1, -1, -1],
] as const

function nextWay(cells: Mask, x: number, y: number, way: number): number {
  const [rx, ry, lx, ly] = AHEAD[way]!
  if (!at(cells, x + rx, y + ry)) return (way + 1) % 4
  return at(cells, x + lx, y + ly) ? (way + 3) % 4 : way
}
