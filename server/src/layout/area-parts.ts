import type { Ring } from '../geometry/point.ts'
import type { Floor, Job, Product } from '../job/job.ts'
import { keyOf } from '../language/name.ts'
import type { Name } from '../language/tree.ts'
import { houseIndex } from '../survey/house-index.ts'
import type { Survey, SurveyedCloset, SurveyedRoom } from '../survey/survey.ts'
import { type Edge, edgesOf, type Scope } from './area-scope.ts'
import {
  breakBetween,
  type EdgeSettled,
  floorSaid,
  meetingEdge,
  obstacleEdge,
  plainEdge,
  wallEdge,
} from './edge-said.ts'
import type { Transition } from './floor-area.ts'
import { type Passage, passagesAt } from './passage.ts'
import { passagePart } from './passage-parts.ts'

/** The shapes that a floor is made of, before they are joined. All rings counter-clockwise. */
export interface AreaParts {
  readonly solids: readonly (readonly Edge[])[]
  readonly holes: readonly (readonly Edge[])[]
  readonly rooms: readonly { readonly name: string; readonly outline: Ring }[]
  readonly transitions: readonly Transition[]
  readonly doorways: readonly { readonly label: string; readonly ring: Ring }[]
  readonly jambSides: number
  /** Rooms of the floor that have no shape. */
  readonly missing: readonly { readonly name: Name; readonly room: SurveyedRoom }[]
  /** Pairs of keys of the floor's rooms that an opening joins, broken or not. */
  readonly joins: readonly (readonly [string, string])[]
}

/** What of a house a floor has to do with: its rooms and closets, the passages at them, what is laid. */
export interface Concerned {
  readonly rooms: readonly { readonly name: Name; readonly room: SurveyedRoom }[]
  readonly closets: readonly ClosetOfRoom[]
  /** Keys of the rooms and closets that have a shape. */
  readonly listed: ReadonlySet<string>
  readonly passages: readonly Passage[]
  readonly product: Product | undefined
}

export function concernedBy(job: Job, survey: Survey, floor: Floor): Concerned {
  const { rooms: byName } = houseIndex(survey)
  const rooms = floor.rooms.flatMap((name) =>
    (byName.get(name.key) ?? []).map((i) => ({ name, room: survey.rooms[i]! })),
  )
  const closets = closetsOf(survey, floor)
  const listed = new Set([
    ...rooms.flatMap(({ room }) => (room.status === 'measured' ? [room.room.name.key] : [])),
    ...closets.map(({ closet }) => keyOf(closet.name)),
  ])
  const product = job.products.find(({ name }) => name.key === floor.product?.key)
  return { rooms, closets, listed, passages: passagesAt(survey, listed), product }
}

/** Collects the shapes of a floor: rooms, closets, openings, and what stands on it. */
export function areaParts(job: Job, floor: Floor, concerned: Concerned): AreaParts {
  const { rooms, closets, listed, passages, product } = concerned
  const measured = rooms.filter(({ room }) => room.status === 'measured').map(({ room }) => room)
  const scope: Scope = {
    said: floorSaid(job, floor),
    doorways: product?.rules.doorways ?? 'through',
    listed,
  }
  const passed = passages.flatMap((passage) => passagePart(scope, passage))
  return {
    solids: [
      ...measured.map((room) => roomRing(scope, room)),
      ...closets.map((closet) => closetRing(scope, closet)),
      ...passed.flatMap(({ solids }) => solids),
    ],
    holes: measured.flatMap((room) => holesOf(scope, room)),
    rooms: [
      ...measured.map(({ room, outline }) => ({ name: room.name.text, outline })),
      ...closets.map(({ closet }) => ({ name: closet.name, outline: closet.outline })),
    ],
    transitions: [
      ...passed.flatMap(({ transition }) => (transition ? [transition] : [])),
      ...measured.flatMap((room) => wallTransitions(scope, room)),
    ],
    doorways: passed.flatMap(({ through }) => (through ? [through] : [])),
    jambSides: passed.reduce((sum, { jambSides }) => sum + jambSides, 0),
    missing: rooms.filter(({ room }) => room.status !== 'measured'),
    joins: passed.flatMap(({ joins }) => (joins ? [joins] : [])),
  }
}

interface ClosetOfRoom {
  readonly room: SurveyedRoom
  readonly closet: SurveyedCloset
}

function closetsOf(survey: Survey, floor: Floor): ClosetOfRoom[] {
  const { withCloset } = houseIndex(survey)
  return floor.rooms.flatMap(({ key }) =>
    (withCloset.get(key) ?? []).flatMap((i) => {
      const room = survey.rooms[i]!
      const called = room.closets.filter((closet) => keyOf(closet.name) === key)
      return called.map((closet) => ({ room, closet }))
    }),
  )
}

function roomRing(scope: Scope, { room, outline, edges }: SurveyedRoom): Edge[] {
  const facts = room.walls.map((wall) => {
    const open = openEdge(scope, room, wall)
    return open ?? wallEdge(scope.said, room, wall)
  })
  return edgesOf(outline, (i) => {
    const { wall, recess } = edges[i]!
    if (recess === null) return facts[wall]!
    const label = `${room.recesses[recess]!.label} of ${room.name.text}`
    return plainEdge(
      scope.said,
      room,
      { recess, side: sideOf(edges, i) },
      { label, room: room.name.text },
    )
  })
}

/** How many sides of its recess come before an edge of the outline. */
function sideOf(edges: SurveyedRoom['edges'], edge: number): number {
  let first = edge
  while (edges[first - 1]?.recess === edges[edge]!.recess) first -= 1
  return edge - first
}

/** A side without a wall, where another floor begins or this one is broken; null where it just goes on. */
function openEdge(
  scope: Scope,
  room: SurveyedRoom['room'],
  wall: SurveyedRoom['room']['walls'][number],
): EdgeSettled | null {
  if (wall.openTo === null) return null
  const from = room.name.key
  const to = wall.openTo.key
  const parts = scope.listed.has(to)
  if (parts && !breakBetween(scope.said, { from, to, called: null })) return null
  return meetingEdge(scope.said, {
    from,
    to,
    room: room.name.text,
    label: `${room.name.text} to ${wall.openTo.text}`,
    called: wall.name?.key ?? null,
    trim: wall.edge.trim,
    slider: false,
    parts,
    span: wall.span,
  })
}

function closetRing(scope: Scope, { room, closet }: ClosetOfRoom): Edge[] {
  const place = { label: closet.name, room: closet.name }
  const { recess } = closet
  return edgesOf(closet.outline, (side) =>
    plainEdge(scope.said, room.room, { recess, side }, place),
  )
}

function holesOf(scope: Scope, room: SurveyedRoom): Edge[][] {
  return room.obstacles.map((obstacle) => {
    const label = `${obstacle.label} in ${room.room.name.text}`
    const facts = obstacleEdge(scope.said, { ...obstacle, label, room: room.room.name.text })
    return edgesOf(obstacle.ring, () => facts)
  })
}

/** Sides where the floor ends at a stair or at another floor without a wall between. */
function wallTransitions(scope: Scope, { room }: SurveyedRoom): Transition[] {
  return room.walls.flatMap((wall) => {
    const beyond = wall.openTo !== null && !scope.listed.has(wall.openTo.key)
    const facts = wall.stair
      ? wallEdge(scope.said, room, wall)
      : beyond
        ? openEdge(scope, room, wall)
        : null
    if (!facts) return []
    const { label, kind, trim, span } = facts
    return [{ label, breaks: false, kind, trim, width: wall.reading.nm ?? 0, span }]
  })
}
