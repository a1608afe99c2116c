import type { Span } from '../facts/span.ts'
import type { EdgeKind, Floor, FloorEdge, Job, Room, Wall } from '../job/job.ts'
import { keyOf } from '../language/name.ts'
import type { Doorway } from '../survey/survey.ts'
import type { Nm } from '../units/length.ts'
import { gapAt } from './edge-gaps.ts'

/** What the text says of one edge of a floor, settled: the floor's own `edge` line before the room's. */
export interface EdgeSettled {
  readonly kind: EdgeKind | null
  readonly gap: Nm
  readonly trim: string | null
  readonly label: string
  /** Name of the room or closet that the edge bounds. */
  readonly room: string
  readonly span: Span | null
  /** A break: the floor goes on beyond, and yet is parted here. */
  readonly parts: boolean
  /**
   * Which wall stands here, for two may have one name; null in an opening, at a step, round an obstacle.
   */
  readonly wall: string | null
}

/** What of a floor and of the job around it the edges ask for again and again. */
export interface FloorSaid {
  /** The floor's `edge` lines of walls by room and wall, and of doorways by the rooms on both sides. */
  readonly ofWalls: ReadonlyMap<string, FloorEdge>
  readonly ofDoorways: ReadonlyMap<string, readonly FloorEdge[]>
  /** Its `break` lines by the rooms on both sides. */
  readonly breaks: ReadonlyMap<string, readonly Floor['breaks'][number][]>
  readonly productGap: Nm
  readonly jambsUnder: Nm
}

export function floorSaid(job: Job, floor: Floor): FloorSaid {
  const product = job.products.find(({ name }) => name.key === floor.product?.key)
  return {
    ofWalls: new Map(
      floor.edges
        .flatMap((line) =>
          line.where.kind === 'wall'
            ? [[wallKey(line.where.room.key, line.where.wall), line] as const]
            : [],
        )
        // Of two lines for one wall the first has it.
        .toReversed(),
    ),
    ofDoorways: Map.groupBy(
      floor.edges.filter(({ where }) => where.kind === 'doorway'),
      ({ where }) => (where.kind === 'doorway' ? pairKey(where.from.key, where.to.key) : ''),
    ),
    breaks: Map.groupBy(floor.breaks, ({ from, to }) => pairKey(from.key, to.key)),
    productGap: product?.rules.gap.value ?? 0,
    jambsUnder: job.jambsUnder.value,
  }
}

/** Tells a wall from all others of the job; two of a room may have one name. */
export function wallKey(room: string, wall: number): string {
  return `${wall} ${room}`
}

/** The same from either side. */
function pairKey(a: string, b: string): string {
  return a < b ? `${a}\n${b}` : `${b}\n${a}`
}

/** A wall of a room, alcoves in it too. */
export function wallEdge(said: FloorSaid, room: Room, wall: Wall): EdgeSettled {
  if (wall.stair) return stairEdge(said, room, wall)
  const line = said.ofWalls.get(wallKey(room.name.key, wall.index))
  const kind = line?.kind ?? wall.edge.kind ?? baseKind(room)
  return {
    kind,
    gap: gapAt(kind ?? 'base kept', line?.gap ?? wall.edge.gap, said.productGap),
    trim: line?.trim ?? wall.edge.trim,
    label: `${wall.label} of ${room.name.text}`,
    room: room.name.text,
    span: line?.span ?? wall.edge.span ?? wall.span,
    parts: false,
    wall: wallKey(room.name.key, wall.index),
  }
}

/** A side where the floor ends at a step: at the back of a nosing, where one is said. */
function stairEdge(said: FloorSaid, room: Room, wall: Wall): EdgeSettled {
  const line =
    said.ofWalls.get(wallKey(room.name.key, wall.index)) ??
    lineBetween(said, { from: room.name.key, to: 'stair', called: null })
  const trim = line?.trim ?? wall.edge.trim
  const kind = line?.kind ?? wall.edge.kind ?? (trim === null ? null : 'nosing')
  return {
    kind,
    gap: gapAt(kind ?? 'nosing', line?.gap ?? wall.edge.gap, said.productGap),
    trim,
    label: `${room.name.text} to stair`,
    room: room.name.text,
    span: line?.span ?? wall.span,
    parts: false,
    wall: null,
  }
}

