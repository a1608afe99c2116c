import type { Nm } from '../units/length.ts'

/**
 * A plan: where every stretch is jointed and which plank each blank is cut from. A blank is what lies
 * between two joints (or a joint and the wall): a rectangle cut from one plank, from which obstacles
 * are then notched; it may fall into several pieces where a wall end parts it.
 */
export interface Plan {
  readonly blanks: readonly Blank[]
  readonly planks: readonly { readonly plank: number; readonly length: Nm }[]
  /** No layout of this problem needs fewer planks. */
  readonly bound: { readonly planks: number; readonly boxes: number }
  /** Which start pattern and habit gave the best, in words. */
  readonly pattern: string
  /** How many patterns were tried. */
  readonly tried: number
}

export interface Blank {
  readonly stretch: number
  readonly course: number
  readonly from: Nm
  readonly to: Nm
  readonly plank: number
  /** The span it takes of that plank, in the plank's own frame: 0 is its factory left end and its low edge. */
  readonly along: readonly [Nm, Nm]
  readonly across: readonly [Nm, Nm]
  /** Turned by half a turn: only where the lock is symmetric. */
  readonly turned: boolean
}

/** What a search may spend: counted, never timed, so that the answer is the same everywhere. */
export interface Budget {
  readonly patterns: number
}
