import type { Room, Wall } from '../job/job.ts'
import { leadAt, otherPlane } from './base-plane.ts'
import { directionsOf } from './direction.ts'
import { type Length, lengthFrom } from './reading.ts'
import type { Course } from './traverse.ts'
import type { Vector } from './vector.ts'

/** A wall that was read: how long, how sure, and which way it is walked. */
export interface ReadWall extends Length {
  readonly wall: Wall
  /** Of length 1. */
  readonly direction: Vector
}

/**
 * All walls of a room, or null while one of them is still to be taken. One read to another plane than
 * the others is brought to theirs.
 */
export function readWalls(room: Room): readonly ReadWall[] | null {
  const directions = directionsOf(room.walls.map((wall) => wall.heading))
  const farther = otherPlane(room)
  const walls: ReadWall[] = []
  for (const wall of room.walls) {
    const length = lengthFrom(wall.reading)
    if (length === null) return null
    const direction = directions[wall.index]!
    const leads =
      leadAt(directions.at(wall.index - 1)!, direction) +
      leadAt(direction, directions[(wall.index + 1) % directions.length]!)
    const nm = length.nm - leads * farther(wall.reading)
    walls.push({ nm, sigma: length.sigma, wall, direction })
  }
  return walls
}

export function courseOf({ nm, direction }: ReadWall): Course {
  return { east: nm * direction.x + 0, north: nm * direction.y + 0, length: nm }
}

/** Whether every wall lies along an axis: a room of right angles. */
export function isRightAngled(walls: readonly ReadWall[]): boolean {
  return walls.every(isAlongAxis)
}

export function isAlongAxis({ direction }: ReadWall): boolean {
  return direction.x === 0 || direction.y === 0
}
