import { type Beyond, type CornersNamed, checkLines } from './checks-text.ts'
import type { Obstacle, WallNote } from './house.ts'
import { named } from './names.ts'
import { distance } from './notation.ts'
import { onWallLines } from './on-wall-text.ts'
import type { Rectangle, Spot } from './outline.ts'
import { line, plain, reading, type Sheet, waysOf } from './sheet.ts'
import { turnOf } from './turning.ts'
import type { WallWords } from './wall-words.ts'

/** What is put into a room's text so that it cannot come out clean. */
export type Spoiled = {
  readonly kind: 'a slip of a foot' | 'a wall still to read' | 'an opening past its wall'
  readonly wall: number
} | null

/** A room's block, one wall a line. */
export function roomText(sheet: Sheet, spoiled: Spoiled, beyond: Beyond): string {
  const { room, draw, words } = sheet
  const corners: CornersNamed = new Map()
  const checks = checkLines(sheet, corners, beyond)
  const lines = [`room ${named(room.name, draw)}`, ...headLines(sheet)]
  const below: string[] = []
  for (const [i, wall] of words.entries()) {
    if (i > 0) lines.push(...cornerLine(corners, i, sheet))
    const isSpoiled = spoiled?.wall === i ? spoiled.kind : null
    const said = wallLine(sheet, i, isSpoiled)
    lines.push(said)
    if (isSpoiled === null && !said.includes(', touching')) lines.push(...againLine(sheet, wall))
    if (isSpoiled === 'an opening past its wall') lines.push(pastWall(sheet, wall))
    const on = onWallLines(sheet, i)
    lines.push(...on.under, ...noteLine(sheet))
    below.push(...on.below)
  }
  lines.push(...cornerLine(corners, 0, sheet), ...below, ...checks)
  lines.push(...room.obstacles.map((obstacle) => obstacleLine(obstacle, sheet)))
  lines.push(...tailLines(sheet))
  return `${lines.join('\n')}\n`
}

function cornerLine(corners: CornersNamed, corner: number, { draw }: Sheet): string[] {
  const name = corners.get(corner)
  return name === undefined ? [] : [line(1, 'corner', [named(name, draw)], draw)]
}

function headLines(sheet: Sheet): string[] {
  const { room, draw } = sheet
  const { dice, base, has } = draw
  const lines = room.isOutOfSquare ? ['  out of square'] : []
  if (dice.chance(10)) {
    has('room line: tape')
    lines.push(line(1, 'tape', [plain(sheet, Math.round(draw.grid.inch / 8))], draw))
  }
  if (dice.chance(10) && base.touching !== null && base.thick > 0) {
    has('room line: base')
    const fate = dice.pick(['kept', 'off and back', 'new', 'none'])
    lines.push(line(1, 'base', [`${plain(sheet, base.thick)} thick`, fate], draw))
  }
  return lines
}

/** A door that begins a foot before its wall ends. */
function pastWall(sheet: Sheet, { east, north }: WallWords): string {
  const { grid } = sheet.draw
  const left = Math.max(0, distance(east, north) - grid.foot)
  const place = `${plain(sheet, left)} from left`
  return line(2, 'door', [plain(sheet, 4 * grid.foot), place, 'to outside'], sheet.draw)
}

const TAILS = [
  ['subfloor', 'slab'],
  ['subfloor', 'plywood, boards'],
  ['existing', 'carpet, pad, tack strip'],
  ['existing', 'tile, stays'],
  ['note', 'dog in the yard; ring # 4 first, twice'],
  ['tag', 'crew blue'],
  ['hold', 'slab reading, by the lab, on report 12, cleared 2027-05-02'],
  ['accept', 'narrowest rip, because "the base covers it"'],
] as const

function tailLines({ draw }: Sheet): string[] {
  return TAILS.filter(() => draw.dice.chance(5)).map(([word, text]) => {
    draw.has(`room line: ${word}`)
    return line(1, word, [text], draw)
  })
}

function noteLine({ draw }: Sheet): string[] {
  if (!draw.dice.chance(3)) return []
  draw.has('room line: note of a wall')
  return ['    note      radiator hides the corner']
}

function wallLine(sheet: Sheet, index: number, spoiled: string | null): string {
  const { room, draw } = sheet
  const wall = sheet.words[index]!
  const notes = room.walls
    .filter((note) => note.wall === index)
    .flatMap((note) => noteWords(note, sheet))
  const way = wall.word === 'slant' ? slantWay(sheet, index) : []
  const called = wall.isNamed ? [`called ${named(wall.label, draw)}`] : []
  const length = wallReading(sheet, wall, spoiled)
  return line(1, wall.word, [...length, ...way, ...notes, ...called], draw)
}

