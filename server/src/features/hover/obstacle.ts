import type { Obstacle, Room } from '../../job/job.ts'
import { wallWords } from '../../survey/labels.ts'
import { type HoverPart, step, steps, text, title } from './parts.ts'
import { sizeSteps } from './place-words.ts'

/** A column, island, stairwell or vent: its size and its place. */
export function obstacleParts(room: Room, obstacle: Obstacle): readonly HoverPart[] {
  const { kind, label, round, eastWest, northSouth, from } = obstacle
  return [
    title(`${label === kind ? kind : `${kind}, ${label}`} in ${room.name.text}`),
    ...steps([
      ...sizeSteps([
        ['round', round],
        ['east-west', eastWest],
        ['north-south', northSouth],
      ]),
      ...from.map(({ wall, distance }) =>
        step(`${distance.text} from ${wallWords(room, wall)}`, distance.span),
      ),
    ]),
    text('The floor goes round it.'),
  ]
}
