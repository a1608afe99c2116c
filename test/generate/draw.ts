import type { Dice } from './dice.ts'

/**
 * `realistic` is weighted as lived-in houses are. `nasty` takes whatever the language takes, and its
 * extremes often: tiny rooms, combs of 24 walls, planks longer than rooms, no gap, names that hurt.
 */
export type Mode = 'realistic' | 'nasty'

/** Which angles a house may have: any, none but right ones, or surely others too. */
export type Angles = 'any' | 'right' | 'other'

/** What the lengths of a job are whole steps of, and about how many make an inch and a foot. */
export interface Grid {
  readonly nm: number
  readonly inch: number
  readonly foot: number
}

/** A tape is read to a sixteenth. */
export const SIXTEENTHS: Grid = { nm: 1_587_500, inch: 16, foot: 192 }
export const MILLIMETRES: Grid = { nm: 1_000_000, inch: 25, foot: 300 }

/** The base board of a job, and whether its readings were taken against it. */
export interface Base {
  readonly thick: number
  readonly fate: 'kept' | 'off and back' | 'new' | 'none' | null
  readonly touching: 'base' | 'wall' | 'toe-kick' | 'jamb' | null
}

/** What the parts of one job are drawn with. */
export interface Draw {
  readonly dice: Dice
  readonly nasty: boolean
  readonly angles: Angles
  readonly grid: Grid
  /** Of the walls between rooms, from face to face. */
  readonly thick: number
  /** A line of the job says so; else each opening does. */
  readonly isThickSaid: boolean
  readonly base: Base
  /** Notes what the job has: "shape: L". */
  readonly has: (feature: string) => void
  /** Notes why the job cannot come out clean. */
  readonly spoils: (reason: string) => void
}

/** How far two rooms lie apart as they are read: against their bases it is more than their wall. */
export function apart({ thick, base }: Draw): number {
  const isAgainstBase = base.touching === 'base' || (base.touching === null && base.fate === 'kept')
  return isAgainstBase ? thick + 2 * base.thick : thick
}

/** A whole number of steps between so many inches, both possible. */
export function inches({ dice, grid }: Draw, least: number, most: number): number {
  return dice.between(Math.round(least * grid.inch), Math.round(most * grid.inch))
}

/** One of several by their weights. */
export function weighted<T>(dice: Dice, choices: readonly (readonly [number, T])[]): T {
  let left = dice.below(choices.reduce((sum, [weight]) => sum + weight, 0))
  for (const [weight, value] of choices) {
    if (left < weight) return value
    left -= weight
  }
  throw new Error('weights are whole numbers')
}
