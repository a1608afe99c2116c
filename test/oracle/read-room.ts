import type { Base, Check, OnWall, Plane, Room, Tape, Thing, Wall } from './job.ts'
import { FOOT, INCH, readLength, readNumber } from './lengths.ts'
import { type Block, type Line, nameKey } from './lines.ts'
import { type Bare, firstOf, lengthSaid, nameSaid, type Reading, readingOf } from './phrases.ts'
import { type Ratio, ratio, times } from './ratio.ts'
import { kindSaid } from './read-floor.ts'

export const WAYS = [
  'north',
  'north-east',
  'east',
  'south-east',
  'south',
  'south-west',
  'west',
  'north-west',
]
const ON_WALLS = ['door', 'opening', 'pass-through', 'closet', 'alcove', 'hearth']
const THINGS = ['column', 'island', 'stairwell', 'vent']
const CHECKS = ['diagonal', 'across', 'tie']

/** A room's lines, each wall with what belongs to it. `tape` and `base` are the job's. */
export function readRoom({ head, lines }: Block, bare: Bare, tape: Tape, base: Base): Room {
  const walls: Wall[] = []
  const onWalls: Unbound[] = []
  const checks: Check[] = []
  const again = againBelow(lines, bare)
  for (const line of lines) {
    const last = walls.at(-1)
    const readings = (own: readonly Reading[]) => [...own, ...(again.get(line) ?? [])]
    if (WAYS.includes(line.word) || line.word === 'slant') walls.push(wallOf(line, bare, readings))
    else if (ON_WALLS.includes(line.word)) {
      onWalls.push(onWallOf(line, walls.length - 1, bare, readings))
    } else if (CHECKS.includes(line.word)) checks.push(checkOf(line, bare, readings))
    else if (line.word === 'corner' && last) {
      walls[walls.length - 1] = { ...last, corner: nameKey(line.rest) }
    } else if (line.word === 'parts' && last) {
      walls[walls.length - 1] = { ...last, parts: partsOf(line, bare) }
    }
  }
  return {
    key: nameKey(head.rest),
    tape: lines
      .filter(({ word }) => word === 'tape')
      .reduce((was, line) => readTape(line, bare, was), tape),
    base: lines
      .filter(({ word }) => word === 'base')
      .reduce((was, line) => readBase(line, bare, was), base),
    isOutOfSquare: lines.some(({ word }) => word === 'out of square'),
    walls,
    onWalls: onWalls.map((one) => {
      const wall = wallNamed(walls, one.elsewhere) ?? one.wall
      return { ...one, wall, from: endAt(walls, wall, one.from) }
    }),
    checks,
    things: lines.filter(({ word }) => THINGS.includes(word)).map((line) => thingOf(line, bare)),
  }
}

/** A wall by its name: what it is called, else the way that it alone has in its room. */
export function wallNamed(walls: readonly Wall[], name: string | null): number | null {
  if (name === null) return null
  const called = walls.findIndex((wall) => wall.called === name)
  const found = called < 0 ? walls.findIndex((wall) => wall.way === name) : called
  return found < 0 ? null : found
}

/** `1/16" + 1/32" per 10'`, `about 1/2"`, `touching base`; a part that is not said stays as it was. */
export function readTape({ phrases }: Line, bare: Bare, was: Tape): Tape {
  const about = firstOf(phrases, (phrase) =>
    /^about /i.test(phrase) ? readLength(phrase.slice(6), bare) : null,
  )
  const worth = firstOf(phrases, (phrase) => {
    const [, plus = '', more = '', per = ''] = /^(.*?)(?: \+ (.*) per (.*))?$/i.exec(phrase) ?? []
    const first = readLength(plus, bare)
    if (first === null) return null
    return { plus: first, more: readLength(more, bare) ?? 0n, per: readLength(per, bare) ?? FOOT }
  })
  return {
    ...was,
    ...(worth ?? {}),
    about: about ?? was.about,
    touching: touchingOf(phrases) ?? was.touching,
  }
}

export function readBase({ phrases }: Line, bare: Bare, was: Base): Base {
  const said = phrases.map((phrase) => phrase.toLowerCase())
  const fate = (['kept', 'off and back', 'new', 'none'] as const).find((one) => said.includes(one))
  return { thick: lengthSaid(phrases, 'thick', bare) ?? was.thick, fate: fate ?? was.fate }
}

function touchingOf(phrases: readonly string[]): Plane | null {
  return nameSaid(phrases, 'touching') as Plane | null
}

/** The readings of `again` lines, by the line that they repeat. */
function againBelow(lines: readonly Line[], bare: Bare): Map<Line, Reading[]> {
  const again = new Map<Line, Reading[]>()
  let repeated: Line | null = null
  for (const line of lines) {
    if (line.word !== 'again' && line.word !== 'note') repeated = line
    const reading = firstOf(line.phrases, (phrase) => readingOf(phrase, bare))
    if (line.word !== 'again' || repeated === null || reading === null) continue
    again.set(repeated, [...(again.get(repeated) ?? []), reading])
  }
  return again
}

type WithAgain = (own: readonly Reading[]) => readonly Reading[]

function ownReading({ phrases }: Line, bare: Bare): readonly Reading[] {
  const found = firstOf(phrases, (phrase) => readingOf(phrase, bare))
  return found === null ? [] : [found]
}

