import { union } from '../geometry/clip.ts'
import { type Line, twiceArea } from '../geometry/exact.ts'
import { anyMeeting } from '../geometry/meet.ts'
import type { Region, Ring } from '../geometry/point.ts'
import type { Floor, Job, ProductRules } from '../job/job.ts'
import { keyOf } from '../language/name.ts'
import type { Name } from '../language/tree.ts'
import type { Survey, SurveyedCloset, SurveyedRoom } from '../survey/survey.ts'
import {
  breakBetween,
  type EdgeSettled,
  type FloorSaid,
  floorSaid,
  jambEdge,
  meetingEdge,
  obstacleEdge,
  plainEdge,
  wallEdge,
} from './edge-said.ts'
import type { Transition } from './floor-area.ts'
import { fromBeyond, middleOf, type Passage, passagesOf, widened } from './passage.ts'

/** An edge of one of the shapes that make the floor, with what is said of it. */
export interface Edge extends Line {
  readonly facts: EdgeSettled
}

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

/** Everything that the building of the parts looks at. */
interface Scope {
  readonly said: FloorSaid
  readonly doorways: ProductRules['doorways']
  /** Keys of the floor's rooms and closets that have a shape. */
  readonly listed: ReadonlySet<string>
}

/** Collects the shapes of a floor: rooms, closets, openings, and what stands on it. */
export function areaParts(job: Job, survey: Survey, floor: Floor): AreaParts {
  const rooms = floor.rooms.flatMap((name) =>
    survey.rooms.filter((one) => one.room.name.key === name.key).map((room) => ({ name, room })),
  )
  const measured = rooms.filter(({ room }) => room.status === 'measured').map(({ room }) => room)
  const closets = closetsOf(survey, floor)
  const listed = new Set([
    ...measured.map(({ room }) => room.name.key),
    ...closets.map(({ closet }) => keyOf(closet.name)),
  ])
  const product = job.products.find(({ name }) => name.key === floor.product?.key)
  const scope: Scope = {
    said: floorSaid(job, floor),
    doorways: product?.rules.doorways ?? 'through',
    listed,
  }
  const passed = passagesOf(survey).flatMap((passage) => passagePart(scope, passage))
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
  const all = survey.rooms.flatMap((room) => room.closets.map((closet) => ({ room, closet })))
  return floor.rooms.flatMap(({ key }) => all.filter(({ closet }) => keyOf(closet.name) === key))
}

function roomRing(scope: Scope, { room, outline, edges }: SurveyedRoom): Edge[] {
  const facts = room.walls.map((wall) => {
    const open = openEdge(scope, room, wall)
    return open ?? wallEdge(scope.said, room, wall)
  })
  const recesses = room.recesses.map(({ label, span }) =>
    plainEdge(scope.said, room, {
      label: `${label} of ${room.name.text}`,
      room: room.name.text,
      span,
    }),
  )
  return ring(outline, (i) => {
    const { wall, recess } = edges[i]!
    return recess === null ? facts[wall]! : recesses[recess]!
  })
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
  if (parts && !breakBetween(scope.said.floor, { from, to, called: null })) return null
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
  const span = room.room.recesses[closet.recess]!.span
  const facts = plainEdge(scope.said, room.room, { label: closet.name, room: closet.name, span })
  return ring(closet.outline, () => facts)
}

function holesOf(scope: Scope, room: SurveyedRoom): Edge[][] {
  return room.obstacles.map((obstacle) => {
    const label = `${obstacle.label} in ${room.room.name.text}`
    const facts = obstacleEdge(scope.said, { ...obstacle, label, room: room.room.name.text })
    return ring(obstacle.ring, () => facts)
  })
}

/** What one passage adds to the floor. */
interface PassagePart {
  readonly solids: readonly (readonly Edge[])[]
  readonly transition: Transition | null
  readonly through: { readonly label: string; readonly ring: Ring } | null
  readonly jambSides: number
  readonly joins: readonly [string, string] | null
}

