import { Clipper64, ClipType, FillRule } from 'clipper2-ts'
import { canonical } from './canonical.ts'
import type { Region } from './point.ts'

/**
 * Union, difference and intersection of regions, for what overlaps. Crossings of slanted lines come out
 * within 2 nm; level and upright ones, and everything that no line crosses, exactly. The time grows with
 * the number of corners times the number of walls that one level line meets.
 */

/** What lies in any of the rings (each counted by the non-zero rule). */
export function union(region: Region): Region {
  return clip(ClipType.Union, region, [])
}

/** What lies in `region` and not in `less`. */
export function difference(region: Region, less: Region): Region {
  return clip(ClipType.Difference, region, less)
}

/** What lies in both. */
export function intersection(a: Region, b: Region): Region {
  return clip(ClipType.Intersection, a, b)
}

function clip(type: ClipType, subject: Region, other: Region): Region {
  const clipper = new Clipper64()
  clipper.addSubject(copy(subject))
  if (other.length > 0) clipper.addClip(copy(other))
  const result: { x: number; y: number }[][] = []
  clipper.execute(type, FillRule.NonZero, result)
  return canonical(result.map((ring) => ring.map(({ x, y }) => ({ x: x + 0, y: y + 0 }))))
}

/** The library takes rings that it may write to. */
function copy(region: Region): { x: number; y: number }[][] {
  return region.map((ring) => ring.map(({ x, y }) => ({ x, y })))
}
