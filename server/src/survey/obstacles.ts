import { type Message, message } from '../facts/message.ts'
import { type Boxes, boxes } from '../geometry/boxes.ts'
import { intersection } from '../geometry/clip.ts'
import { twiceAreaOf } from '../geometry/exact.ts'
import { locatorOf } from '../geometry/locate.ts'
import type { Point, Ring } from '../geometry/point.ts'
import { boxesMeet, boxOf, placeInRing } from '../geometry/ring.ts'
import type { Obstacle } from '../job/job.ts'
import { lengthFrom } from './reading.ts'
import { roundRing } from './round.ts'
import type { Shape } from './shape.ts'
import type { SurveyedObstacle } from './survey.ts'
import { cross, dot, plus, times, toPoint, type Vector } from './vector.ts'
import { type WallFrame, wallFrame } from './wall-frame.ts'

type Say = (message: Message) => void

/**
 * The columns, islands, stairwells and vents of a room as rings. Each is placed by the distances of
 * its nearest faces from two walls, square off them. One still without a size or a place is left out.
 */
export function obstaclesOf(
  shape: Shape,
  outline: Ring,
  before: readonly SurveyedObstacle[],
  say: Say,
): readonly SurveyedObstacle[] {
  if (shape.room.obstacles.length === 0) return []
  const reachesOut = reachingOut(outline)
  const standing = [...before]
  const ground = boxes<number>()
  for (const [i, { ring }] of before.entries()) ground.add(i, boxOf(ring))
  for (const obstacle of shape.room.obstacles) {
    const ring = ringOf(shape, obstacle)
    if (ring === null) continue
    if (reachesOut(ring)) {
      say(outside(shape, obstacle))
      continue
    }
    const over = firstOver(ring, standing, ground)
    if (over) say(liesOver(obstacle, over))
    ground.add(standing.length, boxOf(ring))
    standing.push({
      kind: obstacle.kind,
      label: obstacle.label,
      ring,
      gap: obstacle.gap,
      span: obstacle.span,
    })
  }
  return standing.slice(before.length)
}

/** The first of what stands there that a ring lies over. */
function firstOver(
  ring: Ring,
  standing: readonly SurveyedObstacle[],
  ground: Boxes<number>,
): SurveyedObstacle | undefined {
  let first = standing.length
  ground.some(boxOf(ring), (i) => {
    if (i < first && overlap(ring, standing[i]!.ring)) first = i
    return false
  })
  return standing[first]
}

/** Half its extent along a direction, and its ring round a centre. */
interface Form {
  readonly reach: (direction: Vector) => number
  readonly round: (centre: Vector) => Ring
}

function ringOf(shape: Shape, obstacle: Obstacle): Ring | null {
  const form = formOf(obstacle)
  const [first, second] = obstacle.from
  if (form === null || !first || !second) return null
  const a = distanceLine(shape, first, form)
  const b = distanceLine(shape, second, form)
  if (a === null || b === null) return null
  const turn = cross(a.out, b.out)
  if (Math.abs(turn) < 0.01) return null
  return form.round({
    x: (a.level * b.out.y - b.level * a.out.y) / turn,
    y: (b.level * a.out.x - a.level * b.out.x) / turn,
  })
}

/** The line on which the centre lies: out · centre = level. */
function distanceLine(shape: Shape, from: Obstacle['from'][number], form: Form) {
  const distance = lengthFrom(from.distance)
  if (distance === null) return null
  const { out, left }: WallFrame = wallFrame(shape.corners, from.wall)
  return { out, level: dot(out, left) - shape.plane.grown - distance.nm - form.reach(out) }
}

function formOf({ round, eastWest, northSouth }: Obstacle): Form | null {
  const across = lengthFrom(round)
  if (across !== null) {
    return { reach: () => across.nm / 2, round: (centre) => roundRing(centre, across.nm / 2) }
  }
  const [wide, deep] = [lengthFrom(eastWest), lengthFrom(northSouth)]
  if (wide === null || deep === null) return null
  const [x, y] = [wide.nm / 2, deep.nm / 2]
  const corners = [
    { x: -x, y: -y },
    { x, y: -y },
    { x, y },
    { x: -x, y },
  ]
  return {
    reach: (direction) => Math.abs(direction.x) * x + Math.abs(direction.y) * y,
    round: (centre) => corners.map((corner) => toPoint(plus(centre, corner))),
  }
}

/** An obstacle that touches its wall may lie a little over it, as its readings have it. */
const SHRINK = 0.99

/** Whether one leaves the room, drawn in by a hundredth so that one that touches a wall does not. */
function reachingOut(outline: Ring): (ring: Ring) => boolean {
  const locate = locatorOf(outline)
  // By their walls, for a corner by itself is too small a thing to be sorted by size.
  const corners = boxes<Point>()
  outline.forEach((corner, i) => {
    corners.add(corner, boxOf([corner, outline[(i + 1) % outline.length]!]))
  })
  return (ring) => {
    const drawnIn = shrunk(ring)
    return (
      drawnIn.some((point) => locate(point) === 'outside') ||
      corners.some(boxOf(drawnIn), (corner) => placeInRing(corner, drawnIn) === 'inside')
    )
  }
}

function shrunk(ring: Ring): Ring {
  const box = boxOf(ring)
  const centre = { x: (box.west + box.east) / 2, y: (box.south + box.north) / 2 }
  return ring.map(({ x, y }) => toPoint(plus(times(centre, 1 - SHRINK), times({ x, y }, SHRINK))))
}

function overlap(a: Ring, b: Ring): boolean {
  return boxesMeet(boxOf(a), boxOf(b)) && twiceAreaOf(intersection([a], [b])) > 0n
}

function outside(shape: Shape, obstacle: Obstacle): Message {
  const text =
    `This ${obstacle.kind} does not lie in ${shape.room.name.text}. ` +
    'Look at its size, and at its distances: each is from a wall to its nearest face.'
  return message('error', 'obstacle-outside-room', obstacle.span, text)
}

function liesOver(obstacle: Obstacle, other: SurveyedObstacle): Message {
  const text = `This ${obstacle.kind} and the ${other.kind} ${other.label === other.kind ? 'before it' : `"${other.label}"`} lie over each other. Look at where they stand.`
  return message('warning', 'obstacles-overlap', obstacle.span, text, {
    related: [{ span: other.span, text: 'The other one.' }],
  })
}
