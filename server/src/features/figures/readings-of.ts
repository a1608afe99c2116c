import type { OnWall, Reading } from '../../job/job.ts'
import type { Thing } from '../names/thing.ts'

/** The readings that a thing of a room was told by; those taken again are in their `again`. */
export function readingsOf(thing: Thing): readonly Reading[] {
  switch (thing.kind) {
    case 'wall':
      return [thing.wall.reading, ...thing.wall.parts.map(({ reading }) => reading)]
    case 'opening':
      return onWall(thing.opening.place)
    case 'closet':
    case 'recess': {
      const { place, deep, inside, leftReturn, rightReturn } = thing.recess
      return [...onWall(place), ...there([deep, inside, leftReturn, rightReturn])]
    }
    case 'obstacle': {
      const { round, eastWest, northSouth, from } = thing.obstacle
      const distances = from.map(({ distance }) => distance)
      return [...there([round, eastWest, northSouth]), ...distances]
    }
    case 'check':
      return 'reading' in thing.check ? [thing.check.reading] : []
    default:
      return []
  }
}

function onWall(place: OnWall | null): readonly Reading[] {
  return place === null ? [] : there([place.width, place.distance, place.far])
}

function there(readings: readonly (Reading | null)[]): readonly Reading[] {
  return readings.filter((reading) => reading !== null)
}
