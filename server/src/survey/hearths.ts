import { type Message, message } from '../facts/message.ts'
import type { Ring } from '../geometry/point.ts'
import { placeInRing } from '../geometry/ring.ts'
import type { Recess } from '../job/job.ts'
import type { Placed } from './places.ts'
import { lengthFrom } from './reading.ts'
import type { Shape } from './shape.ts'
import type { SurveyedObstacle } from './survey.ts'
import { rectangleOn } from './wall-frame.ts'

/** A hearth or stub against its wall, inside the room; none while its depth is not read. */
export function hearthOf(
  shape: Shape,
  { thing, frame, stretch }: Placed<Recess>,
  outline: Ring,
  say: (message: Message) => void,
): readonly SurveyedObstacle[] {
  const deep = lengthFrom(thing.deep)
  if (thing.kind !== 'hearth' || deep === null) return []
  const ring = rectangleOn(frame, [stretch.left, stretch.right], [-deep.nm, 0])
  if (ring.slice(0, 2).some((point) => placeInRing(point, outline) === 'outside')) {
    const text = `This hearth reaches out of ${shape.room.name.text}. Look at how deep it is and where it stands.`
    say(message('error', 'obstacle-outside-room', thing.span, text))
    return []
  }
  return [{ kind: 'hearth', label: thing.label, ring, gap: thing.gap, span: thing.span }]
}
