import { apart, type Draw, inches } from './draw.ts'
import { type Fixture, overlap, type Room, squareWalls, stretch, type Wall } from './house.ts'
import type { Spot } from './outline.ts'

/** Makes a doorway, now and then two, between all rooms that lie back to back. */
export function connectAll(rooms: readonly Room[], draw: Draw): void {
  const tied: Tied = new Map(rooms.map((room, i) => [room, i]))
  const loose: (readonly [Room, Room])[] = []
  let doorways = 0
  rooms.forEach((one, i) => {
    for (const other of rooms.slice(i + 1)) {
      const isTied = tied.get(one) === tied.get(other)
      // Written from one side a doorway does not tell where it stands in the room beyond.
      const isWhole = !draw.dice.chance(isTied ? 40 : 2)
      const others = rooms.filter((room) => room !== one && room !== other)
      const made = connect([one, other], others, isWhole, draw)
      doorways += made
      const isOpen = one.walls.some(
        ({ kind, words }) => kind === 'open side' && words === other.name,
      )
      if (made > 0 && (isWhole || isOpen)) tie(tied, one, other)
      else if (made > 0) loose.push([one, other])
    }
  })
  const isLost = loose.some(([one, other]) => tied.get(one) !== tied.get(other))
  if (isLost) draw.spoils('a room that no doorway places')
  draw.has(`rooms: ${rooms.length}`)
  if (doorways >= rooms.length && rooms.length > 1) draw.has('rooms: in a loop')
}

/** Rooms that doorways place against one another share a number. */
type Tied = Map<Room, number>

function tie(tied: Tied, one: Room, other: Room): void {
  const [here, there] = [tied.get(one)!, tied.get(other)!]
  for (const [room, group] of tied) if (group === there) tied.set(room, here)
}

const PASSAGES = ['door', 'door', 'opening', 'opening', 'pass-through'] as const

/** How many doorways were made where walls of two rooms lie back to back, a wall's thickness apart. */
function connect(
  [one, other]: readonly [Room, Room],
  others: readonly Room[],
  isWhole: boolean,
  draw: Draw,
): number {
  for (const a of squareWalls(one.corners, one.isOutOfSquare)) {
    for (const b of squareWalls(other.corners, other.isOutOfSquare)) {
      if (isOpenBetween(a, b)) {
        openSide(one, a, other)
        openSide(other, b, one)
        draw.has('doorway: open side')
        return 1
      }
      const free = shared(a, b, draw)
      if (free === null || others.some(liesIn(free, a))) continue
      return doorwaysIn({ ...free, isWhole }, [one, a], [other, b], draw)
    }
  }
  return 0
}

/** Whether a room, one of a few inches, lies in the wall itself. */
const liesIn =
  ({ from, to, thick }: Pick<Free, 'from' | 'to' | 'thick'>, wall: Wall) =>
  ({ cells }: Room): boolean =>
    overlap([stretch(wall, from, to - from, 0, thick)], cells, 0)

function isOpenBetween(a: Wall, b: Wall): boolean {
  const same = (p: Spot, q: Spot) => p.x === q.x && p.y === q.y
  return same(a.from, b.to) && same(a.to, b.from)
}

function openSide(room: Room, { index }: Wall, to: Room): void {
  room.walls.push({ wall: index, kind: 'open side', words: to.name, size: null })
}

interface Free {
  readonly from: number
  readonly to: number
  /** The thickness of the wall between. */
  readonly thick: number
  /** Doorways in it are written from both rooms. */
  readonly isWhole: boolean
}

/** The stretch of wall a, from its left end, that wall b backs; null if it is short of a doorway. */
function shared(a: Wall, b: Wall, draw: Draw): Omit<Free, 'isWhole'> | null {
  const { inch } = draw.grid
  const between = (b.from.x - a.from.x) * -a.along.y + (b.from.y - a.from.y) * a.along.x
  const extra = between - apart(draw)
  const isOpposite = a.along.x === -b.along.x && a.along.y === -b.along.y
  if (!isOpposite || extra < 0 || extra > 8 * inch) return null
  const margin = 5 * inch
  const from = Math.max(0, distanceAlong(a, b.to)) + margin
  const to = Math.min(a.length, distanceAlong(a, b.from)) - margin
  return to - from < 30 * inch ? null : { from, to, thick: draw.thick + extra }
}

function distanceAlong({ from, along }: Wall, { x, y }: Spot): number {
  return (x - from.x) * along.x + (y - from.y) * along.y
}

type Side = readonly [Room, Wall]

function doorwaysIn(free: Free, here: Side, there: Side, draw: Draw): number {
  const [one, other] = [here[0], there[0]]
  const half = Math.floor((free.to - free.from) / 2)
  const apartBy = 3 * draw.grid.inch
  if (half < 33 * draw.grid.inch || !draw.dice.chance(draw.nasty ? 30 : 8)) {
    const called = draw.dice.chance(8) ? nameFree('arch', one, other) : null
    return doorway(free, called, [here, there], draw)
  }
  draw.has('doorway: two between the same rooms')
  const left = { ...free, to: free.from + half - apartBy }
  const right = { ...free, from: free.from + half + apartBy }
  doorway(left, nameFree('near door', one, other), [here, there], draw)
  doorway(right, nameFree('far door', one, other), [here, there], draw)
  return 2
}

/** A name that neither room has for a doorway yet. */
function nameFree(name: string, one: Room, other: Room): string {
  const taken = [...one.fixtures, ...other.fixtures].map(({ called }) => called)
  for (let number = 1; ; number += 1) {
    const free = number === 1 ? name : `${name} ${number}`
    if (!taken.includes(free)) return free
  }
}

function doorway(
  free: Free,
  called: string | null,
  [[one, a], [other, b]]: readonly [Side, Side],
  draw: Draw,
): 1 {
  const { dice, grid } = draw
  const width = Math.min(inches(draw, 28, 72), free.to - free.from)
  const left = dice.between(free.from, free.to - width)
  const kind = dice.pick(PASSAGES)
  const beyond = distanceAlong(a, b.from) - left - width
  const writtenBy = free.isWhole ? 'both' : dice.pick(['one', 'other'] as const)
  draw.has(`on a wall: ${kind}`)
  draw.has(`doorway: written from ${writtenBy === 'both' ? 'both sides' : 'one side'}`)
  if (free.thick > draw.thick) draw.has('thickness: of one doorway its own')
  const same: Pick<Fixture, 'kind' | 'width' | 'deep' | 'returns' | 'called' | 'thick'> = {
    kind,
    width,
    deep: 0,
    returns: [0, 0],
    called,
    thick: free.thick,
  }
  const isHere = writtenBy !== 'other'
  one.fixtures.push({ ...same, wall: a.index, left, to: other.name, isWritten: isHere })
  other.fixtures.push({
    ...same,
    wall: b.index,
    left: beyond,
    to: one.name,
    isWritten: writtenBy !== 'one',
  })
  if (width < 30 * grid.inch) draw.has('doorway: narrower than 30 in')
  return 1
}
