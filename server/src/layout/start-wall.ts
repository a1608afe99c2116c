import type { Floor } from '../job/job.ts'
import type { Survey } from '../survey/survey.ts'
import { reversed, wallFrame } from './direction.ts'
import type { FloorArea } from './floor-area.ts'
import type { Frame } from './frame.ts'
import { type WallAlong, wallsAlong } from './rips.ts'

/**
 * Where laying starts. The frame is turned so that one faces the start wall: u runs to the right, the
 * wall lies at high v, and the courses go on to lower v.
 */
export interface Start {
  readonly frame: Frame
  readonly walls: readonly WallAlong[]
  /** The edges of the start wall, none where the floor has no edge along the planks. */
  readonly wall: readonly WallAlong[]
  /** Whether the text said where, and if it did, whether the planks run along that wall. */
  readonly said: 'said' | 'not said' | 'said, but across the planks'
}

/** The start as stated, else along the longest wall that the planks run along. */
export function startOf(floor: Floor, survey: Survey, area: FloorArea, run: Frame): Start {
  const stated = floor.start === null ? null : statedStart(floor.start, survey, area, run)
  if (stated !== null) return stated
  const walls = wallsAlong(area, run)
  const longest = walls.reduce<WallAlong | null>(
    (best, wall) => (best === null || lengthOf(wall) > lengthOf(best) ? wall : best),
    null,
  )
  const said = floor.start === null ? 'not said' : 'said, but across the planks'
  if (longest === null) return { frame: run, walls, wall: [], said }
  const frame = longest.floor === 'below' ? run : reversed(run)
  return facing(area, frame, longest.label, said)
}

function statedStart(
  start: NonNullable<Floor['start']>,
  survey: Survey,
  area: FloorArea,
  run: Frame,
): Start | null {
  const along = wallFrame(survey, start.room.key, start.wall)
  const room = survey.rooms.find((one) => one.room.name.key === start.room.key)?.room
  const wall = room?.walls[start.wall]
  if (along === null || room === undefined || wall === undefined) return null
  const dot = along.east * run.east + along.north * run.north
  const across = along.east * run.north - along.north * run.east
  if (Math.abs(dot) <= Math.abs(across)) return null
  const frame = dot > 0 ? run : reversed(run)
  const found = facing(area, frame, `${wall.label} of ${room.name.text}`, 'said')
  return found.wall.length === 0 ? null : found
}

function facing(area: FloorArea, frame: Frame, label: string, said: Start['said']): Start {
  const walls = wallsAlong(area, frame)
  const wall = walls.filter((each) => each.label === label && each.floor === 'below')
  return { frame, walls, wall, said }
}

function lengthOf(wall: WallAlong): number {
  return wall.to - wall.from
}
