import type { OnWall, Reading, Room } from '../../job/job.ts'
import { wallWords } from '../../survey/labels.ts'
import { type Step, step } from './parts.ts'

/** "north of den", or the room while the wall is not known. */
export function wallOf(room: Room, place: OnWall | null): string {
  return place === null ? room.name.text : `${wallWords(room, place.wall)} of ${room.name.text}`
}

/** "30" wide, 14" from left of north". */
export function placeWords(room: Room, { width, distance, far, from, wall }: OnWall): string {
  const ends = far === null ? distance.text : `${distance.text} and ${far.text}`
  return `${width.text} wide, ${ends} from ${from} of ${wallWords(room, wall)}`
}

/** The sizes of a thing as they were read: `2' 0" deep`. */
export function sizeSteps(
  sizes: readonly (readonly [what: string, reading: Reading | null])[],
): readonly Step[] {
  return sizes.flatMap(([what, reading]) =>
    reading === null ? [] : [step(`${reading.text} ${what}`, reading.span)],
  )
}
