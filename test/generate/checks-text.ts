import { inches } from './draw.ts'
import { type Room, squareWalls, type Wall } from './house.ts'
import { named } from './names.ts'
import { distance } from './notation.ts'
import { fanOf } from './off-square.ts'
import { line, plain, reading, type Sheet } from './sheet.ts'
import type { WallWords } from './wall-words.ts'

/** Corners that a line between two walls has to name, by where they are: corner i is where wall i begins. */
export type CornersNamed = Map<number, string>

/** Diagonals, widths across, ties and tested corners: what closes or holds the shape of a room. */
export function checkLines(sheet: Sheet, corners: CornersNamed, beyond: Beyond): string[] {
  const { room, draw } = sheet
  if (room.isOutOfSquare) return fixingDiagonals(sheet, corners)
  const { dice } = draw
  const count = room.corners.length
  const lines: (string | null)[] = []
  const isPlain = count === 4
  for (let i = dice.pick(isPlain ? [0, 0, 1, 2] : [0, 0, 0, 1]); i > 0; i -= 1) {
    const from = dice.below(count)
    const to = isPlain ? from + 2 : from + dice.between(2, count - 2)
    lines.push(diagonal(sheet, corners, from, to % count))
  }
  if (dice.chance(15)) lines.push(across(sheet))
  if (dice.chance(8)) lines.push(cornerTie(sheet))
  if (dice.chance(8)) lines.push(squareCorner(sheet, corners))
  if (dice.chance(15)) lines.push(roomTie(sheet, beyond))
  return lines.filter((said) => said !== null)
}

/** A room out of square of four walls needs one diagonal, a larger one as many as make it triangles. */
function fixingDiagonals(sheet: Sheet, corners: CornersNamed): string[] {
  const count = sheet.room.corners.length
  if (count === 4) {
    const both = [diagonal(sheet, corners, 1, 3), diagonal(sheet, corners, 2, 0)]
    return sheet.draw.dice.chance(80) ? both : both.slice(0, 1)
  }
  const from = fanOf(sheet.room.corners)!
  const fan = Array.from({ length: count - 3 }, (_, i) => (from + 2 + i) % count)
  return fan.map((to) => diagonal(sheet, corners, from, to))
}

function diagonal(sheet: Sheet, corners: CornersNamed, from: number, to: number): string {
  const { room, draw } = sheet
  const [a, b] = [room.corners[from]!, room.corners[to]!]
  const ends = [from, to].map((corner) => named(cornerName(sheet, corners, corner), draw))
  draw.has('check: diagonal')
  const length = reading(sheet, distance(b.x - a.x, b.y - a.y))
  return line(1, 'diagonal', [length, `from ${ends[0]} to ${ends[1]}`], draw)
}

/** By the ways of its two walls where the room has just one such corner, else by a line of its own. */
function cornerName({ words, draw }: Sheet, corners: CornersNamed, corner: number): string {
  const own = corners.get(corner)
  if (own !== undefined) return own
  const ways = waysAt(words, corner)
  const isOnlyOne = words.filter((_, other) => waysAt(words, other) === ways).length === 1
  if (ways !== null && isOnlyOne && !draw.dice.chance(10)) return ways
  const name = `${draw.nasty ? 'corner of' : 'post'} ${corner + 1}`
  corners.set(corner, name)
  draw.has('corner: named')
  return name
}

function waysAt(words: readonly WallWords[], corner: number): string | null {
  const around = [words.at(corner - 1)!.word, words[corner]!.word]
  const northSouth = around.find((word) => word === 'north' || word === 'south')
  const eastWest = around.find((word) => word === 'east' || word === 'west')
  return northSouth === undefined || eastWest === undefined ? null : `${northSouth}-${eastWest}`
}

