import type { Span } from '../../server/src/facts/span.ts'
import type {
  Check,
  Heading,
  Job,
  Obstacle,
  Opening,
  Part,
  Reading,
  Recess,
  Room,
  Wall,
  Way,
} from '../../server/src/job/job.ts'
import type { Name } from '../../server/src/language/tree.ts'
import { NM_PER_FOOT, NM_PER_INCH, type UnitStyle } from '../../server/src/units/length.ts'
import { ratio, ZERO } from '../../server/src/units/ratio.ts'
import { roundToNm } from '../../server/src/units/round.ts'
import { readLength } from '../../server/src/units/tape.ts'

/** Jobs by hand, without the language: each thing gets a span of its own, in the order it is made. */
let place = 0
const span = (): Span => {
  place += 100
  return { file: 'job.floor', start: place, end: place + 10 }
}

export const name = (text: string): Name => ({ text, key: text.toLowerCase(), span: span() })

export const nm = (text: string): number => {
  const found = readLength(text, { bare: null, style: 'feet-inches' })
  if (found.nm === null) throw new Error(`no length: ${text}`)
  return found.nm
}

/** 1/16" + 1/32" per 10', unless told. `?` is to be taken. */
export const reading = (text: string, sigma?: string, again: readonly string[] = []): Reading => {
  const length = text === '?' ? null : nm(text)
  const worth =
    NM_PER_INCH / 16 + roundToNm(((length ?? 0) * NM_PER_INCH) / 32 / (10 * NM_PER_FOOT))
  return {
    nm: length,
    sigma: sigma === undefined ? worth : nm(sigma),
    text,
    span: span(),
    about: false,
    doubtful: length === null,
    plane: 'wall',
    again: again.map((other) => reading(other)),
  }
}

export interface WallMore {
  readonly heading?: Heading
  readonly called?: string
  readonly bow?: string
  readonly bowIn?: string
  readonly sigma?: string
  readonly again?: readonly string[]
  readonly parts?: readonly string[]
  readonly openTo?: string
}

/** `['north', "12' 4\""]`, and what else the line says. */
export type WallSaid = readonly [Way | 'slant', string, WallMore?]

const wall = ([word, text, more = {}]: WallSaid, index: number): Wall => {
  const bow = more.bow ?? more.bowIn
  return {
    index,
    label: more.called ?? word,
    name: more.called === undefined ? null : name(more.called),
    heading: more.heading ?? { kind: 'way', way: word as Way },
    reading: reading(text, more.sigma, more.again),
    bow: bow === undefined ? null : { rise: more.bow ? nm(bow) : -nm(bow), span: span() },
    openTo: more.openTo === undefined ? null : name(more.openTo),
    stair: null,
    parts: (more.parts ?? []).map((part): Part => ({ reading: reading(part), of: null })),
    edge: { kind: null, gap: null, trim: null, span: null },
    span: span(),
    broken: false,
  }
}

export interface RoomMore {
  readonly openings?: readonly Opening[]
  readonly recesses?: readonly Recess[]
  readonly obstacles?: readonly Obstacle[]
  readonly checks?: readonly Check[]
  readonly corners?: readonly { readonly name: Name; readonly corner: number }[]
  readonly outOfSquare?: boolean
  readonly broken?: boolean
  readonly unfinished?: boolean
}

export const room = (text: string, walls: readonly WallSaid[], more: RoomMore = {}): Room => {
  const built = walls.map(wall)
  const open = built.filter((side) => side.openTo !== null).map(openSide)
  return {
    name: name(text),
    walls: built,
    corners: more.corners ?? [],
    openings: [...(more.openings ?? []), ...open],
    recesses: more.recesses ?? [],
    obstacles: more.obstacles ?? [],
    checks: more.checks ?? [],
    outOfSquare: more.outOfSquare ?? false,
    subfloor: [],
    existing: [],
    base: null,
    notes: [],
    span: span(),
    broken: more.broken ?? false,
    unfinished: more.unfinished ?? built.some((side) => side.reading.nm === null),
  }
}

/** The four walls of a rectangle, read clockwise from the north one. */
export const four = (north: string, east: string, south: string, west: string): WallSaid[] => [
  ['north', north],
  ['east', east],
  ['south', south],
  ['west', west],
]

