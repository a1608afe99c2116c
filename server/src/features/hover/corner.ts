import type { Room } from '../../job/job.ts'
import { cornerWords, wallWords } from '../../survey/labels.ts'
import { type HoverPart, step, steps, text, title } from './parts.ts'

/** A corner: the walls that meet in it. */
export function cornerParts(room: Room, corner: number): readonly HoverPart[] {
  const [before, after] = [room.walls.at(corner - 1), room.walls[corner]]
  const ends = [before, after].flatMap((wall) =>
    wall === undefined
      ? []
      : [step(`${wallWords(room, wall.index)}: ${wall.reading.text}`, wall.reading.span)],
  )
  return [
    title(`corner ${cornerWords(room, corner)} of ${room.name.text}`),
    text('Where these two walls meet:'),
    ...steps(ends),
  ]
}
