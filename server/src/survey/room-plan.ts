import type { Message } from '../facts/message.ts'
import type { Point, Ring } from '../geometry/point.ts'
import { type Box, boxOf } from '../geometry/ring.ts'
import type { UnitStyle } from '../units/length.ts'
import { closetOf } from './closets.ts'
import { type Face, facesOf } from './faces.ts'
import { hearthOf } from './hearths.ts'
import { obstaclesOf } from './obstacles.ts'
import { type Outline, outlineOf } from './outline.ts'
import { placesOf } from './places.ts'
import { isDisputed, type Shape } from './shape.ts'
import type { SurveyedCloset, SurveyedObstacle } from './survey.ts'

/** Everything in and around one room, its first corner at the origin. */
export interface RoomPlan {
  readonly shape: Shape
  readonly outline: Outline
  readonly closets: readonly SurveyedCloset[]
  readonly obstacles: readonly SurveyedObstacle[]
  readonly faces: readonly Face[]
  /** Around the room and its closets; null while it has no outline. */
  readonly box: Box | null
  readonly messages: readonly Message[]
}

/** Draws a room whose shape is known: its outline, openings, closets, hearths and obstacles. */
export function planOf(shape: Shape, style: UnitStyle): RoomPlan {
  const messages: Message[] = [...shape.messages]
  const say = (message: Message) => messages.push(message)
  if (shape.status !== 'measured') return withoutOutline(shape, messages)
  const places = placesOf(shape, style, say)
  const outline = outlineOf(shape, places, style, say)
  if (outline === null) {
    const broken: Shape = { ...shape, status: 'broken', corners: [], walls: [] }
    return withoutOutline(broken, messages)
  }
  const sayLying = isDisputed(shape) ? () => {} : say
  const hearths = places.recesses.flatMap((place) =>
    hearthOf(shape, place, outline.points, sayLying),
  )
  const others = obstaclesOf(shape, outline.points, hearths, sayLying)
  const closets = places.recesses.flatMap((place) =>
    closetOf(place, shape.plane.inset, { style, say }),
  )
  return {
    shape,
    outline,
    closets,
    obstacles: [...hearths, ...others],
    faces: facesOf(places),
    box: boxOf([...outline.points, ...closets.flatMap((closet) => closet.outline)]),
    messages,
  }
}

function withoutOutline(shape: Shape, messages: readonly Message[]): RoomPlan {
  const outline = { points: [], edges: [] }
  return { shape, outline, closets: [], obstacles: [], faces: [], box: null, messages }
}

/** A ring moved by whole nanometres. */
export function moved(ring: Ring, by: Point): Ring {
  return ring.map(({ x, y }) => ({ x: x + by.x, y: y + by.y }))
}
