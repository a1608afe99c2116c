import { groupBy } from './exact.ts'
import type { Floor, Piece, Ring, Vertex } from './layout.ts'

/**
 * A stretch of one line along which nothing changes: which pieces end there from either side, and
 * whether the area does. `from` → `to` rises along u, or along v where the line is upright.
 */
export interface Meeting {
  readonly from: Vertex
  readonly to: Vertex
  /** Pieces below the line (left of it where it is upright) with an edge along this stretch. */
  readonly before: readonly Piece[]
  /** Pieces above the line, or right of it. */
  readonly after: readonly Piece[]
  /** Edges of the area with the area below the line, or left of it. */
  readonly rimBefore: number
  readonly rimAfter: number
}

export interface Meetings {
  /** On lines of constant v, by rising v, then u. */
  readonly level: readonly Meeting[]
  /** On lines of constant u, by rising u, then v. */
  readonly upright: readonly Meeting[]
  readonly slanted: readonly Meeting[]
}

/** A directed edge turned to rise; the inside of its ring lies before or after the line. */
interface Edge {
  readonly from: Vertex
  readonly to: Vertex
  readonly side: 'before' | 'after'
  /** Null for an edge of the area. */
  readonly piece: Piece | null
}

/**
 * All edges of the pieces and of the area, brought together. On level and upright lines, where a
 * vertex may lie inside a neighbour's edge, the line is cut at every vertex on it; slanted edges meet
 * only when both ends are the same. So no two meetings overlap, and together they are all edges.
 */
export function findMeetings(floor: Floor): Meetings {
  const edges = [
    ...floor.pieces.flatMap((piece) => edgesOf(piece.ring, piece)),
    ...floor.area.rings.flatMap((ring) => edgesOf(ring, null)),
  ]
  const level = edges.filter(({ from, to }) => from[1] === to[1])
  const upright = edges.filter(({ from, to }) => from[0] === to[0])
  const slanted = edges.filter(({ from, to }) => from[0] !== to[0] && from[1] !== to[1])
  return {
    level: onLines(level, 0),
    upright: onLines(upright, 1),
    slanted: [...groupBy(slanted, ({ from, to }) => `${from},${to}`).values()].map((same) =>
      meeting(same[0]!.from, same[0]!.to, same),
    ),
  }
}

function edgesOf(ring: Ring, piece: Piece | null): Edge[] {
  return ring.flatMap((a, i) => {
    const b = ring[(i + 1) % ring.length]!
    if (a[0] === b[0] && a[1] === b[1]) return []
    const rises = a[0] === b[0] ? a[1] < b[1] : a[0] < b[0]
    // The inside is on the left: above an edge that goes to rising u, but left of one that goes up.
    const side = rises === (a[0] === b[0]) ? 'before' : 'after'
    return rises ? { from: a, to: b, side, piece } : { from: b, to: a, side, piece }
  })
}

/** Meetings on parallel lines; `along` is the coordinate that varies on them. */
function onLines(edges: readonly Edge[], along: 0 | 1): Meeting[] {
  const lines = groupBy(edges, ({ from }) => from[1 - along]!)
  return [...lines].sort(([a], [b]) => a - b).flatMap(([, line]) => onOneLine(line, along))
}

function onOneLine(edges: Edge[], along: 0 | 1): Meeting[] {
  edges.sort((a, b) => a.from[along] - b.from[along])
  const ends = edges.flatMap(({ from, to }) => [from, to])
  ends.sort((a, b) => a[along] - b[along])
  const meetings: Meeting[] = []
  let active: Edge[] = []
  let next = 0
  for (let i = 0; i + 1 < ends.length; i += 1) {
    const [from, to] = [ends[i]!, ends[i + 1]!]
    if (from[along] === to[along]) continue
    active = active.filter((edge) => edge.to[along] > from[along])
    while (next < edges.length && edges[next]!.from[along] <= from[along]) {
      active.push(edges[next]!)
      next += 1
    }
    if (active.length > 0) meetings.push(meeting(from, to, active))
  }
  return meetings
}

function meeting(from: Vertex, to: Vertex, edges: readonly Edge[]): Meeting {
  const before: Piece[] = []
  const after: Piece[] = []
  let [rimBefore, rimAfter] = [0, 0]
  for (const { side, piece } of edges) {
    if (piece === null) {
      if (side === 'before') rimBefore += 1
      else rimAfter += 1
    } else if (side === 'before') before.push(piece)
    else after.push(piece)
  }
  return { from, to, before, after, rimBefore, rimAfter }
}

/** Two pieces meeting along one straight stretch, the area running on across it. */
export interface Contact {
  readonly from: Vertex
  readonly to: Vertex
  readonly before: Piece
  readonly after: Piece
}

/**
 * Where pieces meet, each greatest stretch of one pair once. Where the area itself ends from both
 * sides (a wall thinner than the grid) nothing meets.
 */
export function contacts(meetings: readonly Meeting[]): readonly Contact[] {
  const found: Contact[] = []
  for (const { from, to, before, after, rimBefore, rimAfter } of meetings) {
    const [one] = before
    const [other] = after
    if (one === undefined || other === undefined || (rimBefore > 0 && rimAfter > 0)) continue
    const last = found[found.length - 1]
    const goesOn =
      last !== undefined &&
      last.before === one &&
      last.after === other &&
      last.to[0] === from[0] &&
      last.to[1] === from[1]
    if (goesOn) found[found.length - 1] = { ...last, to }
    else found.push({ from, to, before: one, after: other })
  }
  return found
}
