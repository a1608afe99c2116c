import type { Message } from '../facts/message.ts'
import type { Span } from '../facts/span.ts'
import type { Point, Region, Ring } from '../geometry/point.ts'
import type { EdgeKind } from '../job/job.ts'
import type { Nm } from '../units/length.ts'

/** The floor of one floor statement, in plan axes: what is laid, and what its rim meets. */
export interface FloorArea {
  /** Union of the rooms and the floor in openings run through, less obstacles, before gaps. */
  readonly gross: Region
  /** Less each edge's gap: what the planks cover. */
  readonly net: Region
  readonly rim: readonly RimEdge[]
  /** Doorways inside the area, as rings, for the joints near them. */
  readonly doorways: readonly { readonly label: string; readonly ring: Ring }[]
  readonly messages: readonly Message[]
}

/** One straight stretch of the gross area's boundary, and what the text says of it. */
export interface RimEdge {
  readonly from: Point
  readonly to: Point
  readonly kind: EdgeKind | null
  readonly gap: Nm
  readonly trim: string | null
  /** "north of hall", "hall to bath". */
  readonly label: string
  readonly span: Span | null
}