/** Any other edge of a room that is plain wall: a side of a recess, by its index in the room. */
export function plainEdge(
  said: FloorSaid,
  room: Room,
  { recess, side }: { readonly recess: number; readonly side: number },
  place: { readonly label: string; readonly room: string },
): EdgeSettled {
  const kind = baseKind(room)
  return {
    kind,
    gap: gapAt(kind ?? 'base kept', null, said.productGap),
    trim: null,
    ...place,
    span: room.recesses[recess]!.span,
    parts: false,
    // Two alcoves of a room may have one name; each side is a wall of its own.
    wall: `recess ${recess} of ${room.name.key}, side ${side}`,
  }
}

/**
 * The side of an opening. An undercut jamb is run under, and the gap lies in the undercut: the floor in
 * the opening is taken that much wider and keeps no gap. A finished side has its gap in the opening.
 */
export function jambEdge(
  said: FloorSaid,
  opening: {
    readonly label: string
    readonly room: string
    readonly undercut: boolean
    readonly span: Span
  },
): EdgeSettled {
  const { label, room, undercut, span } = opening
  const gap = undercut ? 0 : gapAt('jamb', null, said.productGap)
  return { kind: 'jamb', gap, trim: null, label, room, span, parts: false, wall: null }
}

export function obstacleEdge(
  said: FloorSaid,
  thing: {
    readonly kind: string
    readonly label: string
    readonly room: string
    readonly gap: Nm | null
    readonly span: Span
  },
): EdgeSettled {
  const kind: EdgeKind =
    thing.kind === 'hearth' ? 'hearth' : thing.kind === 'stairwell' ? 'open edge' : 'obstacle'
  return {
    kind,
    gap: gapAt(kind, thing.gap, said.productGap),
    trim: null,
    label: thing.label,
    room: thing.room,
    span: thing.span,
    parts: false,
    wall: null,
  }
}

/** Where two floors meet, or one is broken. */
export interface Meeting {
  /** Key of the room on this side. */
  readonly from: string
  /** Its name, and both names as people write them. */
  readonly room: string
  readonly label: string
  /** Key of what lies beyond: a room, 'outside', a closet; null where nothing is named. */
  readonly to: string | null
  /** Name of the opening, for two between the same rooms. */
  readonly called: string | null
  readonly trim: string | null
  /** A sliding door to the outside: the floor stops at its track. */
  readonly slider: boolean
  readonly parts: boolean
  readonly span: Span
}

/** How a floor ends where another one begins, or where it is broken. */
export function meetingEdge(said: FloorSaid, meeting: Meeting): EdgeSettled {
  const line = lineBetween(said, meeting)
  const cut = meeting.parts ? breakBetween(said, meeting) : undefined
  const trim = line?.trim ?? cut?.trim ?? meeting.trim
  const kind =
    line?.kind ?? (meeting.slider ? 'slider' : trim !== null || meeting.parts ? 'transition' : null)
  return {
    kind,
    gap: gapAt(kind ?? 'transition', line?.gap ?? null, said.productGap),
    trim,
    label: meeting.label,
    room: meeting.room,
    span: line?.span ?? cut?.span ?? meeting.span,
    parts: meeting.parts,
    wall: null,
  }
}

type Between = Pick<Meeting, 'from' | 'to' | 'called'>

/** The `break` line of the floor that parts it in the doorway between two rooms. */
export function breakBetween(
  { breaks }: FloorSaid,
  { from, to, called }: Between,
): Floor['breaks'][number] | undefined {
  if (to === null) return undefined
  return breaks.get(pairKey(from, to))?.find((line) => isFor(line, called))
}

/** Key of the name of the opening, from whichever side has one. */
export function calledOf(doorway: Doorway): string | null {
  return (doorway.opening.name ?? doorway.other?.name)?.key ?? null
}

/** Key of what a doorway leads to, measured or not. */
export function beyondOf(doorway: Doorway): string | null {
  return (
    doorway.to ?? doorway.opening.to?.key ?? (doorway.toText === '' ? null : keyOf(doorway.toText))
  )
}

function lineBetween(
  { ofDoorways }: FloorSaid,
  { from, to, called }: Between,
): FloorEdge | undefined {
  if (to === null) return undefined
  return ofDoorways
    .get(pairKey(from, to))
    ?.find(({ where }) => where.kind === 'doorway' && isFor(where, called))
}

/** A line that names no opening is for any between its rooms. */
function isFor(line: { readonly called: { readonly key: string } | null }, called: string | null) {
  return line.called === null || line.called.key === called
}

function baseKind(room: Room): EdgeKind | null {
  switch (room.base?.fate) {
    case 'kept':
      return 'base kept'
    case 'off and back':
      return 'base off and back'
    case 'new':
      return 'base new'
    case 'none':
      return 'no base'
    default:
      return null
  }
}
