import type { Draw } from './draw.ts'
import type { Room } from './house.ts'

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

const NAMES = ['window wall', 'range wall', 'long wall', 'stub']
const NASTY_NAMES = ['__proto__', 'جدار', 'wall of books', '1st', "mum's wall", 'door']

/** How a wall is called in its room, and where it takes you. */
export interface WallWords {
  readonly word: string
  /** Its way where the room has just one of these, else the name that its line gives it. */
  readonly label: string
  readonly isNamed: boolean
  readonly east: number
  readonly north: number
}

export function wallWords({ corners, isOutOfSquare }: Room, { dice, nasty }: Draw): WallWords[] {
  const plain = corners.map((from, i) => {
    const to = corners[(i + 1) % corners.length]!
    const [east, north] = [to.x - from.x, to.y - from.y]
    return { word: wordOf(east, north, isOutOfSquare), east, north }
  })
  const names = [...(nasty ? NASTY_NAMES : NAMES)]
  return plain.map(({ word, east, north }, i) => {
    const isNeeded = word === 'slant' || plain.filter((other) => other.word === word).length > 1
    const isNamed = isNeeded || dice.chance(10)
    const own = names.length > 0 && dice.chance(25) ? names.shift()! : `side ${i + 1}`
    return { word, label: isNamed ? own : word, isNamed, east, north }
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
