import { connectAll } from './connect.ts'
import { type Dice, dice as diceFrom } from './dice.ts'
import {
  type Angles,
  type Base,
  type Draw,
  type Grid,
  MILLIMETRES,
  type Mode,
  SIXTEENTHS,
  weighted,
} from './draw.ts'
import { asTyped, type Layout, layoutOf } from './files.ts'
import { floorText, type Worded } from './floor-text.ts'
import { furnish } from './furnish.ts'
import { jobHead, type Pen, partHead } from './head-text.ts'
import { type Room, roomsOf } from './house.ts'
import { productNames, roomNames } from './names.ts'
import { type Hand, handOf, type Unit } from './notation.ts'
import { type Product, productOf } from './products.ts'
import { roomText } from './room-text.ts'
import { type Spoil, spoil, spoiledFloor } from './spoiling.ts'
import { wallWords } from './wall-words.ts'

/**
 * Jobs made by chance from a seed: the same seed gives the same bytes on any machine.
 *
 * - `randomJob(seed)`: as lived-in houses are. `randomJob(seed, 'nasty')`: whatever the language takes.
 * - `rightAngledJob(seed, mode?)`: every wall on the axes and every run along them; nothing bowed,
 *   round or out of square. Readings may disagree a little, so that there is something to balance.
 * - `otherJob(seed, mode?)`: with at least one slant, bow, round thing, room out of square or
 *   oblique run.
 *
 * What is said of a job (`sound`, `unsound`, `features`) comes from what was built into it, never from
 * the product: a test holds the product to it.
 */
export interface RandomJob {
  readonly seed: number
  /** Every file of the job by its path. */
  readonly files: ReadonlyMap<string, string>
  /** The path of the file with the job line. */
  readonly root: string
  /** The text of that file. */
  readonly text: string
  /** Whether the job must come out clean: without an error, every floor of it laid. */
  readonly sound: boolean
  /** Why it must not, where it is not sound: "a slip of a foot". */
  readonly unsound: readonly string[]
  /** What it has: "shape: L", "running: along a slant". */
  readonly features: readonly string[]
}

export function randomJob(seed: number, mode: Mode = 'realistic'): RandomJob {
  return jobOf(seed, mode, 'any', diceFrom(seed))
}

export function rightAngledJob(seed: number, mode: Mode = 'realistic'): RandomJob {
  return jobOf(seed, mode, 'right', diceFrom(seed))
}

/** Draws until one has such an angle; every second draw or so does. */
export function otherJob(seed: number, mode: Mode = 'realistic'): RandomJob {
  const dice = diceFrom(seed)
  for (;;) {
    const job = jobOf(seed, mode, 'other', dice)
    if (job.features.some((feature) => OTHER_ANGLES.has(feature))) return job
  }
}

const OTHER_ANGLES: ReadonlySet<string> = new Set([
  'angles: a slant',
  'angles: a corner at 45°',
  'angles: out of square',
  'wall: bow',
  'inside: round column',
  'inside: round island',
  'running: along a slant',
  'running: north-east',
  'running: north-west',
])

/** Five rooms, in more than one floor. */
const MOST_NAMES = 5

function jobOf(seed: number, mode: Mode, angles: Angles, dice: Dice): RandomJob {
  const features: string[] = []
  const unsound: string[] = []
  const draw = drawOf(mode, angles, { dice, features, unsound })
  const rooms = roomsOf(roomNames(MOST_NAMES, draw), draw)
  connectAll(rooms, draw)
  furnish(rooms, draw)
  const layout = layoutOf(draw)
  const files = filesOf(seed, rooms, layout, draw)
  return {
    seed,
    files,
    root: layout.root,
    text: files.get(layout.root)!,
    sound: unsound.length === 0,
    unsound,
    features,
  }
}

function drawOf(
  mode: Mode,
  angles: Angles,
  {
    dice,
    features,
    unsound,
  }: { readonly dice: Dice; readonly features: string[]; readonly unsound: string[] },
): Draw {
  const nasty = mode === 'nasty'
  const grid = dice.chance(30) ? MILLIMETRES : SIXTEENTHS
  const wall = nasty && dice.chance(30) ? dice.pick([1, 2.5, 12]) : 4.5
  return {
    dice,
    nasty,
    angles,
    grid,
    thick: Math.round(wall * grid.inch),
    isThickSaid: !dice.chance(10),
    base: baseOf(grid, dice),
    has: (feature) => features.push(feature),
    spoils: (reason) => unsound.push(reason),
  }
}

const BASES: readonly (readonly [number, readonly [Base['fate'], Base['touching']]])[] = [
  [30, ['kept', null]],
  [10, ['kept', 'base']],
  [10, ['kept', 'wall']],
  [10, ['off and back', 'base']],
  [8, ['off and back', 'wall']],
  [6, ['new', 'wall']],
  [4, ['none', null]],
  [14, [null, null]],
  [4, [null, 'toe-kick']],
  [4, [null, 'jamb']],
]

