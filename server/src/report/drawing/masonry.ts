import { difference, union } from '../../geometry/clip.ts'
import type { Point, Region, Ring } from '../../geometry/point.ts'
import type { Doorway, SurveyedRoom } from '../../survey/survey.ts'
import { NM_PER_INCH, type Nm } from '../../units/length.ts'
import { type Direction, direction, left, moved, opposite } from './vector.ts'

/** A stud wall with drywall on both sides (common practice, no source): only for the eye. */
const USUAL_WALL: Nm = 4.5 * NM_PER_INCH
const THICKEST_DRAWN: Nm = 12 * NM_PER_INCH

/** How thick walls are drawn: as thick as the thickest that a doorway tells of. */
export function drawnThickness(doorways: readonly Doorway[]): Nm {
  const told = doorways.map((doorway) => doorway.thickness).filter((thickness) => thickness > 0)
  return Math.min(
    THICKEST_DRAWN,
    told.length === 0 ? USUAL_WALL : told.reduce((most, each) => Math.max(most, each)),
  )
}

/**
 * Everything that is wall in plan: a band around each room, but where it ends at a step, less the rooms themselves, their closets
 * and the floor inside openings. Where two rooms face each other the bands fill what lies between.
 */
export function masonry(
  rooms: readonly SurveyedRoom[],
  doorways: readonly Doorway[],
  thickness: Nm,
): Region {
  const closets = rooms.flatMap((room) => room.closets.map((closet) => closet.outline))
  const outlines = [...rooms.map((room) => room.outline), ...closets]
  const throats = [
    ...doorways.map(throatOf),
    ...rooms.flatMap((room) => room.closets.map((closet) => closet.throat)),
  ]
  const bands = [
    ...rooms.flatMap((room) =>
      bandsAround(room.outline, thickness, (edge) => isOpen(room, room.edges[edge]?.wall)),
    ),
    ...closets.flatMap((ring) => bandsAround(ring, thickness, () => false)),
  ]
  return bands.length === 0 ? [] : difference(union(bands), [...outlines, ...throats])
}

/** A side without a wall: the floor ends at a step. */
export function isOpen({ room }: SurveyedRoom, wall: number | undefined): boolean {
  return wall !== undefined && (room.walls[wall]?.stair ?? null) !== null
}

/** The floor within a doorway, counter-clockwise. */
export function throatOf({ near, far }: Doorway): Ring {
  return [near[0], near[1], far[1], far[0]]
}

/** A strip of wall outside each closed edge, counter-clockwise: mitred, but square beside an open one. */
function bandsAround(ring: Ring, thickness: Nm, open: (edge: number) => boolean): Ring[] {
  const count = ring.length
  const outward = ring.map((point, i) => opposite(left(direction(point, next(ring, i)))))
  return ring.flatMap((a, i) => {
    const b = next(ring, i)
    const [previous, following] = [(i + count - 1) % count, (i + 1) % count]
    const own = outward[i]
    if (own === undefined || open(i)) return []
    const before = open(previous) ? own : (outward[previous] ?? own)
    const after = open(following) ? own : (outward[following] ?? own)
    return [[a, mitre(a, before, own, thickness), mitre(b, after, own, thickness), b]]
  })
}

/** The corner's outer point, between two walls; square to `own` where the corner is sharp. */
function mitre(at: Point, other: Direction, own: Direction, thickness: Nm): Point {
  const dot = other.x * own.x + other.y * own.y
  if (dot < -0.5) return moved(at, own, thickness)
  const scale = thickness / (1 + dot)
  return moved(at, { x: other.x + own.x, y: other.y + own.y }, scale)
}

function next(ring: Ring, i: number): Point {
  return ring[(i + 1) % ring.length] ?? { x: 0, y: 0 }
}
