import type { Nm } from '../units/length.ts'
import type { Problem } from './problem.ts'
import { advance, begin, type Search } from './search.ts'

/**
 * A plan: where every stretch is jointed and which plank each blank is cut from. A blank is what lies
 * between two joints (or a joint and the wall): a rectangle cut from one plank, from which obstacles
 * are then notched; it may fall into several pieces where a wall end parts it.
 */
export interface Plan {
  readonly blanks: readonly Blank[]
  /** Numbered from 1 in the order they are opened. */
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

/** Beyond this a search seldom finds a better plan. */
export const USUAL_BUDGET: Budget = { patterns: 8 }

/**
 * Plans a floor: where every stretch is jointed and which plank each blank is cut from, the best of
 * the patterns that the budget allows. Best is, in this order: fewest breaches, fewest boxes, fewest
 * slivers, fewest joints repeated in an H or a step, fewest hard cuts, fewest planks; of equals the
 * first. Cost: patterns × stretches, see `layOnce`.
 */
export function plan(problem: Problem, budget: Budget = USUAL_BUDGET): Plan {
  return planOf(advance(begin(problem), Math.max(1, budget.patterns)))
}

/** The best plan that a search has found; empty before its first step. */
export function planOf(search: Search): Plan {
  const { best, bound, tried, field } = search
  if (best === null) return { blanks: [], planks: [], bound, pattern: '', tried }
  const { trial } = best
  return {
    blanks: trial.blanks.map((blank) => ({
      stretch: blank.stretch,
      course: field.places[blank.stretch]!.course.course,
      from: blank.from,
      to: blank.to,
      plank: blank.plank + 1,
      along: blank.along,
      across: blank.across,
      turned: blank.turned,
    })),
    planks: trial.planks.map((plank, index) => ({ plank: index + 1, length: plank.length })),
    bound,
    pattern: trial.pattern.words,
    tried,
  }
}
