import { type Dice, dice as diceFrom } from './dice.ts'
import { furnish } from './furnish.ts'
import { type Angles, type Fixture, type House, houseOf, type Room } from './house.ts'
import { PRODUCTS, type Product } from './products.ts'
import { roomText, type WallWords, wallWords } from './room-text.ts'
import { INCH, taped } from './tape.ts'

/**
 * Jobs made by chance from a seed: the same seed gives the same bytes on any machine.
 *
 * - `randomJob(seed)`: anything that the language has.
 * - `rightAngledJob(seed)`: every wall on the axes and every run along them; nothing bowed, round or
 *   out of square. Readings may disagree a little, so that there is something to balance.
 * - `otherJob(seed)`: with at least one slant, bow, round column, room out of square or oblique run.
 *
 * What a generator says of its job (`sound`, `features`) comes from what it built, never from the
 * product: a test holds the product to it.
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

export function randomJob(seed: number): RandomJob {
  return jobOf(seed, 'any', diceFrom(seed))
}

export function rightAngledJob(seed: number): RandomJob {
  return jobOf(seed, 'right', diceFrom(seed))
}

/** Draws until one has such an angle; every second draw or so does. */
export function otherJob(seed: number): RandomJob {
  const dice = diceFrom(seed)
  for (;;) {
    const job = jobOf(seed, 'other', dice)
    if (job.features.some((feature) => OTHER_ANGLES.has(feature))) return job
  }
}

const OTHER_ANGLES: ReadonlySet<string> = new Set([
  'cut off: slant',
  'cut off: corner at 45° and slant',
  'cut off: corner at 45°',
  'shape: out of square',
  'wall: bow',
  'inside: round column',
  'running: along a slant',
  'running: north-east',
  'running: north-west',
])

function jobOf(seed: number, angles: Angles, dice: Dice): RandomJob {
  const house = houseOf(dice, angles)
  furnish(house, angles, dice)
  const isLoose = dice.chance(30)
  // Out of square, four walls and one diagonal hold no check: a slip there cannot be seen.
  const square = house.rooms.filter((room) => !room.isOutOfSquare)
  const slipped = square.length > 0 && dice.chance(5) ? dice.pick(square) : null
  const floors = floorsOf(house, angles, dice)
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
  const text = [
    head,
    ...products.map((product) => product.text),
    ...rooms,
    ...floors.map((floor) => floor.text),
  ].join('\n')
  return {
    seed,
    files: new Map([[ROOT, text]]),
    root: ROOT,
    text,
    sound: slipped === null,
    unsound: slipped === null ? [] : ['a slip of a foot'],
    features: featuresOf(house, floors, isLoose, slipped !== null),
  }
}

const ROOT = 'random.floor'

interface Floor {
  readonly product: Product
  readonly text: string
  readonly features: readonly string[]
}

/** One floor through all rooms, or now and then a second product in the last one. */
function floorsOf({ rooms }: House, angles: Angles, dice: Dice): Floor[] {
  if (rooms.length > 1 && dice.chance(20)) {
    return [
      floorOf('ground', rooms.slice(0, -1), angles, dice),
      floorOf('other', rooms.slice(-1), angles, dice),
    ]
  }
  return [floorOf('ground', rooms, angles, dice)]
}

function floorOf(name: string, rooms: readonly Room[], angles: Angles, dice: Dice): Floor {
  const product = dice.pick(PRODUCTS)
  const closets = rooms
    .flatMap(({ fixtures }) => fixtures.filter(({ kind }) => kind === 'closet'))
    .map(({ to }) => to)
    .filter(() => dice.chance(80))
  const run = runOf(rooms, angles, dice)
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

function runOf(rooms: readonly Room[], angles: Angles, dice: Dice): Run {
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
  const way = dice.pick(angles === 'right' || dice.chance(80) ? RUNS.slice(0, 2) : RUNS.slice(2))
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