function wallReading(sheet: Sheet, wall: WallWords, spoiled: string | null): string[] {
  const { draw } = sheet
  const length = distance(wall.east, wall.north)
  if (spoiled === 'a wall still to read') return ['?']
  if (spoiled === 'a slip of a foot') return [plain(sheet, length + draw.grid.foot)]
  const other = otherPlane(sheet)
  if (other === null) return [reading(sheet, length)]
  draw.has('reading: to another plane')
  return [reading(sheet, length + other.more), `touching ${other.plane}`]
}

/** In a plain room the one wall that was read against the other of base and wall, and by how much more. */
function otherPlane({ room, draw, words }: Sheet): { plane: string; more: number } | null {
  const { base, dice } = draw
  const isPlain = words.length === 4 && !room.isOutOfSquare
  if (!isPlain || base.thick === 0 || !dice.chance(4)) return null
  if (base.touching === 'wall') return { plane: 'base', more: -2 * base.thick }
  const isAgainstBase = base.touching === 'base' || (base.touching === null && base.fate === 'kept')
  return isAgainstBase ? { plane: 'wall', more: 2 * base.thick } : null
}

/** Where a slant takes you, or its turn from the wall before. */
function slantWay(sheet: Sheet, index: number): readonly string[] {
  const { words, draw } = sheet
  const wall = words[index]!
  if (draw.dice.chance(60)) {
    draw.has('slant: by where it takes you')
    return waysOf(sheet, wall)
  }
  const turn = turnOf(words.at(index - 1)!, wall)
  draw.has('slant: by its turn')
  const degrees = `${Math.floor(Math.abs(turn) / 100)}.${`${Math.abs(turn) % 100}`.padStart(2, '0')}`
  return [`${degrees}° ${turn > 0 ? 'right' : 'left'}`]
}

function noteWords({ kind, words, size }: WallNote, sheet: Sheet): string[] {
  switch (kind) {
    case 'open side':
      return [`open to ${named(words, sheet.draw)}`]
    case 'bow':
      return [`${plain(sheet, size!)} bow ${words}`.trimEnd()]
    case 'stair':
      return [`stair ${words}`]
    case 'edge':
      return size === null ? [words] : [words, `${plain(sheet, size)} gap`]
  }
}

function againLine(sheet: Sheet, { east, north }: WallWords): string[] {
  if (!sheet.isDoubted || !sheet.draw.dice.chance(5)) return []
  sheet.draw.has('reading: again')
  return [line(2, 'again', [reading(sheet, distance(east, north))], sheet.draw)]
}

function obstacleLine({ kind, isRound, box }: Obstacle, sheet: Sheet): string {
  const { draw } = sheet
  const { dice } = draw
  const [wide, deep] = [box.east - box.west, box.north - box.south]
  const size = isRound
    ? [`${reading(sheet, wide)} round`]
    : dice.chance(50)
      ? [`${plain(sheet, wide)} x ${plain(sheet, deep)}`]
      : [`${reading(sheet, wide)} east-west`, `${reading(sheet, deep)} north-south`]
  const called = dice.chance(15) ? [`called ${dice.pick(['post', 'the old stove'])}`] : []
  const gap = dice.chance(15) ? [`${plain(sheet, Math.round(draw.grid.inch / 2))} gap`] : []
  const places = [fromWall(sheet, box, true), fromWall(sheet, box, false)]
  return line(1, kind, [...size, ...places, ...called, ...gap], draw)
}

/** How far the nearest face of a box lies from a wall that it lies before, of those along one axis. */
function fromWall(sheet: Sheet, box: Rectangle, isEastWest: boolean): string {
  const { room, words, draw } = sheet
  const before = words.flatMap((wall, i) => {
    const isRight = isEastWest ? wall.east === 0 : wall.north === 0
    return isRight && off(room.corners[i]!, wall, box) > 0 ? [i] : []
  })
  const index = draw.dice.pick(before)
  const { label, north, east } = words[index]!
  const steps = off(room.corners[index]!, { north, east }, box)
  return `${reading(sheet, steps)} from ${named(label, draw)}`
}

/** How far the nearest face of a box lies inside a wall along an axis; the room is on the wall's right. */
function off(
  { x, y }: Spot,
  { north, east }: Pick<WallWords, 'north' | 'east'>,
  box: Rectangle,
): number {
  if (north > 0) return box.west - x
  if (north < 0) return x - box.east
  return east > 0 ? y - box.north : box.south - y
}
