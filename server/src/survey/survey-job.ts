import { type Made, madeAgain, type Shelf } from '../facts/kept.ts'
import type { Message } from '../facts/message.ts'
import type { Job, Room } from '../job/job.ts'
import { checkMessages } from './check-messages.ts'
import { type Around, doorwayOf } from './doorways.ts'
import type { Face } from './faces.ts'
import { loopsOf } from './loops.ts'
import { type Lying, overlapMessages } from './overlaps.ts'
import { type Pair, pairDoorways, roomsByKey } from './pairing.ts'
import { type Placing, placeRooms } from './placing.ts'
import { moved, planOf, type RoomPlan } from './room-plan.ts'
import { type PlacedRooms, roomTieResults } from './room-ties.ts'
import { isDisputed, shapeOf } from './shape.ts'
import type { Doorway, Survey, SurveyedRoom } from './survey.ts'
import { givenThickness } from './through.ts'

/** Rooms and doorways of earlier runs. */
export interface SurveyKept {
  readonly plans: Shelf<Room, Made<RoomPlan>>
  readonly rooms: Shelf<RoomPlan, Made<SurveyedRoom>>
  readonly doorways: Shelf<Face, Made<Doorway>>
}

/**
 * What a job's readings say: each room closed and squared up by its own rule or solved from distances,
 * its openings, closets and obstacles drawn, the rooms placed by their doorways. Never throws; a room
 * that has no shape leaves the others as they are.
 *
 * The steps, one file each: `shape` (one room's corners and checks), `room-plan` (what is in and on
 * it), `pairing` (two sides of a doorway), `placing` (where the rooms lie), `loops`, `doorways`,
 * `overlaps`. Rooms and doorways that are `kept` of earlier runs are taken where they are made from the same.
 */
export function survey(job: Job, kept?: SurveyKept): Survey {
  const style = job.units
  const messages: Message[] = []
  const say = (message: Message) => messages.push(message)
  const plans = job.rooms.map((room) =>
    madeAgain(kept?.plans, room, [style], () => planOf(shapeOf(room, style), style)),
  )
  for (const plan of plans) for (const message of plan.messages) messages.push(message)
  const pairs = pairDoorways(plans, style, say)
  const placing = placeRooms(plans, pairs)
  const isJudged = judging(plans, pairs, placing)
  const loops = loopsOf(plans, pairs, placing, { style, say, isJudged })
  const byKey = roomsByKey(plans)
  const around = { plans, placing, style, say, isJudged, byKey, unplaced: new Set<string>() }
  const doorways = pairs.map((pair) => doorwayAgain(pair, around, kept?.doorways))
  const placed = { plans, placing, byKey }
  const rooms = plans.map((plan, i) => surveyedAgain(plan, i, placed, kept?.rooms))
  const judged = rooms.filter(isJudged)
  for (const { room, checks } of judged) {
    const ties = checks.filter(({ check }) => check.kind === 'room tie')
    if (ties.length > 0) messages.push(...checkMessages(room, ties, style))
  }
  messages.push(...overlapMessages(judged.flatMap(floorsOf), style))
  return { rooms, doorways, loops, messages }
}

/**
 * Whether it may be judged how rooms that are tied together lie: not while one of them is disputed or
 * the thickness of a wall between them is still asked for, for these put the others where they are.
 */
function judging(
  plans: readonly RoomPlan[],
  pairs: readonly Pair[],
  { networks }: Placing,
): (tied: Pick<SurveyedRoom, 'network'>) => boolean {
  const disputed = networks.filter((_, room) => isDisputed(plans[room]!.shape))
  const asked = pairs
    .filter((pair) => pair.far !== null && givenThickness(pair) === null)
    .map(({ near }) => networks[near.room]!)
  const open = new Set([...disputed, ...asked])
  return ({ network }) => !open.has(network)
}

/** A doorway of which nothing is to be said lies where it did while the rooms on both its sides do. */
function doorwayAgain(
  pair: Pair,
  around: Around,
  kept: SurveyKept['doorways'] | undefined,
): Doorway {
  const { near, far } = pair
  const beyond = far?.room ?? pair.beyond
  const { moves, networks } = around.placing
  const isTied = beyond === null || networks[beyond] === networks[near.room]
  if (kept === undefined || !isTied) return doorwayOf(pair, around)
  const [from, to] = [moves[near.room]!, moves[beyond ?? near.room]!]
  const given = [
    ...[around.plans[near.room], far?.face, beyond === null ? null : around.plans[beyond]],
    ...[from.x, from.y, to.x, to.y],
    around.isJudged({ network: networks[near.room]! }),
    around.style,
  ]
  let isSaid = false
  const say = (message: Message) => {
    isSaid = true
    around.say(message)
  }
  const doorway = madeAgain(kept, near.face, given, () => doorwayOf(pair, { ...around, say }))
  if (isSaid) kept.drop(near.face)
  return doorway
}

/** A room without ties to others is surveyed as before while it lies where it did. */
function surveyedAgain(
  plan: RoomPlan,
  index: number,
  placed: PlacedRooms,
  kept: SurveyKept['rooms'] | undefined,
): SurveyedRoom {
  const make = () => surveyed(plan, index, placed)
  if (plan.shape.room.checks.some(({ kind }) => kind === 'room tie')) return make()
  const { x, y } = placed.placing.moves[index]!
  return madeAgain(kept, plan, [x, y, placed.placing.networks[index]], make)
}

function surveyed(
  { shape, outline, closets, obstacles }: RoomPlan,
  index: number,
  placed: PlacedRooms,
): SurveyedRoom {
  const { placing } = placed
  const by = placing.moves[index]!
  return {
    room: shape.room,
    status: shape.status,
    corners: moved(shape.corners, by),
    outline: moved(outline.points, by),
    edges: outline.edges,
    closing: shape.closing,
    checks: [...shape.checks, ...roomTieResults(index, placed)],
    closets: closets.map((closet) => ({
      ...closet,
      outline: moved(closet.outline, by),
      throat: moved(closet.throat, by),
    })),
    obstacles: obstacles.map((obstacle) => ({ ...obstacle, ring: moved(obstacle.ring, by) })),
    network: placing.networks[index]!,
  }
}

/** The floors that must not lie over each other: a room's and its closets'. */
function floorsOf({ room, status, outline, closets }: SurveyedRoom): readonly Lying[] {
  if (status !== 'measured') return []
  return [
    { name: room.name.text, ring: outline, span: room.name.span },
    ...closets.map(({ name, outline: ring, recess }) => ({
      name,
      ring,
      span: room.recesses[recess]!.span,
    })),
  ]
}
