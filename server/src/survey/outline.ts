import { type Message, message } from '../facts/message.ts'
import { samePoint } from '../geometry/exact.ts'
import type { Point, Ring } from '../geometry/point.ts'
import { firstFault } from '../geometry/simple.ts'
import type { Recess, Wall } from '../job/job.ts'
import type { UnitStyle } from '../units/length.ts'
import { arcCorners } from './arc.ts'
import { lengthWords, wallWords } from './labels.ts'
import type { Placed, Places } from './places.ts'
import { lengthFrom } from './reading.ts'
import type { Shape } from './shape.ts'
import type { OutlineEdge } from './survey.ts'
import { pointAt, type WallFrame, wallFrame } from './wall-frame.ts'

/** A room's floor with its curves and alcoves, counter-clockwise; edge i runs from point i. */
export interface Outline {
  readonly points: Ring
  readonly edges: readonly OutlineEdge[]
}

type Say = (message: Message) => void

/** A corner of the outline and what the edge after it is part of, clockwise as the walls are read. */
interface Step {
  readonly point: Point
  readonly edge: OutlineEdge
}

/** The outline of a measured room, or null with a message where a curve or alcove crosses a wall. */
export function outlineOf(
  shape: Shape,
  places: Places,
  style: UnitStyle,
  say: Say,
): Outline | null {
  const alcoves = Map.groupBy(places.recesses.filter(isAlcove), (place) => place.frame.wall)
  const steps = shape.room.walls.flatMap((wall) => {
    const frame = wallFrame(shape.corners, wall.index)
    const rise = riseOf(shape, wall, frame, style, say)
    return rise === 0 ? straightWall(frame, alcoves.get(wall.index) ?? []) : curvedWall(frame, rise)
  })
  const outline = counterClockwise(withoutRepeats(steps))
  if (outline.points.length === shape.corners.length) return outline
  const fault = firstFault(outline.points)
  if (fault === null) return outline
  say(reachesAcross(shape, outline.edges[fault.first]!, outline.edges[fault.second]!))
  return null
}

const isAlcove = (place: Placed<Recess>) =>
  place.thing.kind === 'alcove' && lengthFrom(place.thing.deep) !== null

/** The rise of a curved wall's arc, 0 for a straight one and, with a message, for more than half a circle. */
function riseOf(
  shape: Shape,
  { bow, index }: Wall,
  { length }: WallFrame,
  style: UnitStyle,
  say: Say,
): number {
  if (bow === null) return 0
  if (2 * Math.abs(bow.rise) <= length) return bow.rise
  const text =
    `${wallWords(shape.room, index)} bows by ${lengthWords(Math.abs(bow.rise), style)} on a chord of ${lengthWords(length, style)}, ` +
    'which is more than half a circle. Write the rise of the curve over its chord.'
  say(message('error', 'bow-too-deep', bow.span, text))
  return 0
}

function straightWall(frame: WallFrame, alcoves: readonly Placed<Recess>[]): readonly Step[] {
  const plain = { wall: frame.wall, recess: null }
  const steps: Step[] = [{ point: frame.left, edge: plain }]
  let reached = 0
  const inOrder = [...alcoves].sort((a, b) => a.stretch.left - b.stretch.left || a.index - b.index)
  for (const { stretch, thing, index } of inOrder) {
    // Two alcoves on one stretch of wall are refused where they are read; the first stands.
    if (stretch.left < reached) continue
    reached = stretch.right
    const own = { wall: frame.wall, recess: index }
    const deep = lengthFrom(thing.deep)!.nm
    steps.push({ point: pointAt(frame, stretch.left), edge: own })
    steps.push({ point: pointAt(frame, stretch.left, deep), edge: own })
    steps.push({ point: pointAt(frame, stretch.right, deep), edge: own })
    steps.push({ point: pointAt(frame, stretch.right), edge: plain })
  }
  return steps
}

function curvedWall(frame: WallFrame, rise: number): readonly Step[] {
  const edge = { wall: frame.wall, recess: null }
  return [frame.left, ...arcCorners(frame, rise)].map((point) => ({ point, edge }))
}

/** An edge without length is left out: of two equal corners the later one stays, with the edge after it. */
function withoutRepeats(steps: readonly Step[]): readonly Step[] {
  return steps.filter(({ point }, i) => !samePoint(point, steps[(i + 1) % steps.length]!.point))
}

/** Turned round, the edge from a point is the one that led to it before. */
function counterClockwise(steps: readonly Step[]): Outline {
  const count = steps.length
  const from = (i: number) => steps[(2 * count - 1 - i) % count]!
  return {
    points: steps.map((_, i) => from(i).point),
    edges: steps.map((_, i) => from(i + 1).edge),
  }
}

function reachesAcross(shape: Shape, a: OutlineEdge, b: OutlineEdge): Message {
  const { room } = shape
  const reaching = [a, b].find(
    (edge) => edge.recess !== null || room.walls[edge.wall]!.bow !== null,
  )!
  const other = reaching === a ? b : a
  const recess = reaching.recess === null ? null : room.recesses[reaching.recess]!
  const what = recess === null ? 'The curve' : `The ${recess.kind}`
  const text =
    `${what} of ${wallWords(room, reaching.wall)} reaches across ${wallWords(room, other.wall)}. ` +
    'Look at how deep it is and where it stands.'
  const span =
    recess?.span ?? room.walls[reaching.wall]!.bow?.span ?? room.walls[reaching.wall]!.span
  return message('error', 'recess-crosses-wall', span, text)
}
