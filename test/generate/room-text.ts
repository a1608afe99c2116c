import type { Dice } from './dice.ts'
import type { Fixture, Obstacle, Room } from './house.ts'
import type { Spot } from './outline.ts'
import { distance, taped } from './tape.ts'

const WAYS = [
  'north',
  'north-east',
  'east',
  'south-east',
  'south',
  'south-west',
  'west',
  'north-west',
] as const

/** How a wall is called in its room, and where it takes you. */
export interface WallWords {
  readonly word: string
  /** Its way where the room has just one of these, else the name that its line gives it. */
  readonly label: string
  readonly isNamed: boolean
  readonly east: number
  readonly north: number
}

export function wallWords({ corners, isOutOfSquare }: Room): readonly WallWords[] {
  const plain = corners.map((from, i) => {
    const to = corners[(i + 1) % corners.length]!
    const [east, north] = [to.x - from.x, to.y - from.y]
    return { word: wordOf(east, north, isOutOfSquare), east, north }
  })
  return plain.map(({ word, east, north }, i) => {
    const isNamed = word === 'slant' || plain.filter((other) => other.word === word).length > 1
    return { word, label: isNamed ? `side ${i + 1}` : word, isNamed, east, north }
  })
}

/** You walk a wall with it on your left, so you look at it a quarter turn left of your way. */
function wordOf(east: number, north: number, isOutOfSquare: boolean): string {
  let [x, y] = [-north, east]
  if (isOutOfSquare) [x, y] = Math.abs(x) > Math.abs(y) ? [x, 0] : [0, y]
  if (x !== 0 && y !== 0 && Math.abs(x) !== Math.abs(y)) return 'slant'
  const quarter = {
    '0,1': 0,
    '1,1': 1,
    '1,0': 2,
    '1,-1': 3,
    '0,-1': 4,
    '-1,-1': 5,
    '-1,0': 6,
    '-1,1': 7,
  }
  return WAYS[quarter[`${Math.sign(x)},${Math.sign(y)}` as keyof typeof quarter]]!
}

/** How the readings of a room depart from its true lengths. */
export interface Readings {
  /** Every wall may be read one sixteenth long or short. */
  readonly isLoose: boolean
  /** This wall is read a foot long. */
  readonly slip: number | null
}

/** A room's block, one wall a line. */
export function roomText(room: Room, readings: Readings, dice: Dice): string {
  const words = wallWords(room)
  const lines = [`room ${room.name}`]
  if (room.isOutOfSquare) lines.push('  out of square')
  for (const [i, wall] of words.entries()) {
    const notes = room.walls.filter((note) => note.wall === i).map(({ phrase }) => phrase)
    lines.push(wallLine(wall, read(wall, i, readings, dice), notes))
    const on = room.fixtures.filter((fixture) => fixture.wall === i)
    lines.push(
      ...on.sort((a, b) => a.left - b.left).map((one) => fixtureLine(one, wall, room, dice)),
    )
  }
  if (words.length === 4) lines.push(...diagonals(room, dice))
  lines.push(...room.obstacles.map((obstacle) => obstacleLine(obstacle, room, words)))
  return `${lines.join('\n')}\n`
}

function read({ east, north }: WallWords, index: number, readings: Readings, dice: Dice): number {
  const loose = readings.isLoose ? dice.between(-1, 1) : 0
  return distance(east, north) + loose + (readings.slip === index ? 12 * 16 : 0)
}

function line(indent: number, word: string, phrases: readonly string[]): string {
  const head = `${' '.repeat(indent)}${word}`
  return `${head.padEnd(13)} ${phrases.join(', ')}`
}

function wallLine(
  { word, label, isNamed, east, north }: WallWords,
  length: number,
  notes: readonly string[],
): string {
  const ways = [
    `${taped(Math.abs(east))} ${east > 0 ? 'east' : 'west'}`,
    `${taped(Math.abs(north))} ${north > 0 ? 'north' : 'south'}`,
  ]
  const phrases = [taped(length), ...(word === 'slant' ? ways : []), ...notes]
  return line(2, word, isNamed ? [...phrases, `called ${label}`] : phrases)
}

function fixtureLine(fixture: Fixture, wall: WallWords, room: Room, dice: Dice): string {
  const { kind, left, width, deep } = fixture
  const right = distance(wall.east, wall.north) - left - width
  const from = dice.chance(50) ? `${taped(left)} from left` : `${taped(right)} from right`
  const isPassage = kind === 'door' || kind === 'opening' || kind === 'pass-through'
  const more = isPassage
    ? [`to ${fixture.to}`]
    : [`${taped(deep)} deep`, ...closetWords(fixture, room)]
  return line(4, kind, [taped(width), from, ...more])
}

function closetWords(
  { kind, width, to, returns: [left, right] }: Fixture,
  { name }: Room,
): string[] {
  if (kind !== 'closet') return []
  const called = to === `${name} closet` ? [] : [`called ${to}`]
  if (right === 0) return called
  return [`${taped(left + width + right)} inside`, `${taped(left)} left return`, ...called]
}

/** Both diagonals of a room of four walls, or one of them. */
function diagonals({ corners, isOutOfSquare }: Room, dice: Dice): string[] {
  const names = ['south-west', 'north-west', 'north-east', 'south-east']
  const diagonal = (a: number, b: number) =>
    line(2, 'diagonal', [
      taped(distance(corners[b]!.x - corners[a]!.x, corners[b]!.y - corners[a]!.y)),
      `from ${names[a]} to ${names[b]}`,
    ])
  const both = [diagonal(1, 3), diagonal(2, 0)]
  if (isOutOfSquare) return dice.chance(80) ? both : both.slice(0, 1)
  return both.slice(0, dice.below(3))
}

function obstacleLine(
  { kind, isRound, box }: Obstacle,
  room: Room,
  words: readonly WallWords[],
): string {
  const size = isRound
    ? [`${taped(box.east - box.west)} round`]
    : [`${taped(box.east - box.west)} east-west`, `${taped(box.north - box.south)} north-south`]
  const from = (isEastWest: boolean) => {
    const index = words.findIndex(
      ({ east, north }, i) =>
        (isEastWest ? east === 0 : north === 0) && off(room.corners[i]!, north, east, box) > 0,
    )
    return `${taped(off(room.corners[index]!, words[index]!.north, words[index]!.east, box))} from ${words[index]!.label}`
  }
  return line(2, kind, [...size, from(true), from(false)])
}

/** How far the nearest face of a box lies inside a wall along an axis; the room is on the wall's right. */
function off(
  { x, y }: Spot,
  north: number,
  east: number,
  box: {
    readonly west: number
    readonly south: number
    readonly east: number
    readonly north: number
  },
): number {
  if (north > 0) return box.west - x
  if (north < 0) return x - box.east
  return east > 0 ? y - box.north : box.south - y
}
