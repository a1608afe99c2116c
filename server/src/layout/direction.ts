import { boxOf } from '../geometry/ring.ts'
import type { Floor, Running } from '../job/job.ts'
import { houseIndex } from '../survey/house-index.ts'
import type { Survey } from '../survey/survey.ts'
import type { FloorArea } from './floor-area.ts'
import { EAST_WEST, type Frame, NORTH_SOUTH } from './frame.ts'

const WAYS = {
  'east-west': EAST_WEST,
  'north-south': NORTH_SOUTH,
  'north-east': { east: 1, north: 1 },
  'north-west': { east: -1, north: 1 },
} as const satisfies Record<string, Frame>

/** Which way the planks run, either way round, and whether the text said so. */
export interface Direction {
  readonly frame: Frame
  readonly said: boolean
}

/**
 * The direction of the planks: as stated; along the start wall where only that is stated; else along
 * the longest side of a room (common practice, no source).
 */
export function directionOf(floor: Floor, survey: Survey, area: FloorArea): Direction {
  const stated = floor.running === null ? null : runningFrame(floor.running, survey)
  if (stated !== null) return { frame: stated, said: true }
  const start =
    floor.start === null ? null : wallFrame(survey, floor.start.room.key, floor.start.wall)
  return start === null ? { frame: longestWay(area), said: false } : { frame: start, said: true }
}

function runningFrame(running: Running, survey: Survey): Frame | null {
  if (running.kind === 'ways') return WAYS[running.ways]
  return wallFrame(survey, running.room.key, running.wall)
}

/** Along a wall, from its left end to its right as one faces it; null while it has no place. */
export function wallFrame(survey: Survey, room: string, wall: number): Frame | null {
  const { rooms } = houseIndex(survey)
  const corners = survey.rooms[rooms.get(room)?.[0] ?? -1]?.corners ?? []
  const from = corners[wall]
  const to = corners[(wall + 1) % corners.length]
  if (from === undefined || to === undefined) return null
  const frame = { east: to.x - from.x, north: to.y - from.y }
  return frame.east === 0 && frame.north === 0 ? null : frame
}

function longestWay(area: FloorArea): Frame {
  const boxes = area.rooms.map((room) => boxOf(room.outline))
  const wide = boxes.reduce((most, box) => Math.max(most, box.east - box.west), 0)
  const deep = boxes.reduce((most, box) => Math.max(most, box.north - box.south), 0)
  return wide >= deep ? EAST_WEST : NORTH_SOUTH
}

/** The same run seen from the other side: left becomes right. */
export function reversed(frame: Frame): Frame {
  return { east: 0 - frame.east, north: 0 - frame.north }
}

/** The run a quarter turn to the left. */
export function crosswise(frame: Frame): Frame {
  return { east: 0 - frame.north, north: frame.east }
}