/** Between two walls that face each other, square off the first at a place where the second lies before it. */
function across(sheet: Sheet): string | null {
  const { room, draw, words } = sheet
  const walls = squareWalls(room.corners, false)
  const from = draw.dice.pick(walls)
  const facing = walls.flatMap((to) => {
    const free = before(from, to)
    return free !== null && free.to - free.from > 2 * draw.grid.inch ? [{ wall: to, ...free }] : []
  })
  if (facing.length === 0) return null
  const to = draw.dice.pick(facing)
  const label = ({ index }: Wall) => named(words[index]!.label, draw)
  const half = from.length / 2
  const isMiddle = to.from < half && half < to.to && draw.dice.chance(50)
  const at = draw.dice.between(to.from + draw.grid.inch, to.to - draw.grid.inch)
  const place = isMiddle
    ? 'middle'
    : draw.dice.chance(50)
      ? `${plain(sheet, at)} from left`
      : `${plain(sheet, from.length - at)} from right`
  draw.has(`check: across, ${isMiddle ? 'middle' : 'from a side'}`)
  const ends = `from ${label(from)} to ${label(to.wall)}`
  return line(1, 'across', [reading(sheet, depth(from, to.wall)), ends, place], draw)
}

/** How far a wall lies in front of another, square off it. */
function depth(from: Wall, to: Wall): number {
  return (to.from.x - from.from.x) * from.along.y - (to.from.y - from.from.y) * from.along.x
}

/** The stretch of a wall, from its left, that another one in front faces; null where none does. */
function before(from: Wall, to: Wall): { readonly from: number; readonly to: number } | null {
  const isFacing = from.along.x === -to.along.x && from.along.y === -to.along.y
  if (!isFacing || depth(from, to) <= 0) return null
  const along = (spot: Wall['from']) =>
    (spot.x - from.from.x) * from.along.x + (spot.y - from.from.y) * from.along.y
  return { from: Math.max(0, along(to.to)), to: Math.min(from.length, along(to.from)) }
}

/** A corner that stands out into no room: its walls turn to the right by a right angle. */
function squareCornerOf(sheet: Sheet): number | null {
  const { words, draw } = sheet
  const found = words.flatMap(({ east, north }, corner) => {
    const wall = words.at(corner - 1)!
    const isSquare = east * wall.east + north * wall.north === 0
    const turnsRight = wall.east * north - wall.north * east < 0
    return isSquare && turnsRight ? [corner] : []
  })
  return found.length === 0 ? null : draw.dice.pick(found)
}

function cornerTie(sheet: Sheet): string | null {
  const { words, draw } = sheet
  const corner = squareCornerOf(sheet)
  if (corner === null) return null
  const [first, second] = [words.at(corner - 1)!, words[corner]!]
  const most = Math.min(distance(first.east, first.north), distance(second.east, second.north))
  if (most < draw.grid.foot) return null
  const [a, b] = [inches(draw, 6, most / draw.grid.inch), inches(draw, 6, most / draw.grid.inch)]
  draw.has('check: corner tie')
  const mark = (steps: number, { label }: WallWords) =>
    `${plain(sheet, steps)} along ${named(label, draw)}`
  return line(1, 'tie', [reading(sheet, distance(a, b)), mark(a, first), mark(b, second)], draw)
}

function squareCorner(sheet: Sheet, corners: CornersNamed): string | null {
  const corner = squareCornerOf(sheet)
  if (corner === null) return null
  sheet.draw.has('check: square')
  return line(1, 'square', [named(cornerName(sheet, corners, corner), sheet.draw)], sheet.draw)
}

/** The rooms that a tie may lead to, with what their walls are called. */
export type Beyond = (
  name: string,
) => { readonly room: Room; readonly words: readonly WallWords[] } | null

/** Through a doorway, from the wall opposite it to the wall opposite it in the room beyond. */
function roomTie(sheet: Sheet, beyond: Beyond): string | null {
  const { room, words, draw } = sheet
  const doorway = room.fixtures.find(({ to }) => beyond(to) !== null)
  const other = doorway === undefined ? null : beyond(doorway.to)
  if (doorway === undefined || other === null || other.room.isOutOfSquare) return null
  const walls = squareWalls(room.corners, false)
  const wall = walls.find(({ index }) => index === doorway.wall)!
  const from = walls.find((one) => isAlong(one, wall, -1))
  const to = squareWalls(other.room.corners, false).find((one) => isAlong(one, wall, 1))
  if (from === undefined || to === undefined) return null
  draw.has('check: tie to another room')
  const ends = `from ${named(words[from.index]!.label, draw)} to ${named(other.words[to.index]!.label, draw)} of ${named(other.room.name, draw)}`
  return line(1, 'tie', [reading(sheet, Math.abs(depth(from, to))), ends], draw)
}

function isAlong(one: Wall, { along }: Wall, way: 1 | -1): boolean {
  return one.along.x === way * along.x && one.along.y === way * along.y
}
