import { type Draw, inches } from './draw.ts'
import type { Fixture, Room } from './house.ts'
import { named } from './names.ts'
import { type Hand, written } from './notation.ts'
import type { Product } from './products.ts'
import type { WallWords } from './wall-words.ts'

/** A room with what its walls are called. */
export interface Worded {
  readonly room: Room
  readonly words: readonly WallWords[]
}

/** A floor block through some rooms, with some of their closets. */
export function floorText(
  name: string,
  rooms: readonly Worded[],
  product: Product,
  { hand, draw }: { readonly hand: Hand; readonly draw: Draw },
): string {
  const { dice } = draw
  const closets = rooms
    .flatMap(({ room }) => room.fixtures.filter(({ kind }) => kind === 'closet'))
    .map(({ to }) => to)
    .filter(() => dice.chance(75))
  const inside = [...rooms.map(({ room }) => room.name), ...closets]
  const say = (steps: number) => written(steps, hand, draw)
  const { phrases, lines } = runOf(rooms, say, draw)
  const all = [
    ['rooms', inside.map((one) => named(one, draw)).join(', ')] as const,
    ['lay', [named(product.name, draw), ...phrases].join(', ')] as const,
    ...lines,
    ...breaks(rooms, draw),
    ...edges(rooms, inside, say, draw),
    ...others(draw),
  ]
  for (const [word] of all) draw.has(`floor line: ${word}`)
  const text = all.map(([word, said]) => `  ${word.padEnd(11)} ${said}\n`).join('')
  return `floor ${named(name, draw)}\n${text}`
}

type Line = readonly [word: string, said: string]
type Say = (steps: number) => string

const RUNS = ['east-west', 'north-south', 'north-east', 'north-west'] as const
type Way = (typeof RUNS)[number]

interface Run {
  readonly phrases: readonly string[]
  readonly lines: readonly Line[]
}

function runOf(rooms: readonly Worded[], say: Say, draw: Draw): Run {
  const { dice, has } = draw
  const walls = rooms.flatMap(({ room, words }) =>
    words.map((wall) => ({
      wall,
      of: () => `along ${named(wall.label, draw)} of ${named(room.name, draw)}`,
    })),
  )
  const isSkew = ({ wall: { east, north } }: (typeof walls)[number]) => east !== 0 && north !== 0
  const askew = walls.filter(isSkew)
  if (askew.length > 0 && dice.chance(35)) {
    has('running: along a slant')
    const { of } = dice.pick(askew)
    return { phrases: [`running ${of()}`], lines: dice.chance(50) ? [['start', of()]] : [] }
  }
  if (dice.chance(12)) {
    has('running: not said')
    return { phrases: [], lines: [] }
  }
  const way = dice.pick(
    draw.angles === 'right' || dice.chance(85) ? RUNS.slice(0, 2) : RUNS.slice(2),
  )
  const along = walls.filter(({ wall }) => runsAlong(wall, way))
  const start: Line[] =
    along.length > 0 && dice.chance(60) ? [['start', dice.pick(along).of()]] : []
  const shift = dice.chance(20) ? [shiftLine(way, say, draw)] : []
  const isByWall = along.length > 0 && dice.chance(15)
  has(isByWall ? 'running: along a square wall' : `running: ${way}`)
  const phrase = isByWall ? `running ${dice.pick(along).of()}` : `running ${way}`
  return { phrases: [phrase], lines: [...start, ...shift] }
}

function runsAlong({ east, north }: WallWords, way: Way): boolean {
  if (way === 'east-west') return north === 0
  if (way === 'north-south') return east === 0
  return way === 'north-east' ? east === north : east === -north
}

function shiftLine(way: Way, say: Say, draw: Draw): Line {
  const across = {
    'east-west': ['north', 'south'],
    'north-south': ['east', 'west'],
    'north-east': ['north-west', 'south-east'],
    'north-west': ['north-east', 'south-west'],
  }[way]
  return ['shift', `${say(inches(draw, 0.125, 6))} ${draw.dice.pick(across)}`]
}

/** Doorways that "den to hall" tells without doubt: by their name where there are several. */
function toldOf(room: Room, fixture: Fixture, draw: Draw): string | null {
  const same = room.fixtures.filter(({ to }) => to === fixture.to)
  if (same.length > 1 && fixture.called === null) return null
  const called = same.length > 1 ? `, called ${named(fixture.called!, draw)}` : ''
  return `${named(room.name, draw)} to ${named(fixture.to, draw)}${called}`
}

/** The run parted in a doorway between two rooms of the floor. */
function breaks(rooms: readonly Worded[], draw: Draw): Line[] {
  if (!draw.dice.chance(20)) return []
  const isIn = (name: string) => rooms.some(({ room }) => room.name === name)
  const between = rooms.flatMap(({ room }) =>
    room.fixtures
      .filter(({ to, kind }) => kind !== 'closet' && isIn(to))
      .map((one) => ({ room, one })),
  )
  if (between.length === 0) return []
  const { room, one } = draw.dice.pick(between)
  const told = toldOf(room, one, draw)
  if (told === null) return []
  return [['break', draw.dice.chance(70) ? `${told}, with t moulding` : told]]
}

const TRIMS = ['t moulding', 'reducer', 'end cap', 'the old threshold']
const KINDS = ['base kept', 'no base', 'tub', 'cabinet', 'slider', 'open edge']

/** What the rim meets at a wall, a stair and a doorway that leads out of the floor. */
function edges(rooms: readonly Worded[], inside: readonly string[], say: Say, draw: Draw): Line[] {
  const { dice, grid } = draw
  return rooms.flatMap(({ room, words }): Line[] => {
    const lines: Line[] = []
    const gap = dice.chance(40) ? [`${say(Math.round(grid.inch / dice.pick([2, 4, 8])))} gap`] : []
    const kind = dice.chance(50) ? [dice.pick(KINDS)] : [`with ${dice.pick(TRIMS)}`]
    const plain = words.filter((_, i) => !room.walls.some(({ wall }) => wall === i))
    if (plain.length > 0 && dice.chance(10)) {
      const where = `${named(dice.pick(plain).label, draw)} of ${named(room.name, draw)}`
      lines.push(['edge', [where, ...kind, ...gap].join(', ')])
    }
    if (room.walls.some((note) => note.kind === 'stair') && dice.chance(60)) {
      lines.push(['edge', `${named(room.name, draw)} to stair, with stair nosing`])
    }
    const out = room.fixtures.filter(({ to }) => to !== '' && !inside.includes(to))
    if (out.length > 0 && dice.chance(50)) {
      const told = toldOf(room, dice.pick(out), draw)
      if (told !== null) lines.push(['edge', [told, `with ${dice.pick(TRIMS)}`, ...gap].join(', ')])
    }
    return lines
  })
}

const OTHERS: readonly Line[] = [
  // Whatever comes of the job lies within so much of so many.
  ['expect', '1000000 planks, within 100%'],
  ['expect', '500000 sq ft, 100000 boxes, within 100%'],
  ['note', 'the owner sweeps first'],
  ['tag', 'phase 2'],
  ['accept', 'stagger'],
]

function others({ dice }: Draw): Line[] {
  return OTHERS.filter(() => dice.chance(5))
}
