import { type Message, message } from '../facts/message.ts'
import type { Floor, Job, Way } from '../job/job.ts'
import type { Nm } from '../units/length.ts'
import { printLength } from '../units/print.ts'
import { roundToNm } from '../units/round.ts'
import type { Direction } from './direction.ts'
import type { Frame } from './frame.ts'
import type { Start } from './start-wall.ts'

const EAST_AND_NORTH: Readonly<Record<Way, readonly [number, number]>> = {
  north: [0, 1],
  'north-east': [1, 1],
  east: [1, 0],
  'south-east': [1, -1],
  south: [0, -1],
  'south-west': [-1, -1],
  west: [-1, 0],
  'north-west': [-1, 1],
}

/** How far a shift moves the line towards high v, rounded once to whole nanometres (half to even). */
export function shiftAcross(shift: NonNullable<Floor['shift']>, frame: Frame): Nm {
  const [east, north] = EAST_AND_NORTH[shift.way]
  const along = Math.max(Math.abs(frame.east), Math.abs(frame.north))
  const [u, v] = [frame.east / along, frame.north / along]
  const across = north * u - east * v
  if (across === 0) return 0
  const length = Math.sqrt(u * u + v * v) * Math.sqrt(east * east + north * north)
  return roundToNm((shift.distance * across) / length)
}

/** What the set-out was given and what was chosen for it, so that nobody has to guess. */
export function setOutMessages(out: {
  readonly job: Job
  readonly floor: Floor
  readonly direction: Direction
  readonly start: Start
  readonly moved: Moved
}): readonly Message[] {
  const { floor, direction, start } = out
  return [
    ...(direction.said ? [] : [directionChosen(floor, direction)]),
    ...startMessages(floor, start),
    ...lineMessages(out.job, floor, start, out.moved),
  ]
}

function directionChosen(floor: Floor, direction: Direction): Message {
  const way = direction.frame.east === 0 ? 'north-south' : 'east-west'
  const text = `The planks run ${way}, along the longest side of a room, for the floor does not say. "running ${way}" in its lay line settles it.`
  return message('note', 'direction-chosen', floor.span, text)
}

function startMessages(floor: Floor, start: Start): readonly Message[] {
  const label = start.wall[0]!.label
  if (start.said === 'said') return []
  if (floor.start === null || start.said === 'not said') {
    const text = `Laying starts along ${label}, the longest wall along the planks, for the floor does not say. ${settledBy(start, label)}`
    return [message('note', 'start-chosen', floor.span, text)]
  }
  const text = `The first course cannot lie along this wall: the planks run across it, or the floor has no edge there. Laying starts along ${label} instead.`
  return [message('warning', 'start-across-planks', floor.start.span, text)]
}

function settledBy({ walls, wall }: Start, label: string): string {
  const isAlone = walls.every((other) => other.label !== label || other.wall === wall[0]!.wall)
  return isAlone
    ? `"start along ${label}" settles it.`
    : 'Two walls there have one name: call this one something, and say that it starts along it.'
}

/** How far the line lies off its balanced place, towards high v, and what a choice of ours is for. */
export interface Moved {
  readonly by: Nm
  readonly why: 'breaches' | 'boxes'
}

function lineMessages(job: Job, floor: Floor, start: Start, moved: Moved): readonly Message[] {
  if (floor.shift !== null) {
    if (moved.by !== 0 || floor.shift.distance === 0) return []
    const text = `A shift ${floor.shift.way} runs along the planks and moves no seam. It would have to be across them.`
    return [message('warning', 'shift-along-planks', floor.shift.span, text)]
  }
  if (moved.by === 0) return []
  const by = printLength(Math.abs(moved.by), job.units)
  const way = moved.by > 0 ? 'towards' : 'away from'
  const gain =
    moved.why === 'boxes'
      ? 'fewer boxes are needed so'
      : 'fewer pieces elsewhere come out too narrow so'
  const text = `The line is moved ${by} ${way} ${start.wall[0]!.label} from where first and last course would be equal: ${gain}.`
  return [message('note', 'line-moved', floor.span, text)]
}