const openSide = (side: Wall): Opening => ({
  kind: 'open side',
  label: 'open side',
  name: side.name,
  place: {
    wall: side.index,
    from: 'left',
    distance: reading(`0"`),
    width: side.reading,
    far: null,
  },
  to: side.openTo,
  thickness: { value: 0, span: null },
  jambs: false,
  sliding: false,
  trim: null,
  span: side.span,
})

export interface OpeningMore {
  readonly to?: string
  readonly called?: string
  readonly thick?: string | null
  /** Written on its own line and not once for the job. */
  readonly ownThickness?: boolean
  readonly far?: string
  readonly kind?: 'door' | 'opening'
}

/** `door(0, "30\"", "1' 2\" from right", { to: 'hall' })`: on which wall, how wide, where. */
export const door = (
  onWall: number,
  width: string,
  at: string,
  more: OpeningMore = {},
): Opening => {
  const [distance, from] = at.split(' from ')
  const line = span()
  const thick = more.thick === undefined ? `4 1/2"` : more.thick
  const thicknessSpan = more.ownThickness ? { ...line, start: line.start + 1 } : null
  return {
    kind: more.kind ?? 'door',
    label: more.called ?? 'door',
    name: more.called === undefined ? null : name(more.called),
    place: {
      wall: onWall,
      from: from as 'left' | 'right',
      distance: reading(distance!),
      width: reading(width),
      far: more.far === undefined ? null : reading(more.far),
    },
    to: more.to === undefined ? null : name(more.to),
    thickness: thick === null ? null : { value: nm(thick), span: thicknessSpan },
    jambs: true,
    sliding: false,
    trim: null,
    span: line,
  }
}

export interface RecessMore {
  readonly deep?: string
  readonly inside?: string
  readonly left?: string
  readonly right?: string
  readonly thick?: string | null
  readonly called?: string
}

const maybe = (text: string | undefined) => (text === undefined ? null : reading(text))

export const recess = (
  kind: Recess['kind'],
  onWall: number,
  width: string,
  at: string,
  more: RecessMore = {},
): Recess => {
  const [distance, from] = at.split(' from ')
  const thick = more.thick === undefined ? `4 1/2"` : more.thick
  return {
    kind,
    label: more.called ?? kind,
    place: {
      wall: onWall,
      from: from as 'left' | 'right',
      distance: reading(distance!),
      width: reading(width),
      far: null,
    },
    deep: maybe(more.deep),
    inside: maybe(more.inside),
    leftReturn: maybe(more.left),
    rightReturn: maybe(more.right),
    thickness: thick === null || kind !== 'closet' ? null : { value: nm(thick), span: null },
    gap: null,
    span: span(),
  }
}

export const obstacle = (
  kind: Obstacle['kind'],
  size: { readonly round?: string; readonly eastWest?: string; readonly northSouth?: string },
  from: readonly (readonly [number, string])[],
): Obstacle => ({
  kind,
  label: kind,
  round: maybe(size.round),
  eastWest: maybe(size.eastWest),
  northSouth: maybe(size.northSouth),
  from: from.map(([onWall, text]) => ({ wall: onWall, distance: reading(text) })),
  gap: null,
  span: span(),
})

export const diagonal = (text: string, from: number, to: number): Check => ({
  kind: 'diagonal',
  from,
  to,
  reading: reading(text),
  span: span(),
})

export const across = (text: string, from: number, to: number, at = 'middle'): Check => {
  const [distance, side] = at.split(' from ')
  return {
    kind: 'across',
    from,
    to,
    at:
      at === 'middle'
        ? { kind: 'middle' }
        : { kind: side as 'left' | 'right', distance: nm(distance!) },
    reading: reading(text),
    span: span(),
  }
}

export const job = (rooms: readonly Room[], units: UnitStyle = 'feet-inches'): Job => ({
  title: 'test',
  site: '',
  date: '',
  revision: '',
  notes: [],
  units,
  jambsUnder: { value: 0, span: null },
  allowance: { value: ZERO, span: null },
  pile: { pieces: 8, courses: 6, span: null },
  rooms,
  products: [],
  floors: [],
  prices: [],
  holds: [],
  accepts: [],
})

export const turnRight = (degrees: number): Heading => ({
  kind: 'turn',
  degreesRight: ratio(degrees),
})
