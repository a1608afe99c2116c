import { type Dice, dice as diceFrom } from './dice.ts'
import { furnish } from './furnish.ts'
import { type Fixture, type House, houseOf, type Room } from './house.ts'
import { PRODUCTS, type Product } from './products.ts'
import { roomText, type WallWords, wallWords } from './room-text.ts'
import { INCH, taped } from './tape.ts'

/** A job as text, made by chance from a seed. */
export interface RandomJob {
  readonly seed: number
  readonly text: string
  /** False where a wall was read a foot long: such a job must not come out clean. */
  readonly sound: boolean
  /** What it has: "shape: L", "running: along a slant". */
  readonly features: readonly string[]
}

export function randomJob(seed: number): RandomJob {
  const dice = diceFrom(seed)
  const house = houseOf(dice)
  furnish(house, dice)
  const isLoose = dice.chance(30)
  // Out of square, four walls and one diagonal hold no check: a slip there cannot be seen.
  const square = house.rooms.filter((room) => !room.isOutOfSquare)
  const slipped = square.length > 0 && dice.chance(5) ? dice.pick(square) : null
  const floors = floorsOf(house, dice)
  const rooms = house.rooms.map((room) => {
    const slip = room === slipped ? dice.below(room.corners.length) : null
    return roomText(room, { isLoose: isLoose && !room.isOutOfSquare, slip }, dice)
  })
  const products = PRODUCTS.filter((product) => floors.some((floor) => floor.product === product))
  const head = `floorscribe 1
job Floor ${seed}
units feet-inches
tape 1/16" + 1/32" per 10'
walls 4 1/2" thick
base 1/2" thick, kept
`
  return {
    seed,
    text: [
      head,
      ...products.map(({ text }) => text),
      ...rooms,
      ...floors.map(({ text }) => text),
    ].join('\n'),
    sound: slipped === null,
    features: featuresOf(house, floors, isLoose, slipped !== null),
  }
}

interface Floor {
  readonly product: Product
  readonly text: string
  readonly features: readonly string[]
}

/** One floor through all rooms, or now and then a second product in the last one. */
function floorsOf({ rooms }: House, dice: Dice): Floor[] {
  if (rooms.length > 1 && dice.chance(20)) {
    return [floorOf('ground', rooms.slice(0, -1), dice), floorOf('other', rooms.slice(-1), dice)]
  }
  return [floorOf('ground', rooms, dice)]
}

function floorOf(name: string, rooms: readonly Room[], dice: Dice): Floor {
  const product = dice.pick(PRODUCTS)
  const closets = rooms
    .flatMap(({ fixtures }) => fixtures.filter(({ kind }) => kind === 'closet'))
    .map(({ to }) => to)
    .filter(() => dice.chance(80))
  const run = runOf(rooms, dice)
  const breaks = dice.chance(25) ? breaksOf(rooms).slice(0, 1) : []
  const lines = [
    `floor ${name}`,
    `  rooms       ${[...rooms.map((room) => room.name), ...closets].join(', ')}`,
    `  lay         ${[product.name, ...run.phrases].join(', ')}`,
    ...run.lines,
    ...breaks,
  ]
  return {
    product,
    text: `${lines.join('\n')}\n`,
    features: [`product: ${product.feature}`, ...run.features, ...said('break', breaks)],
  }
}

/** A line for each doorway between two rooms of the floor that could part the run. */
function breaksOf(rooms: readonly Room[]): string[] {
  const isIn = (name: string) => rooms.some((room) => room.name === name)
  return rooms.flatMap(({ name, fixtures }) =>
    fixtures
      .filter(({ kind, to }) => kind !== 'closet' && isIn(to))
      .map(({ to }) => `  break       ${name} to ${to}, with t moulding`),
  )
}

interface Run {
  readonly phrases: readonly string[]
  readonly lines: readonly string[]
  readonly features: readonly string[]
}

