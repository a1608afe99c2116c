import type { Message } from '../facts/message.ts'
import type { Span } from '../facts/span.ts'
import type { Point, Region, Ring } from '../geometry/point.ts'
import type { EdgeKind } from '../job/job.ts'
import type { Nm } from '../units/length.ts'

/** The floor of one floor statement, in plan axes: what is laid, and what its rim meets. */
export interface FloorArea {
  /** Union of the rooms and the floor in openings run through, less obstacles, before gaps. */
  readonly gross: Region
  /** The rings of `gross` edge by edge: each edge ends where the next one begins, the last at the first. */
  readonly rings: readonly (readonly RimEdge[])[]
  /** All edges of `rings` in one list. Both sides of a break are in it. */
  readonly rim: readonly RimEdge[]
  /** One for each place where a trim piece parts this floor from another, or from itself. */
  readonly transitions: readonly Transition[]
  /** The rooms and closets in it, before gaps, for what is judged room by room. */
  readonly rooms: readonly { readonly name: string; readonly outline: Ring }[]
  /** Doorways that the run passes, as rings, for the joints near them. */
  readonly doorways: readonly { readonly label: string; readonly ring: Ring }[]
  /** Jamb sides that the floor runs under: what is to be undercut. */
  readonly jambSides: number
  /** False while a room of it has no shape: areas and counts are then not ready. */
  readonly complete: boolean
  readonly messages: readonly Message[]
}

/** One straight stretch of the gross area's boundary, and what the text says of it. The floor lies on its left. */
export interface RimEdge {
  readonly from: Point
  readonly to: Point
  /** What was said, or follows from the thing itself (a jamb, an obstacle); null for neither. */
  readonly kind: EdgeKind | null
  /** How far the floor stays off it. */
  readonly gap: Nm
  readonly trim: string | null
  /** Name of the room (or closet) that it bounds. */
  readonly room: string
  /** "north of hall", "hall to bath". */
  readonly label: string
  readonly span: Span | null
  /** Which wall stands here, told from others of its name; null in an opening, at a step, round an obstacle. */
  readonly wall: string | null
}

/** Where a floor ends in an opening or is broken in it. */
export interface Transition {
  /** "hall to bath". */
  readonly label: string
  /** True where the floor goes on beyond: a break in the run. */
  readonly breaks: boolean
  readonly kind: EdgeKind | null
  readonly trim: string | null
  /** Clear width between the jambs. */
  readonly width: Nm
  readonly span: Span | null
}
