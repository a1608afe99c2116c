import type { Nm } from '../units/length.ts'
import { roundToNm } from '../units/round.ts'
import type { FloorArea, RimEdge } from './floor-area.ts'
import { type Frame, intoFrame } from './frame.ts'
import { middleOf } from './middle.ts'
import { aboveSeam, ON_THE_SEAM } from './seams.ts'

/** A wall that the planks run along, where the floor ends in front of it: its gap is taken off. */
export interface WallAlong {
  /** "north of hall", and its room. */
  readonly label: string
  readonly room: string
  readonly from: Nm
  readonly to: Nm
  /** Where the floor ends, least and greatest v: they differ where the wall is not parallel to the run. */
  readonly low: Nm
  readonly high: Nm
  /** On which side of the wall the floor lies. */
  readonly floor: 'above' | 'below'
  /** Which wall it is; null for the end of an opening, a step and an obstacle. */
  readonly wall: string | null
  /** Near enough to the run for a course to be ripped along it; others cut the courses off. */
  readonly level: boolean
}

/** An edge that rises no more than a quarter of its run is level: no house stands that far out of square. */
const LEVEL = 4

/** Edges at 45 degrees to the run count with those along it, however their corners were rounded. */
export const ROUNDED: Nm = 4

/**
 * The edges of a floor that run more along the planks than across them: from low v to high, the longest
 * first, so that neither the house's way to the sky nor the corner where a room is begun tells in what
 * is chosen among them.
 */
export function wallsAlong(area: FloorArea, frame: Frame): WallAlong[] {
  return edgesAlong(area, frame).sort(
    (a, b) => a.high - b.high || a.low - b.low || b.to - b.from - (a.to - a.from),
  )
}

/** The edges of one wall of a floor, which openings part. */
export interface WallWhole {
  readonly wall: string | null
  readonly label: string
  readonly floor: WallAlong['floor']
  readonly length: Nm
  readonly low: Nm
  readonly high: Nm
}

/** Edges along the planks that make one wall together, with the floor on one side. */
export function wholeWalls(walls: readonly WallAlong[]): readonly WallWhole[] {
  return [
    ...Map.groupBy(walls, ({ wall, label, floor }) => `${floor} ${wall ?? label}`).values(),
  ].map((edges) => ({
    wall: edges[0]!.wall,
    label: edges[0]!.label,
    floor: edges[0]!.floor,
    length: edges.reduce((sum, { from, to }) => sum + (to - from), 0),
    low: edges.reduce((least, { low }) => Math.min(least, low), Infinity),
    high: edges.reduce((most, { high }) => Math.max(most, high), -Infinity),
  }))
}

function edgesAlong(area: FloorArea, frame: Frame): WallAlong[] {
  const middle = middleOf(area)
  return area.rim.flatMap((edge) => {
    const from = intoFrame(frame, edge.from, middle)
    const to = intoFrame(frame, edge.to, middle)
    const run = to.x - from.x
    const rise = to.y - from.y
    if (run === 0 || Math.abs(rise) > Math.abs(run) + ROUNDED) return []
    // The floor lies on the left of the edge, its gap square to it.
    const off = roundToNm((edge.gap * Math.sqrt(run * run + rise * rise)) / run)
    return [
      {
        ...wallAlong(edge, [from.x, to.x], [from.y + off, to.y + off], run > 0 ? 'above' : 'below'),
        level: LEVEL * Math.abs(rise) <= Math.abs(run),
      },
    ]
  })
}

function wallAlong(
  { label, room, wall }: RimEdge,
  [u, otherU]: readonly [Nm, Nm],
  [v, otherV]: readonly [Nm, Nm],
  floor: 'above' | 'below',
): Omit<WallAlong, 'level'> {
  return {
    label,
    room,
    from: Math.min(u, otherU),
    to: Math.max(u, otherU),
    low: Math.min(v, otherV),
    high: Math.max(v, otherV),
    floor,
    wall,
  }
}

/** How wide the course along a wall comes out. */
export interface Rip {
  readonly wall: WallAlong
  /** Zero where a seam runs into the wall: the course tapers to nothing. */
  readonly narrowest: Nm
  readonly widest: Nm
}

/** The width of the course along each wall when a seam lies at `seam` and all others whole widths off. */
export function ripsAt(walls: readonly WallAlong[], width: Nm, seam: Nm): Rip[] {
  return walls.map((wall) => {
    const ends = [wall.low, wall.high].map((v) => ripAt(v, wall.floor, width, seam))
    const [atLow, atHigh] = ends as [Nm, Nm]
    // Without a seam between, the width changes as v does; with one it runs out there and begins anew.
    const grows = wall.floor === 'below' ? atHigh - atLow : atLow - atHigh
    const unbroken = grows === wall.high - wall.low
    return {
      wall,
      narrowest: unbroken ? Math.min(atLow, atHigh) : 0,
      widest: unbroken ? Math.max(atLow, atHigh) : width,
    }
  })
}

/** From where the floor ends to the next seam into it; a whole width where it ends at a seam. */
function ripAt(v: Nm, floor: 'above' | 'below', width: Nm, seam: Nm): Nm {
  const above = aboveSeam(v, seam, width)
  const rip = floor === 'below' ? above : width - above
  return rip <= ON_THE_SEAM || rip >= width - ON_THE_SEAM ? width : rip
}
