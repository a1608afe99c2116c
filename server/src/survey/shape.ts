import { type Message, message } from '../facts/message.ts'
import type { Ring } from '../geometry/point.ts'
import type { Room } from '../job/job.ts'
import type { UnitStyle } from '../units/length.ts'
import { type BasePlane, basePlaneMessage, basePlaneOf, grownCorners } from './base-plane.ts'
import { checkMessages, missesWallMessage } from './check-messages.ts'
import { closedByDistances, closingOf } from './closing.ts'
import { closingMessage } from './closing-message.ts'
import { fixShape, MOST_LOOSE_WALLS } from './fixing.ts'
import {
  cannotMeetMessage,
  notFixedMessage,
  solvedMessages,
  tooManyLooseWalls,
} from './loose-messages.ts'
import { repeatsDisagree } from './reading.ts'
import { missesWall, solvedChecks, traverseChecks } from './shape-checks.ts'
import { shapeFault } from './shape-faults.ts'
import { spreadCorners } from './spread.ts'
import type { CheckResult, Closing, SurveyedRoom } from './survey.ts'
import { twiceSaidMessages } from './twice-said.ts'
import { toPoint, type Vector } from './vector.ts'
import { isRightAngled, type ReadWall, readWalls } from './walls.ts'

/** A room by itself, its first corner at the origin. */
export interface Shape {
  readonly room: Room
  readonly status: SurveyedRoom['status']
  /** Empty unless measured. */
  readonly walls: readonly ReadWall[]
  /** Corner i begins wall i, clockwise; whole nanometres. The floor's rim. Empty unless measured. */
  readonly corners: Ring
  /** Where that rim lies from what the tape touched, and from the wall. */
  readonly plane: BasePlane
  readonly closing: Closing | null
  readonly checks: readonly CheckResult[]
  readonly messages: readonly Message[]
}

/**
 * Its readings contradict each other beyond doubt, so that the shape only stands in for one: what would
 * follow from it is not said before they agree.
 */
export function isDisputed({ messages }: Pick<Shape, 'messages'>): boolean {
  return messages.some(({ weight }) => weight === 'error')
}

/** The longest way round that keeps every product of lengths within exact numbers: 1000 km. */
const LONGEST_PERIMETER = 1e15

/** The shape of one room from its own readings: closed and squared up, or solved from distances. */
export function shapeOf(room: Room, style: UnitStyle): Shape {
  if (room.broken) return without(room, 'broken')
  if (room.walls.length === 0) return without(room, 'not measured')
  const walls = room.unfinished || room.walls.length < 3 ? null : readWalls(room)
  if (walls === null) return without(room, 'unfinished', twiceSaidMessages(room, style))
  if (walls.reduce((sum, { nm }) => sum + nm, 0) > LONGEST_PERIMETER) {
    return without(room, 'broken', [tooLarge(room)])
  }
  const shape = room.outOfSquare ? solved(room, walls, style) : squaredUp(room, walls, style)
  const base = basePlaneMessage(room, style)
  const asked = base === null ? [] : [base]
  return { ...shape, messages: [...asked, ...twiceSaidMessages(room, style), ...shape.messages] }
}

function without(
  room: Room,
  status: SurveyedRoom['status'],
  messages: readonly Message[] = [],
): Shape {
  const plane = { grown: 0, inset: 0 }
  return { room, status, walls: [], corners: [], plane, closing: null, checks: [], messages }
}

function squaredUp(room: Room, walls: readonly ReadWall[], style: UnitStyle): Shape {
  const corners = spreadCorners(walls)
  const closing = closingOf(walls, isRightAngled(walls) ? 'transit' : 'compass')
  const checks = traverseChecks(room, walls, corners)
  const messages = closing.within
    ? checkMessages(room, checks, style)
    : room.walls.some((wall) => repeatsDisagree(wall.reading))
      ? // Which of two repeats is wrong is asked first: the mean of both closes nothing.
        []
      : [closingMessage(room, { walls, closing, style })]
  return rounded({ room, walls, closing, checks, messages }, corners, style)
}

function solved(room: Room, walls: readonly ReadWall[], style: UnitStyle): Shape {
  if (walls.length > MOST_LOOSE_WALLS) return without(room, 'broken', [tooManyLooseWalls(room)])
  const fixing = fixShape(room, walls)
  switch (fixing.found) {
    case 'loose':
      return without(room, 'unfinished', [notFixedMessage(room, fixing)])
    case 'apart':
      return without(room, 'broken', [cannotMeetMessage(room, fixing.distances)])
    case 'solved': {
      const { corners } = fixing.solved
      const checks = solvedChecks(room, fixing.solved)
      const closing = closedByDistances(walls.reduce((sum, { nm }) => sum + nm, 0))
      const squares = checks.filter(({ check }) => check.kind === 'square')
      const messages = [
        ...solvedMessages(room, { solved: fixing.solved, results: checks, style }),
        ...checkMessages(room, squares, style),
      ]
      return rounded({ room, walls, closing, checks, messages }, corners, style)
    }
  }
}

/** The one rounding of the corners, and whether they make a shape. */
function rounded(
  parts: Omit<Shape, 'status' | 'corners' | 'plane'>,
  unrounded: readonly Vector[],
  style: UnitStyle,
): Shape {
  const plane = basePlaneOf(parts.room)
  const corners = grownCorners(unrounded, plane.grown).map(toPoint)
  const fault = shapeFault(parts.room, corners, style)
  const missing = parts.room.checks.flatMap((check) =>
    check.kind === 'across' && !isDisputed(parts) && missesWall(check, unrounded)
      ? [missesWallMessage(parts.room, check)]
      : [],
  )
  const messages = [...parts.messages, ...missing]
  if (fault === null) return { ...parts, status: 'measured', corners, plane, messages }
  const { closing } = parts
  return { ...without(parts.room, 'broken', [...messages, fault]), closing }
}

function tooLarge(room: Room): Message {
  const text = `${room.name.text} is more than 1000 km round, which no room is. Look for a digit typed twice or a wrong unit.`
  return message('error', 'room-too-large', room.name.span, text)
}
