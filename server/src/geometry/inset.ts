import type { Nm } from '../units/length.ts'
import { roundToNm } from '../units/round.ts'
import { canonical } from './canonical.ts'
import { difference } from './clip.ts'
import { type Line, samePoint, twiceArea } from './exact.ts'
import { healed } from './heal.ts'
import { locatorOf } from './locate.ts'
import { anyMeeting } from './meet.ts'
import type { Point, Region, Ring } from './point.ts'

/** An edge of a region, which lies on its left, and how far to stay off it. */
export interface GapEdge extends Line {
  readonly gap: Nm
}

/** A mitre this little beyond the end of a band counts as at its end: 1 µm. */
const SLIGHT: Nm = 1000

/** A mitre further off than this many gaps is cut square. */
const MITRE_LIMIT = 4

/**
 * The region less a band along each edge, mitred at corners that jut into the floor. `rings` are its
 * rings edge by edge, outer ones counter-clockwise and holes clockwise. Mitres are exact between level
 * and upright edges; others are rounded once, half to even.
 *
 * As a rule each corner just moves to its mitre, in time linear in the corners. Where that would fold
 * the outline (a niche narrower than its gaps, a column nearer to the wall than both), the bands are
 * taken off as polygons.
 */
export function inset(outline: readonly (readonly GapEdge[])[]): Region {
  const rings = outline.map((ring) => ring.filter(({ from, to }) => !samePoint(from, to)))
  const moved = rings.map(moveRing)
  return moved.every((ring) => ring !== null) && standClear(moved) && holesInside(moved, rings)
    ? canonical(moved)
    : insetByBands(rings)
}

/** Each edge moved by its gap; null where one would vanish or run backwards. */
function moveRing(ring: readonly GapEdge[]): Ring | null {
  const corners = ring.map((edge, i) => corner(ring.at(i - 1)!, edge))
  for (const [i, edge] of ring.entries()) {
    const from = corners[i]!.at(-1)!
    const to = corners[(i + 1) % ring.length]![0]!
    const along =
      (to.x - from.x) * (edge.to.x - edge.from.x) + (to.y - from.y) * (edge.to.y - edge.from.y)
    if (along <= 0) return null
  }
  return corners.flat()
}

/** Whether rings touch neither themselves nor each other. */
function standClear(rings: readonly Ring[]): boolean {
  const lines: Line[] = []
  const following: number[] = []
  for (const ring of rings) {
    const first = lines.length
    ring.forEach((from, i) => {
      lines.push({ from, to: ring[(i + 1) % ring.length]! })
      following.push(i + 1 < ring.length ? first + i + 1 : first)
    })
  }
  return !anyMeeting(
    lines,
    (how, i, j) => how === 'end to end' && (following[i] === j || following[j] === i),
  )
}

/** Whether no hole was overrun whole by a wider gap: that leaves no crossing to see. */
function holesInside(moved: readonly Ring[], rings: readonly (readonly GapEdge[])[]): boolean {
  const most = rings.flat().reduce((widest, edge) => Math.max(widest, edge.gap), 0)
  const holes = moved.filter(
    (ring, i) => rings[i]!.some((edge) => edge.gap !== most) && twiceArea(ring) <= 0n,
  )
  if (holes.length === 0) return true
  const outer = moved.filter((ring) => twiceArea(ring) > 0n).map(locatorOf)
  return holes.every((hole) => outer.some((locate) => locate(hole[0]!) === 'inside'))
}

/** The region less a band on each edge and what the mitre adds where a corner juts in: for any outline. */
export function insetByBands(rings: readonly (readonly GapEdge[])[]): Region {
  const bands = rings.flatMap((ring) =>
    ring.flatMap((edge, i) => [band(edge), kite(ring.at(i - 1)!, edge)]),
  )
  const gross = rings.map((ring) => ring.map((edge) => edge.from))
  return healed(difference(gross, canonical(bands)))
}

function band(edge: GapEdge): Ring {
  const { x, y } = normal(edge)
  return [
    edge.from,
    edge.to,
    shifted(edge.to, x * edge.gap, y * edge.gap),
    shifted(edge.from, x * edge.gap, y * edge.gap),
  ]
}

/** What lies between the bands of two edges at their corner; nothing where they overlap. */
function kite(before: GapEdge, after: GapEdge): Ring {
  const a = normal(before)
  const b = normal(after)
  if (a.x * b.y - a.y * b.x >= 0) return []
  const p = after.from
  return [
    p,
    shifted(p, b.x * after.gap, b.y * after.gap),
    ...corner(before, after).toReversed(),
    shifted(p, a.x * before.gap, a.y * before.gap),
  ]
}

/**
 * Where the corner between two edges goes: as a rule to the mitre, one point. Two where the edges are
 * all but in line and one gap is wider (its band ends square at the corner), and where an edge turns
 * back so sharply that the mitre would run far into the floor (it is cut square).
 */
function corner(before: GapEdge, after: GapEdge): readonly Point[] {
  const p = after.from
  const a = normal(before)
  const b = normal(after)
  const cross = a.x * b.y - a.y * b.x
  const dot = a.x * b.x + a.y * b.y
  if (dot > 0) {
    if (before.gap === after.gap) {
      // Both normals' sum stays exact enough however little the wall turns.
      const k = before.gap / (1 + dot)
      return [shifted(p, k * (a.x + b.x), k * (a.y + b.y))]
    }
    const sine = Math.abs(cross)
    const pastBefore = before.gap * dot - after.gap
    const pastAfter = after.gap * dot - before.gap
    if (pastBefore > SLIGHT * sine) return step(p, a, [before.gap, after.gap / dot])
    if (pastAfter > SLIGHT * sine) return step(p, b, [before.gap / dot, after.gap])
  }
  const dx = (before.gap * b.y - after.gap * a.y) / cross
  const dy = (after.gap * a.x - before.gap * b.x) / cross
  const widest = Math.max(before.gap, after.gap)
  const reach = MITRE_LIMIT * widest
  if (cross > 0 || (cross < 0 && dx * dx + dy * dy <= reach * reach)) return [shifted(p, dx, dy)]
  return distinct([
    shifted(p, a.x * before.gap + a.y * widest, a.y * before.gap - a.x * widest),
    shifted(p, b.x * after.gap - b.y * widest, b.y * after.gap + b.x * widest),
  ])
}

function distinct(points: readonly Point[]): readonly Point[] {
  return points.filter((point, i) => i === 0 || !samePoint(point, points[i - 1]!))
}

/** The unit normal into the region: exactly 0 and ±1 for level and upright edges. */
function normal(edge: Line): { readonly x: number; readonly y: number } {
  const east = edge.to.x - edge.from.x
  const north = edge.to.y - edge.from.y
  const length = Math.sqrt(east * east + north * north)
  return { x: -north / length, y: east / length }
}

/** Two points square off one of the edges. */
function step(
  p: Point,
  normal: { readonly x: number; readonly y: number },
  offs: readonly [number, number],
): readonly Point[] {
  return distinct(offs.map((off) => shifted(p, normal.x * off, normal.y * off)))
}

function shifted(p: Point, dx: number, dy: number): Point {
  return { x: p.x + roundToNm(dx), y: p.y + roundToNm(dy) }
}
