import { difference, union } from './clip.ts'
import { type Line, twiceArea } from './exact.ts'
import { healed } from './heal.ts'
import { holdersAmong } from './holders.ts'
import { anyMeeting } from './meet.ts'
import { near } from './near.ts'
import type { Point, Region, Ring } from './point.ts'
import { distanceToLine, spliced } from './splice.ts'
import { boundary } from './trace.ts'

/** How far corners that were rounded one by one may miss each other, in nm. */
const REACH = 2

/**
 * The union of solids less holes (all counter-clockwise, edge by edge), as rings of edges that keep what
 * they carried: the floor lies on their left. Edges that `keeps` holds part the union where two solids
 * share them.
 *
 * Rooms as a rule touch and do not overlap: then nothing moves but corners that were a nanometre or two
 * apart, and the time is linear in the edges. Where rings do overlap, they are clipped.
 */
export function join<T extends Line>(
  solids: readonly (readonly T[])[],
  holes: readonly (readonly T[])[],
  keeps: (line: T) => boolean,
): T[][] {
  const reversed = holes.map((ring) =>
    ring.toReversed().map((edge) => ({ ...edge, from: edge.to, to: edge.from })),
  )
  const rings = spliced([...solids, ...reversed], REACH)
  const lines = rings.flat()
  return liesFlat(rings) ? boundary(lines, keeps) : clipped(rings, lines, keeps)
}

const corners = (ring: readonly Line[]): Ring => ring.map((line) => line.from)

/** Whether no two rings overlap: solids lie beside each other, each hole in just one of them. */
function liesFlat(rings: readonly (readonly Line[])[]): boolean {
  if (anyMeeting(rings.flat(), (how) => how !== 'across')) return false
  const areas = rings.map(corners)
  const isSolid = areas.map((area) => twiceArea(area) > 0n)
  const holdersOf = holdersAmong(areas, true)
  return areas.every((area, i) => {
    const holders = holdersOf(area)
    return holders.every((holder) => isSolid[holder]) && holders.length === (isSolid[i] ? 0 : 1)
  })
}

function clipped<T extends Line>(
  rings: readonly (readonly T[])[],
  lines: readonly T[],
  keeps: (line: T) => boolean,
): T[][] {
  const solids: Ring[] = []
  const holes: Ring[] = []
  for (const ring of rings) (twiceArea(corners(ring)) > 0n ? solids : holes).push(corners(ring))
  // A line that parts the floor becomes a slit, or the union would close over it.
  const slits = lines.filter(keeps).map(slit)
  return carried(healed(difference(union(solids), [...holes, ...slits])), lines)
}

/** Counter-clockwise, so that the slits of both sides of a line do not cancel. */
function slit({ from, to }: Line): Ring {
  const level = Math.abs(to.x - from.x) >= Math.abs(to.y - from.y)
  const [dx, dy] = level ? [0, 2 * REACH] : [2 * REACH, 0]
  const ring = [
    { x: from.x - dx, y: from.y - dy },
    { x: to.x - dx, y: to.y - dy },
    { x: to.x + dx, y: to.y + dy },
    { x: from.x + dx, y: from.y + dy },
  ]
  return twiceArea(ring) < 0n ? ring.toReversed() : ring
}

/**
 * The edges of a clipped region, parted wherever a corner of what it was made of lies on them, each
 * carrying what the edge that it lies on carried.
 */
function carried<T extends Line>(region: Region, lines: readonly T[]): T[][] {
  const grid = near(lines, 2 * REACH)
  const bare = region.map((ring) =>
    ring.map((from, i): Line => ({ from, to: ring[(i + 1) % ring.length]! })),
  )
  const parted = spliced<Line>([...bare, lines], REACH).slice(0, region.length)
  return parted.map((ring) =>
    ring.map(({ from, to }) => {
      const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 }
      const around = grid.at(middle).map((k) => lines[k]!)
      return { ...(closest({ from, to }, middle, around) ?? lines[0]!), from, to }
    }),
  )
}

/** The line nearest to a point among those that run the same way as the edge, if any does. */
function closest<T extends Line>(edge: Line, point: Point, lines: readonly T[]): T | undefined {
  const score = (line: T) => distanceToLine(point, line) + (sameWay(edge, line) ? 0 : 4 * REACH)
  return lines.reduce<T | undefined>(
    (best, line) => (best && score(best) <= score(line) ? best : line),
    undefined,
  )
}

function sameWay(a: Line, b: Line): boolean {
  return (a.to.x - a.from.x) * (b.to.x - b.from.x) + (a.to.y - a.from.y) * (b.to.y - b.from.y) > 0
}