function wallOf(line: Line, bare: Bare, readings: WithAgain): Wall {
  const { phrases } = line
  const said = phrases.map((phrase) => phrase.toLowerCase())
  return {
    way: line.word,
    readings: readings(ownReading(line, bare)),
    touching: touchingOf(phrases),
    called: nameSaid(phrases, 'called'),
    takes: takesOf(phrases, bare),
    turn: turnOf(phrases),
    bow: bowOf(phrases, bare),
    openTo: nameSaid(phrases, 'open to'),
    isStair: said.some((phrase) => /^stair (up|down)$/.test(phrase)),
    kind: kindSaid(phrases),
    gap: lengthSaid(phrases, 'gap', bare),
    thick: lengthSaid(phrases, 'thick', bare),
    corner: null,
    parts: null,
  }
}

/** Where a slant takes you: `3' 0" east, 3' 0" south`. */
function takesOf(phrases: readonly string[], bare: Bare): Wall['takes'] {
  const part = (way: string) => lengthSaid(phrases, way, bare)
  const [east, west, north, south] = ['east', 'west', 'north', 'south'].map(part)
  if (east == null && west == null && north == null && south == null) return null
  return { east: (east ?? 0n) - (west ?? 0n), north: (north ?? 0n) - (south ?? 0n) }
}

/** Degrees to the right. */
function turnOf(phrases: readonly string[]): Ratio | null {
  return firstOf(phrases, (phrase) => {
    const [, degrees, side] = /^([\d.]+) ?° ?(left|right)$/i.exec(phrase) ?? []
    if (degrees === undefined || side === undefined) return null
    return times(readNumber(degrees), ratio(side.toLowerCase() === 'right' ? 1n : -1n))
  })
}

function bowOf(phrases: readonly string[], bare: Bare): Wall['bow'] {
  return firstOf(phrases, (phrase) => {
    const [, said = '', side = 'out'] = /^(.*) bow(?: (in|out))?$/i.exec(phrase) ?? []
    const rise = readingOf(said, bare)?.length ?? null
    return rise === null ? null : { rise, isOut: side.toLowerCase() === 'out' }
  })
}

/** What stands on a wall, its wall and the end that it is measured from still by name. */
type Unbound = Omit<OnWall, 'from'> & { readonly elsewhere: string | null; readonly from: string }

function onWallOf(line: Line, above: number, bare: Bare, readings: WithAgain): Unbound {
  const { phrases } = line
  const place = firstOf(phrases, (phrase) => placeOf(phrase, bare))
  const said = phrases.map((phrase) => phrase.toLowerCase())
  return {
    kind: line.word as OnWall['kind'],
    wall: above,
    elsewhere: nameSaid(phrases, 'in'),
    width: readings(ownReading(line, bare)),
    at: place?.near ?? null,
    from: place?.from ?? 'left',
    farAt: place?.far ?? null,
    to: nameSaid(phrases, 'to'),
    called: nameSaid(phrases, 'called'),
    isSliding: said.includes('sliding'),
    deep: lengthSaid(phrases, 'deep', bare),
    inside: lengthSaid(phrases, 'inside', bare),
    leftReturn: lengthSaid(phrases, 'left return', bare),
    rightReturn: lengthSaid(phrases, 'right return', bare),
    thick: lengthSaid(phrases, 'thick', bare),
    gap: lengthSaid(phrases, 'gap', bare),
  }
}

/** `1' 2" from left`, or both jambs: `1' 2" and 6' 2" from left`. */
function placeOf(phrase: string, bare: Bare) {
  const [, said = '', second, side = ''] = /^(.*?)(?: and (.*))? from (.*)$/i.exec(phrase) ?? []
  const near = readingOf(said, bare)
  if (near === null) return null
  return { near, from: nameKey(side), far: second === undefined ? null : readingOf(second, bare) }
}

/** The end of a wall that is told by the wall which meets it there. */
function endAt(walls: readonly Wall[], wall: number, from: string): 'left' | 'right' {
  if (from === 'left' || from === 'right') return from
  return wallNamed(walls, from) === (wall + 1) % walls.length ? 'right' : 'left'
}

function checkOf(line: Line, bare: Bare, readings: WithAgain): Check {
  return {
    kind: line.word as Check['kind'],
    readings: readings(ownReading(line, bare)),
    phrases: line.phrases,
  }
}

function partsOf({ phrases }: Line, bare: Bare): Wall['parts'] {
  return phrases.map((phrase) => {
    const [, kind, said = ''] = /^(?:([a-z-]+) )?(.*)$/i.exec(phrase) ?? []
    return { kind: kind?.toLowerCase() ?? null, length: readLength(said, bare) ?? 0n }
  })
}

function thingOf({ word, phrases }: Line, bare: Bare): Thing {
  const both = firstOf(phrases, (phrase) => {
    const [width, length] = phrase.split(/ x /i).map((part) => readLength(part, bare))
    return width != null && length != null ? { width, length } : null
  })
  const round = lengthSaid(phrases, 'round', bare)
  return {
    kind: word,
    round,
    eastWest: round ?? both?.width ?? lengthSaid(phrases, 'east-west', bare) ?? INCH,
    northSouth: round ?? both?.length ?? lengthSaid(phrases, 'north-south', bare) ?? INCH,
    from: phrases.flatMap((phrase) => {
      const [, said = '', wall = ''] = /^(.*?) from (.*)$/i.exec(phrase) ?? []
      const distance = readingOf(said, bare)?.length ?? null
      return distance === null ? [] : [{ wall: nameKey(wall), distance }]
    }),
    gap: lengthSaid(phrases, 'gap', bare),
  }
}