const RUNS = ['east-west', 'north-south', 'north-east', 'north-west'] as const

function runOf(rooms: readonly Room[], dice: Dice): Run {
  const walls = rooms.flatMap((room) =>
    wallWords(room).map((wall) => ({ wall, of: `${wall.label} of ${room.name}` })),
  )
  const slanted = walls.filter(({ wall }) => wall.east !== 0 && wall.north !== 0)
  if (slanted.length > 0 && dice.chance(40)) {
    const { of } = dice.pick(slanted)
    const lines = dice.chance(50) ? [`  start       along ${of}`] : []
    return {
      phrases: [`running along ${of}`],
      lines,
      features: ['running: along a slant', ...said('start', lines)],
    }
  }
  if (dice.chance(15)) return { phrases: [], lines: [], features: ['running: not said'] }
  const way = dice.pick(dice.chance(80) ? RUNS.slice(0, 2) : RUNS.slice(2))
  const along = walls.filter(({ wall }) => runsAlong(wall, way))
  const start =
    along.length > 0 && dice.chance(60) ? [`  start       along ${dice.pick(along).of}`] : []
  const shift = dice.chance(20) ? [shiftLine(way, dice)] : []
  return {
    phrases: [`running ${way}`],
    lines: [...start, ...shift],
    features: [`running: ${way}`, ...said('start', start), ...said('shift', shift)],
  }
}

function said(what: string, lines: readonly string[]): string[] {
  return lines.length > 0 ? [`${what}: said`] : []
}

function runsAlong({ east, north }: WallWords, way: (typeof RUNS)[number]): boolean {
  if (way === 'east-west') return north === 0
  if (way === 'north-south') return east === 0
  return way === 'north-east' ? east === north : east === -north
}

function shiftLine(way: (typeof RUNS)[number], dice: Dice): string {
  const across = {
    'east-west': ['north', 'south'],
    'north-south': ['east', 'west'],
    'north-east': ['north-west', 'south-east'],
    'north-west': ['north-east', 'south-west'],
  }[way]
  return `  shift       ${taped(dice.between(1, 6 * INCH))} ${dice.pick(across)}`
}

function featuresOf(
  { rooms, loops }: House,
  floors: readonly Floor[],
  isLoose: boolean,
  isSlipped: boolean,
): string[] {
  const fixtures = rooms.flatMap((room) => room.fixtures)
  const obstacles = rooms.flatMap((room) => room.obstacles)
  return [
    `rooms: ${rooms.length}`,
    `floors: ${floors.length}`,
    ...(loops > 0 ? ['rooms: in a loop'] : []),
    ...rooms.map(({ kind }) => `shape: ${kind.replace(/,.*/, '')}`),
    ...rooms.flatMap(({ kind }) =>
      kind.includes(',') ? [`cut off: ${kind.replace(/.*, /, '')}`] : [],
    ),
    ...rooms.map(({ corners }) => `walls: ${bracket(corners.length)}`),
    ...fixtures.map((fixture) => `on a wall: ${inWords(fixture)}`),
    ...rooms.flatMap(({ walls }) => walls.map(({ kind }) => `wall: ${kind}`)),
    ...obstacles.map(({ kind, isRound }) => `inside: ${isRound ? 'round ' : ''}${kind}`),
    ...floors.flatMap(({ features }) => features),
    `readings: ${isSlipped ? 'a slip of a foot' : isLoose ? 'loose' : 'true to a sixteenth'}`,
  ]
}

function inWords({ kind, to, returns }: Fixture): string {
  if (kind === 'door' && to === 'outside') return 'door to outside'
  return returns[1] > 0 ? 'closet wider than its opening' : kind
}

function bracket(walls: number): string {
  const least = walls <= 4 ? 4 : walls <= 8 ? 5 : walls <= 14 ? 9 : 15
  return { 4: '4', 5: '5 to 8', 9: '9 to 14', 15: '15 to 24' }[least]!
}
