import { boxOf } from '../geometry/ring.ts'
import { NM_PER_INCH, type Nm } from '../units/length.ts'
import type { FloorArea } from './floor-area.ts'
import { type Frame, intoFrame } from './frame.ts'
import { middleOf } from './middle.ts'
import type { Band, Interval } from './problem.ts'
import type { PublishedZone } from './published.ts'

/** No end joint inside a doorway or within 6 in of it: common practice, no source. */
export const CLEAR_OF_DOORWAY: Nm = 6 * NM_PER_INCH

/**
 * The doorways of a floor in the frame of the run, longer by 6 in at both ends along the planks. An
 * opening too wide for one plank of `longest` to reach over is laid like open floor: the rule is for
 * doorways that a plank can span.
 */
export function zonesOf(area: FloorArea, frame: Frame, longest: Nm): PublishedZone[] {
  const middle = middleOf(area)
  return area.doorways
    .map(({ label, ring }) => {
      const box = boxOf(ring.map((point) => intoFrame(frame, point, middle)))
      return {
        doorway: label,
        from: box.west - CLEAR_OF_DOORWAY,
        to: box.east + CLEAR_OF_DOORWAY,
        low: box.south,
        high: box.north,
      }
    })
    .filter(({ from, to }) => to - from <= longest)
}

/** Where a stretch with these bands lies in one of the zones, from left to right, merged. */
export function inZones(bands: readonly Band[], zones: readonly PublishedZone[]): Interval[] {
  const found: Interval[] = []
  for (const zone of zones) {
    for (let i = firstPast(bands, zone.from); i < bands.length && bands[i]!.from < zone.to; i++) {
      const band = bands[i]!
      const overlaps = Math.min(band.high, zone.high) > Math.max(band.low, zone.low)
      const from = Math.max(band.from, zone.from)
      const to = Math.min(band.to, zone.to)
      if (overlaps) found.push({ from, to })
    }
  }
  return merged(found)
}

/** The first of bands from left to right that ends beyond u. */
function firstPast(bands: readonly Band[], u: Nm): number {
  let low = 0
  let high = bands.length
  while (low < high) {
    const middle = (low + high) >>> 1
    if (bands[middle]!.to <= u) low = middle + 1
    else high = middle
  }
  return low
}

function merged(intervals: readonly Interval[]): Interval[] {
  const result: Interval[] = []
  for (const next of [...intervals].sort((a, b) => a.from - b.from)) {
    const last = result.at(-1)
    if (last && next.from <= last.to) {
      result[result.length - 1] = { from: last.from, to: Math.max(last.to, next.to) }
    } else result.push(next)
  }
  return result
}
