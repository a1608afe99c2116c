import { type Message, message } from '../facts/message.ts'
import type { Point } from '../geometry/point.ts'
import { NM_PER_INCH, type UnitStyle } from '../units/length.ts'
import { roundToNm } from '../units/round.ts'
import { doorwayLabel } from './doorway-label.ts'
import type { Pair, Side } from './pairing.ts'
import type { Placing } from './placing.ts'
import type { RoomPlan } from './room-plan.ts'
import type { Doorway } from './survey.ts'
import { throughAt } from './through.ts'
import { dot, meet, minus, plus, times, toPoint, type Vector } from './vector.ts'
import { type WallFrame, wallFrame } from './wall-frame.ts'

export interface Around {
  readonly plans: readonly RoomPlan[]
  readonly placing: Placing
  readonly style: UnitStyle
  readonly say: (message: Message) => void
  /** Whether how the rooms of a network lie may be judged. */
  readonly isJudged: (tied: { readonly network: number }) => boolean
  /** Rooms of which it was said already that nothing places them, as "room beyond". */
  readonly unplaced: Set<string>
  /** Where in the list the first room of each name stands. */
  readonly byKey: ReadonlyMap<string, number>
}

/**
 * Every opening with the floor in it: from its face square through the wall to the face beyond, where
 * the room beyond is placed, else a wall's thickness deep.
 */
export function doorwayOf(pair: Pair, around: Around): Doorway {
  const { near, far } = pair
  const { opening, stretch } = near.face
  const to = opening.to
  const thickness = throughAt(pair, around.plans)
  const by = around.placing.moves[near.room]!
  const ends: [Point, Point] = [movedBy(near.face.left, by), movedBy(near.face.right, by)]
  const beyond = wallBeyond(pair, thickness, around)
  const through = (end: Point) => throughWall(end, near.face.frame.out, thickness, beyond)
  return {
    kind: opening.kind,
    label: doorwayLabel(pair, around.plans),
    room: around.plans[near.room]!.shape.room.name.key,
    to: to === null || to.key === 'outside' ? null : to.key,
    toText: to?.text ?? '',
    opening,
    other: far?.face.opening ?? null,
    width: roundToNm(stretch.right - stretch.left),
    thickness,
    near: ends,
    far: [through(ends[0]), through(ends[1])],
    jambs: opening.jambs && (far?.face.opening.jambs ?? true),
    reaches: beyond !== null,
  }
}

const movedBy = ({ x, y }: Point, by: Point): Point => ({ x: x + by.x, y: y + by.y })

/** Square through the wall to the face beyond; never back into the room it comes from. */
function throughWall(end: Point, out: Vector, thickness: number, beyond: PlacedWall | null): Point {
  const met = beyond && meet(end, out, beyond.left, beyond.frame.along)
  return toPoint(plus(end, times(out, met && met[0] >= 0 ? met[0] : thickness)))
}

interface PlacedWall {
  readonly frame: WallFrame
  readonly left: Point
}

/** The wall in which the room beyond has this doorway. */
function wallBeyond(pair: Pair, thickness: number, around: Around): PlacedWall | null {
  const { near, far, beyond } = pair
  const { moves, networks } = around.placing
  if (far !== null) {
    return { frame: far.face.frame, left: movedBy(far.face.frame.left, moves[far.room]!) }
  }
  if (beyond === null) return null
  if (networks[beyond] !== networks[near.room]) {
    const rooms = `${near.room} ${beyond}`
    if (!around.unplaced.has(rooms) && !isAskedBeyond(near, around.plans[beyond]!, around))
      around.say(placeNotKnown(near, around.plans[beyond]!))
    around.unplaced.add(rooms)
    return null
  }
  const wall = wallAt(near, beyond, thickness, around)
  const tied = { network: networks[beyond]! }
  if (wall === null && around.isJudged(tied)) around.say(missesRoom(near, around.plans[beyond]!))
  return wall
}

/**
 * Whether the room beyond has this opening without a place yet, or one to a room that nobody knows, which
 * may be this one: what its line lacks is said there.
 */
function isAskedBeyond({ room }: Side, beyond: RoomPlan, { plans, byKey }: Around): boolean {
  const own = plans[room]!.shape.room.name.key
  const placed = new Set(beyond.faces.map(({ opening }) => opening))
  return beyond.shape.room.openings.some(
    (opening) =>
      opening.to !== null &&
      opening.to.key !== 'outside' &&
      ((opening.to.key === own && !placed.has(opening)) || !byKey.has(opening.to.key)),
  )
}

/** A doorway written from one side may lie an inch off the wall that it opens into. */
const REACH = NM_PER_INCH

function wallAt(near: Side, beyond: number, thickness: number, around: Around): PlacedWall | null {
  const { frame, middle } = near.face
  const at = plus(plus(middle, around.placing.moves[near.room]!), times(frame.out, thickness))
  const { corners } = around.plans[beyond]!.shape
  const by = around.placing.moves[beyond]!
  for (let i = 0; i < corners.length; i++) {
    const own = wallFrame(corners, i)
    const left = movedBy(own.left, by)
    const place = minus(at, left)
    const along = dot(place, own.along)
    const facing = dot(own.out, frame.out) < -0.7
    const close =
      Math.abs(dot(place, own.out)) <= REACH && along > -REACH && along < own.length + REACH
    if (facing && close) return { frame: own, left }
  }
  return null
}

function placeNotKnown(near: Side, beyond: RoomPlan): Message {
  const { name } = beyond.shape.room
  const text =
    `Where this ${near.face.opening.kind} stands in ${name.text} is not known, so ${name.text} cannot be placed. ` +
    `Write it in ${name.text} too, with its distance from a corner.`
  return message('incomplete', 'place-beyond-not-known', near.face.opening.span, text)
}

function missesRoom(near: Side, beyond: RoomPlan): Message {
  const { name } = beyond.shape.room
  const text =
    `This ${near.face.opening.kind} comes out where ${name.text}, placed by its other openings, has no wall for it. ` +
    `Write it in ${name.text} too, or look at its place and at the thickness of the wall.`
  return message('warning', 'doorway-misses-room', near.face.opening.span, text)
}
