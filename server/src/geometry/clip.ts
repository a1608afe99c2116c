import { Clipper64, ClipType, FillRule } from 'clipper2-ts'
import { canonical } from './canonical.ts'
import type { Region, Ring } from './point.ts'
import { boxOf } from './ring.ts'

/**
 * Union, difference and intersection of regions, for what overlaps. Crossings of slanted lines come out
 * within 2 nm; level and upright ones, and everything that no line crosses, exactly. The time grows with
 * the number of corners times the number of walls that one line across the narrower way meets.
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
  const turned = isLongAcross([...subject, ...other])
  const clipper = new Clipper64()
  clipper.addSubject(copy(subject, turned))
  if (other.length > 0) clipper.addClip(copy(other, turned))
  const result: { x: number; y: number }[][] = []
  clipper.execute(type, FillRule.NonZero, result)
  const rings = result.map((ring) => ring.map(({ x, y }) => ({ x: x + 0, y: y + 0 })))
  return canonical(turned ? rings.map(exchangedRing) : rings)
}

/** Regions of fewer corners take no time either way. */
const MANY_CORNERS = 2000

/**
 * The library's line is level and goes from low to high: a long row of rooms it would meet all at once,
 * and look through all of them at each corner. Such a region is clipped with x and y exchanged.
 */
function isLongAcross(region: Region): boolean {
  if (region.reduce((sum, ring) => sum + ring.length, 0) < MANY_CORNERS) return false
  const { west, south, east, north } = boxOf(region.flat())
  return east - west > north - south
}

/** Exchanged coordinates turn a ring the other way round. */
function exchangedRing(ring: Ring): Ring {
  return ring.map(({ x, y }) => ({ x: y, y: x })).toReversed()
}

/** The library takes rings that it may write to. */
function copy(region: Region, turned: boolean): { x: number; y: number }[][] {
  const rings = turned ? region.map(exchangedRing) : region
  return rings.map((ring) => ring.map(({ x, y }) => ({ x, y })))
}
