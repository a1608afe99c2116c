import { type Message, message } from '../facts/message.ts'
import type { UnitStyle } from '../units/length.ts'
import { roundToNm } from '../units/round.ts'
import { chainVariance } from './chain.ts'
import { wayAlong } from './direction.ts'
import { doorwayLabel } from './doorway-label.ts'
import { lengthWords, listWords } from './labels.ts'
import type { Pair } from './pairing.ts'
import { missAt, type Placing } from './placing.ts'
import { SURELY_MISREAD } from './reading.ts'
import type { RoomPlan } from './room-plan.ts'
import type { Loop } from './survey.ts'
import { lengthOf } from './vector.ts'

interface Saying {
  readonly style: UnitStyle
  readonly say: (message: Message) => void
  /** Whether how the rooms of a network lie may be judged. */
  readonly isJudged: (tied: { readonly network: number }) => boolean
}

/**
 * The doorways by which no room was placed: each closes a loop of rooms, and the vector between the
 * middles of its two faces, beyond the wall between them, is the loop's misclosure. Allowed are two
 * standard deviations of the readings on the way round: where each door stands and half its width, the
 * walls between two doors of a room by the surer way, and the thickness of the walls gone through.
 */
export function loopsOf(
  plans: readonly RoomPlan[],
  pairs: readonly Pair[],
  placing: Placing,
  say: Saying,
): readonly Loop[] {
  const used = new Set(placing.placedBy)
  return pairs
    .filter((pair) => pair.far !== null && !used.has(pair))
    .map((pair) => loopAt(pair, plans, placing, say))
}

function loopAt(
  pair: Pair,
  plans: readonly RoomPlan[],
  placing: Placing,
  { style, say, isJudged }: Saying,
): Loop {
  const miss = missAt(pair, plans, placing.moves)
  const chain = chainVariance(plans, placing, pair.near, pair.far!)!
  const allowed = { east: 2 * Math.sqrt(chain.east), north: 2 * Math.sqrt(chain.north) }
  const within = Math.abs(miss.x) <= allowed.east && Math.abs(miss.y) <= allowed.north
  const loop: Loop = {
    doorway: doorwayLabel(pair, plans),
    rooms: chain.rooms.map((room) => plans[room]!.shape.room.name.text),
    east: roundToNm(miss.x),
    north: roundToNm(miss.y),
    allowedEast: roundToNm(allowed.east),
    allowedNorth: roundToNm(allowed.north),
    within,
    span: pair.far!.face.opening.span,
  }
  const tied = { network: placing.networks[pair.near.room]! }
  if (!within && isJudged(tied)) say(notClosing(pair, loop, style))
  return loop
}

function notClosing(pair: Pair, loop: Loop, style: UnitStyle): Message {
  const miss = { x: loop.east, y: loop.north }
  const eastOver = Math.abs(loop.east) / Math.max(1, loop.allowedEast)
  const northOver = Math.abs(loop.north) / Math.max(1, loop.allowedNorth)
  const allowed = eastOver > northOver ? loop.allowedEast : loop.allowedNorth
  const text =
    `${listWords(loop.rooms, 'and')} do not come round: at ${loop.doorway} the two sides of the opening miss each other by ` +
    `${lengthWords(lengthOf(miss), style)} to the ${wayAlong(miss)}; the readings allow ${lengthWords(allowed, style)}. ` +
    'Take again where the doors of these rooms stand, and the thickness of the walls between.'
  const weight = Math.max(eastOver, northOver) > SURELY_MISREAD ? 'error' : 'warning'
  return message(weight, 'loop-does-not-close', loop.span, text, {
    related: [{ span: pair.near.face.opening.span, text: 'The other side of it.' }],
  })
}
