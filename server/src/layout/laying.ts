import type { Nm } from '../units/length.ts'
import { clashes } from './clash.ts'
import type { Jointing } from './jointing.ts'
import type { PlankRules } from './problem.ts'
import type { Cut, Rest, Stock, StockLimits } from './stock.ts'
import type { Place } from './stretches.ts'

/** What every pass over one problem shares. */
export interface Field {
  readonly rules: PlankRules
  readonly places: readonly Place[]
  /** Stretches course by course as they are laid, left to right. */
  readonly laying: readonly (readonly Place[])[]
  readonly limits: StockLimits
  /** Start pieces worth trying in each stretch whatever lies beside it. */
  readonly starts: readonly (readonly Nm[])[]
}

/** A way of laying: how a run begins, and what is weighed against a plank. */
export interface Pattern {
  readonly words: string
  /** The piece that starts a run with nothing laid beside it, as a share of the plank. */
  readonly begin: readonly [number, number]
  /** What a waiting offcut is worth, as a share of its length. */
  readonly keep: number
  /** What is paid, as a share of a plank, for keeping off an H or a constant step. */
  readonly calm: number
}

/** A floor laid once through: how each stretch is jointed, and what each blank is cut from. */
export interface Trial {
  readonly pattern: Pattern
  /** By stretch. */
  readonly jointings: readonly Jointing[]
  readonly blanks: readonly LaidBlank[]
  readonly planks: readonly { readonly length: Nm }[]
  /** How many of them, by length as the rules list them. */
  readonly used: readonly number[]
}

/** A blank where it lies, and where it is sawn out. */
export interface LaidBlank extends Cut {
  readonly stretch: number
  readonly from: Nm
  readonly to: Nm
}

/** A floor half laid: what a pass knows when it comes to a stretch. */
export interface Laying {
  readonly field: Field
  readonly pattern: Pattern
  readonly stock: Stock
  /** By stretch; before a stretch is laid, what an earlier pass did there, or nothing. */
  readonly jointings: (Jointing | undefined)[]
  readonly blanks: LaidBlank[]
  /** Planks opened, by length as the rules list them. */
  readonly used: number[]
  /** Their lengths together, and those of the planks in a box: what the price of a length rests on. */
  usedUp: Nm
  readonly inBox: Nm
  /** Rests that may serve the stretch at hand, the least first. */
  ready: readonly Rest[]
  order: number
  last: boolean
}

/** Breaches of a jointing by itself and against its neighbours, laid or guessed. */
export function breachesHere(laying: Laying, place: Place, jointing: Jointing): number {
  let count = jointing.breaches
  for (const touch of place.touches) {
    const beside = laying.jointings[touch.other]
    if (beside !== undefined) count += clashes(jointing, beside, touch, laying.field.rules)
  }
  return count
}
