import type { Line } from '../geometry/exact.ts'
import type { Ring } from '../geometry/point.ts'
import type { ProductRules } from '../job/job.ts'
import type { EdgeSettled, FloorSaid } from './edge-said.ts'

/** An edge of one of the shapes that make the floor, with what is said of it. */
export interface Edge extends Line {
  readonly facts: EdgeSettled
}

/** Everything that the building of the parts looks at. */
export interface Scope {
  readonly said: FloorSaid
  readonly doorways: ProductRules['doorways']
  /** Keys of the floor's rooms and closets that have a shape. */
  readonly listed: ReadonlySet<string>
}

/** A ring edge by edge, with what is said of each (by its index). */
export function edgesOf(corners: Ring, facts: (edge: number) => EdgeSettled): Edge[] {
  return corners.map((from, i) => ({
    from,
    to: corners[(i + 1) % corners.length]!,
    facts: facts(i),
  }))
}