function passagePart(scope: Scope, passage: Passage): PassagePart[] {
  const near = scope.listed.has(passage.room.key)
  const far = passage.beyond.key !== null && scope.listed.has(passage.beyond.key)
  if (!near && !far) return []
  if (!near || !far) return [endingPart(scope, near ? passage : fromBeyond(passage))]
  const joins = [passage.room.key, passage.beyond.key!] as const
  return [
    isBroken(scope, passage)
      ? brokenPart(scope, passage, joins)
      : throughPart(scope, passage, joins),
  ]
}

/** Whether the run is parted here: by the floor's own line, or because the product asks for it. */
function isBroken({ said, doorways }: Scope, passage: Passage): boolean {
  const line = { from: passage.room.key, to: passage.beyond.key, called: passage.called }
  if (breakBetween(said.floor, line)) return true
  if (passage.openSide || doorways === 'through') return false
  return doorways === 'break' || passage.width < doorways.breakUnder
}

function throughPart(
  scope: Scope,
  passage: Passage,
  joins: readonly [string, string],
): PassagePart {
  const { near, far } = underJambs(scope, passage)
  const outline = [near[0], near[1], far[1], far[0]]
  const jamb = jambOf(scope, passage)
  return {
    solids: simple(outline).map((corners) => ring(corners, () => jamb)),
    transition: null,
    through: passage.openSide ? null : { label: passage.label, ring: outline },
    jambSides: passage.undercut ? 2 : 0,
    joins,
  }
}

function brokenPart(scope: Scope, passage: Passage, joins: readonly [string, string]): PassagePart {
  const facts = meeting(scope, passage, true)
  return {
    solids: [
      ...half(scope, passage, facts),
      ...half(scope, fromBeyond(passage), meeting(scope, fromBeyond(passage), true)),
    ],
    transition: transitionOf(passage, facts),
    through: null,
    jambSides: passage.undercut ? 2 : 0,
    joins,
  }
}

/** Where another floor begins, or none, this one ends under the middle of the closed door. */
function endingPart(scope: Scope, passage: Passage): PassagePart {
  const facts = meeting(scope, passage, false)
  // A slider's track is where the floor stops: it never gets into the wall.
  const stops = facts.kind === 'slider'
  return {
    solids: stops ? [] : half(scope, passage, facts),
    transition: passage.openSide ? null : transitionOf(passage, facts),
    through: null,
    jambSides: passage.undercut && !stops ? 2 : 0,
    joins: null,
  }
}

function half(scope: Scope, passage: Passage, facts: EdgeSettled): Edge[][] {
  if (passage.thickness === 0) return []
  const { near, far } = underJambs(scope, passage)
  const middle = middleOf({ ...passage, near, far })
  const jamb = jambOf(scope, passage)
  const corners = [near[0], near[1], middle[1], middle[0]]
  return twiceArea(corners) > 0n ? [ring(corners, (i) => (i === 2 ? facts : jamb))] : []
}

function underJambs({ said }: Scope, passage: Passage): Passage {
  return passage.undercut ? widened(passage, said.jambsUnder) : passage
}

function jambOf({ said }: Scope, passage: Passage): EdgeSettled {
  return jambEdge(said, { ...passage, room: passage.room.text })
}

function meeting({ said }: Scope, passage: Passage, parts: boolean): EdgeSettled {
  return meetingEdge(said, {
    from: passage.room.key,
    to: passage.beyond.key,
    room: passage.room.text,
    label: passage.label,
    called: passage.called,
    trim: passage.trim,
    slider: passage.slider,
    parts,
    span: passage.span,
  })
}

function transitionOf(
  { width }: Passage,
  { label, parts, kind, trim, span }: EdgeSettled,
): Transition {
  return { label, breaks: parts, kind, trim, width, span }
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

function ring(corners: Ring, facts: (edge: number) => EdgeSettled): Edge[] {
  return corners.map((from, i) => ({
    from,
    to: corners[(i + 1) % corners.length]!,
    facts: facts(i),
  }))
}

/** Between rooms that are not parallel, faces without a wall between them may cross. */
function simple(outline: Ring): Region {
  const edges = outline.map((from, i) => ({ from, to: outline[(i + 1) % outline.length]! }))
  if (anyMeeting(edges, (how) => how === 'end to end')) return union([outline])
  return twiceArea(outline) > 0n ? [outline] : []
}
