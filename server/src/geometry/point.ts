import type { Nm } from '../units/length.ts'

/**
 * A point in whole nanometres. In the plan x is east and y is north; in the frame of a run x is
 * along the planks (u) and y across them (v). Both frames are right-handed.
 */
export interface Point {
  readonly x: Nm
  readonly y: Nm
}

/** A closed polygon without its first point repeated. Outer rings run counter-clockwise, holes clockwise. */
export type Ring = readonly Point[]

/** A region: outer rings and holes, in no particular order; orientation tells them apart. */
export type Region = readonly Ring[]
