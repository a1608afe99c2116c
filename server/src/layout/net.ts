import { inset } from '../geometry/inset.ts'
import type { Region } from '../geometry/point.ts'
import type { FloorArea } from './floor-area.ts'
import { type Frame, intoFrame } from './frame.ts'
import { middleOf } from './middle.ts'

/**
 * What the planks cover: the floor less the gap of each edge, in the frame of the run. It is turned
 * before the gaps come off, so that each corner is rounded once for the turn and once for the mitre, and
 * not at all in a room square to its planks.
 */
export function netInFrame(area: FloorArea, frame: Frame): Region {
  const middle = middleOf(area)
  return inset(
    area.rings.map((ring) =>
      ring.map(({ from, to, gap }) => ({
        from: intoFrame(frame, from, middle),
        to: intoFrame(frame, to, middle),
        gap,
      })),
    ),
  )
}
