import type { Nm } from '../units/length.ts'

/**
 * The problem that a planner solves, as plain data: courses cut into stretches, where they touch,
 * and the product's rules. Nothing of rooms or polygons: a habit, an exact solver and our planner
 * can be run on the same one. All lengths in whole nanometres, in the frame of the run: u along
 * the planks, v across them. Planks point the same way everywhere: left is low u, right is high u.
 */
export interface Problem {
  /** By rising v. */
  readonly courses: readonly Course[]
  readonly stretches: readonly Stretch[]
  readonly contacts: readonly Contact[]
  readonly rules: PlankRules
}

/** Where the courses lie: the choice that comes before any plank. */
export interface SetOut {
  /** v of any one seam: all others lie whole plank widths off it. */
  readonly seam: Nm
  /** v of the wall or line that the first course lies along. */
  readonly start: Nm
  /** From there the courses go on to higher or lower v; what lies behind is laid afterwards, backwards. */
  readonly onward: 'up' | 'down'
}

export interface Course {
  /** From 1, by rising v. */
  readonly course: number
  /** Its seams: low = high of the course below; high − low is the plank's width. */
  readonly low: Nm
  readonly high: Nm
  /** When it is laid: 1 is first. */
  readonly order: number
}

/** A connected part of a course. */
export interface Stretch {
  /** Index in `stretches`. */
  readonly id: number
  readonly course: number
  readonly from: Nm
  readonly to: Nm
  /** Square nm of floor in it: less than its bands where an edge slants. Good to 15 digits. */
  readonly area: number
  /** What lies in it across, piecewise along u, left to right without holes between bands. */
  readonly bands: readonly Band[]
  /** Where a hole sits inside the course: a joint must fall strictly inside, else the piece is parted. */
  readonly posts: readonly Interval[]
  /** Where an end joint is to be avoided: doorways and 6 in either side. */
  readonly doorways: readonly Interval[]
}

export interface Interval {
  readonly from: Nm
  readonly to: Nm
}

/** Between `from` and `to` the floor lies within [low, high] of v (the extreme values over the band). */
export interface Band extends Interval {
  readonly low: Nm
  readonly high: Nm
}

/** Two stretches of neighbouring courses touch along their seam between `from` and `to`. */
export interface Contact extends Interval {
  /** Stretch of the lower course. */
  readonly below: number
  /** Stretch of the upper course. */
  readonly above: number
}

export interface PlankRules {
  readonly width: Nm
  /** One length, or several with how many of each a box holds. */
  readonly lengths: readonly { readonly length: Nm; readonly perBox: number }[]
  readonly stagger: Nm
  readonly shortestEnd: Nm
  readonly narrowestRip: Nm
  /** Taken by a rip, and by a cross cut. */
  readonly kerfAlong: Nm
  readonly kerfAcross: Nm
  /** Kept free on a plank that gives both an end and a start piece, and on each stagger by choice. */
  readonly toSpare: Nm
  /** In which order a course is laid; `either way` means that an offcut may be turned by half a turn. */
  readonly laid: 'left to right' | 'right to left' | 'either way'
  readonly longestRun: { readonly along: Nm | null; readonly across: Nm | null }
  /** Cross-cut offcuts that may wait at once, and for how many courses in laying order. */
  readonly pile: { readonly pieces: number; readonly courses: number }
  readonly spoilPlanks: number
  readonly spoilPercent: { readonly n: string; readonly d: string } | null
  readonly sparePlanks: number
  readonly spareBoxes: number
}