function baseOf({ inch }: Grid, dice: Dice): Base {
  const [fate, touching] = weighted(dice, BASES)
  const thick = fate === null || fate === 'none' ? 0 : Math.round(inch * dice.pick([0.5, 0.625]))
  return { thick, fate, touching }
}

/** Every file of the job, in the order of the layout. */
function filesOf(
  seed: number,
  rooms: readonly Room[],
  layout: Layout,
  draw: Draw,
): ReadonlyMap<string, string> {
  const hands = new Map(
    [...layout.includes.keys()].map((path) => [path, handOf(unitOf(draw), draw)]),
  )
  const worded = rooms.map((room): Worded => ({ room, words: wallWords(room, draw) }))
  const parts = new Map([...layout.includes].map(([path]) => [path, [] as string[]]))
  const products = productNames(draw.dice.pick([1, 1, 2, 3]), draw).map((name) =>
    productOf(name, hands.get(layout.products)!, draw),
  )
  parts.get(layout.products)!.push(...products.map(({ text }) => text))
  const spoiled = spoil(worded, draw)
  for (const [i, text] of roomTexts(worded, spoiled, layout, { hands, draw }).entries()) {
    parts.get(layout.rooms[i % layout.rooms.length]!)!.push(text)
  }
  const atRoot = { hand: hands.get(layout.root)!, draw }
  parts.get(layout.root)!.push(...floorTexts(worded, products, spoiled, atRoot))
  return new Map(
    [...layout.includes].map(([path, includes]) => {
      const head =
        path === layout.root
          ? jobHead(seed, includes, atRoot)
          : partHead(includes, hands.get(path)!, draw)
      const blocks = parts.get(path)!
      const inOrder = draw.nasty && draw.dice.chance(30) ? blocks.toReversed() : blocks
      return [path, asTyped([head, ...inOrder].join('\n'), draw)]
    }),
  )
}

function unitOf({ grid, dice }: Draw): Unit {
  const isMetric = grid === MILLIMETRES
  if (dice.chance(5)) return isMetric ? 'feet-inches' : 'mm'
  return isMetric
    ? dice.pick(['mm', 'mm', 'cm', 'm'])
    : dice.pick(['feet-inches', 'feet-inches', 'inches'])
}

function roomTexts(
  worded: readonly Worded[],
  spoiled: Spoil | null,
  layout: Layout,
  { hands, draw }: { readonly hands: ReadonlyMap<string, Hand>; readonly draw: Draw },
): string[] {
  const { dice } = draw
  const isLoose = dice.chance(draw.angles === 'right' ? 60 : 35)
  const isDoubted = dice.chance(40)
  if (isLoose) draw.has('readings: off by a step')
  const byName = new Map(worded.map((one) => [one.room.name, one]))
  const texts = worded.map(({ room, words }, i) => {
    const hand = hands.get(layout.rooms[i % layout.rooms.length]!)!
    const sheet = { room, words, hand, draw, isLoose: isLoose && !room.isOutOfSquare, isDoubted }
    const own = spoiled?.kind === 'in a room' && spoiled.room === room ? spoiled.how : null
    return roomText(sheet, own, (name) => byName.get(name) ?? null)
  })
  const leads = worded.some(({ room }) => room.fixtures.some(({ to }) => to === 'crawl space'))
  if (leads) texts.push('room crawl space\n')
  if (spoiled?.kind === 'a room not measured') texts.push('room attic\n')
  return texts
}

/** Of the shortest that a product has: no more are laid in one floor. */
const MOST_PLANKS = 20_000

function areaOf(rooms: readonly Worded[]): number {
  const cells = rooms.flatMap(({ room }) => room.cells)
  return cells.reduce((sum, cell) => sum + (cell.east - cell.west) * (cell.north - cell.south), 0)
}

const FLOORS = ['ground', 'upper', "mum's"]

/** One floor through all rooms, or some in a floor of their own, of the same product or another. */
function floorTexts(
  rooms: readonly Worded[],
  products: readonly Product[],
  spoiled: Spoil | null,
  pen: Pen,
): string[] {
  const { dice } = pen.draw
  const count = Math.min(rooms.length, dice.pick([1, 1, 1, 2, 2, 3]))
  pen.draw.has(`floors: ${count}`)
  const shares = [
    rooms.slice(0, rooms.length - count + 1),
    ...rooms.slice(rooms.length - count + 1).map((room) => [room]),
  ]
  const texts = shares.map((own, i) => {
    const product = dice.pick(products)
    if (areaOf(own) > MOST_PLANKS * product.least) pen.draw.spoils('a floor of too many planks')
    return floorText(FLOORS[i]!, own, product, pen)
  })
  return spoiled === null
    ? texts
    : texts.map((text, i) => (i === 0 ? spoiledFloor(text, spoiled, pen.draw) : text))
}
