import { canonical } from '../geometry/canonical.ts'
import type { Region } from '../geometry/point.ts'
import type { Nm } from '../units/length.ts'

/**
 * A corner this near to a seam is moved onto it: 1 µm. Walls that a tape reads as in line come out of
 * the survey a few nanometres apart, and no plank is ripped to that.
 */
export const ON_THE_SEAM: Nm = 1000

/** How far v lies above the seam below it. Exact. */
export function aboveSeam(v: Nm, seam: Nm, width: Nm): Nm {
  const rest = (v - seam) % width
  return rest < 0 ? rest + width : rest + 0
}

/** The region with corners that all but lie on a seam moved onto it. */
export function ontoSeams(region: Region, seam: Nm, width: Nm): Region {
  return canonical(
    region.map((ring) =>
      ring.map((point) => {
        const above = aboveSeam(point.y, seam, width)
        if (above <= ON_THE_SEAM) return { x: point.x, y: point.y - above }
        return width - above <= ON_THE_SEAM ? { x: point.x, y: point.y + (width - above) } : point
      }),
    ),
  )
}

/** All seams from the one at or below the region to the one at or above it, rising. */
export function seamsOver(region: Region, seam: Nm, width: Nm): Nm[] {
  const heights = region.flat().map(({ y }) => y)
  if (heights.length === 0) return []
  const low = heights.reduce((a, b) => Math.min(a, b))
  const high = heights.reduce((a, b) => Math.max(a, b))
  const seams = [low - aboveSeam(low, seam, width)]
  while (seams.at(-1)! < high) seams.push(seams.at(-1)! + width)
  return seams
}
