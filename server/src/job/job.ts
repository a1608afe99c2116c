import type { Span } from '../facts/span.ts'
import type { Name } from '../language/tree.ts'
import type { Nm, UnitStyle } from '../units/length.ts'
import type { Ratio } from '../units/ratio.ts'

/**
 * The job: what the text says once names are bound and figures typed, and nothing that was computed
 * from it. Every part keeps the span it was read from. Order is written order throughout.
 */
export interface Job {
  readonly title: string
  readonly site: string
  readonly date: string
  readonly revision: string
  readonly notes: readonly string[]
  readonly units: UnitStyle
  readonly jambsUnder: Given<Nm>
  readonly allowance: Given<Ratio>
  readonly pile: { readonly pieces: number; readonly courses: number; readonly span: Span | null }
  readonly rooms: readonly Room[]
  readonly products: readonly Product[]
  readonly floors: readonly Floor[]
  readonly prices: readonly PriceBook[]
  readonly holds: readonly Hold[]
  readonly accepts: readonly Accept[]
}

/** A value and where it was given; `span` is null when it is the language's default. */
export interface Given<T> {
  readonly value: T
  readonly span: Span | null
}

export type Plane = 'base' | 'wall' | 'toe-kick' | 'jamb'

/** The standard deviation of one reading: `fixed`, and `rise` more for each `per` of its length. */
export interface Worth {
  readonly fixed: Nm
  readonly rise: Nm
  readonly per: Nm
}

/**
 * One reading off the tape. `nm` is null while it is still to be taken (`?`) or its line is broken.
 * `sigma` is one standard deviation, resolved from the reading, its room, the job or the default.
 */
export interface Reading {
  readonly nm: Nm | null
  readonly sigma: Nm
  readonly text: string
  readonly span: Span
  readonly about: boolean
  /** To be taken (`?` alone) or to be taken again (`12' 4"?`). */
  readonly doubtful: boolean
  readonly plane: Plane
  /** The same distance taken again, in written order. */
  readonly again: readonly Reading[]
}

/** The eight ways, clockwise from north. */
export type Way =
  | 'north'
  | 'north-east'
  | 'east'
  | 'south-east'
  | 'south'
  | 'south-west'
  | 'west'
  | 'north-west'

/** How a wall's direction is given. */
export type Heading =
  /** The way you look at it. */
  | { readonly kind: 'way'; readonly way: Way }
  /** Where it takes you: the displacement along it, east and north positive. */
  | { readonly kind: 'offset'; readonly east: Nm; readonly north: Nm }
  /** Its turn from the wall before, degrees, to the right positive. */
  | { readonly kind: 'turn'; readonly degreesRight: Ratio }

export type EdgeKind =
  | 'base kept'
  | 'base off and back'
  | 'base new'
  | 'no base'
  | 'tub'
  | 'hearth'
  | 'slider'
  | 'cabinet'
  | 'nosing'
  | 'open edge'
  | 'carpet'
  /** The drywall-wrapped or cased side of an opening. */
  | 'jamb'
  /** Where another floor begins, under a trim piece. */
  | 'transition'
  | 'obstacle'

/** What a stretch of the rim meets, as far as the text says it. */
export interface EdgeSaid {
  readonly kind: EdgeKind | null
  readonly gap: Nm | null
  readonly trim: string | null
  readonly span: Span | null
}

export interface Wall {
  /** Place in the room, from 0. */
  readonly index: number
  /** What messages call it: its own name, else its way ('north'). */
  readonly label: string
  readonly name: Name | null
  readonly heading: Heading
  readonly reading: Reading
  /** Bows out of the room (positive) or into it, as the rise of the arc over the chord. */
  readonly bow: { readonly rise: Nm; readonly span: Span } | null
  readonly openTo: Name | null
  readonly stair: 'up' | 'down' | null
  /** Lengths read along it from the left, or none. */
  readonly parts: readonly Part[]
  readonly edge: EdgeSaid
  readonly span: Span
  readonly broken: boolean
}

export interface Part {
  readonly reading: Reading
  /** What the part stands for, or null for a stretch of plain wall. */
  readonly of: 'door' | 'opening' | 'pass-through' | 'closet' | 'alcove' | 'hearth' | null
}

/** Where a thing stands on its wall: distance of its near side from the wall's left or right end. */
export interface OnWall {
  readonly wall: number
  readonly from: 'left' | 'right'
  readonly distance: Reading
  readonly width: Reading
  /** With both jambs read off one hook, the far one. */
  readonly far: Reading | null
}

export interface Opening {
  readonly kind: 'door' | 'opening' | 'pass-through' | 'open side'
  readonly label: string
  readonly name: Name | null
  /** Null while its wall or place is not known. */
  readonly place: OnWall | null
  /** The room beyond; 'outside' and unmeasured rooms count as beyond; null where none is named. */
  readonly to: Name | null
  readonly thickness: Given<Nm> | null
  readonly jambs: boolean
  readonly sliding: boolean
  readonly trim: string | null
  readonly span: Span
}

export interface Recess {
  readonly kind: 'closet' | 'alcove' | 'hearth'
  readonly label: string
  readonly place: OnWall | null
  readonly deep: Reading | null
  /** Closets: inside width, what of it lies left of the opening, wall thickness. */
  readonly inside: Reading | null
  readonly leftReturn: Reading | null
  readonly rightReturn: Reading | null
  readonly thickness: Given<Nm> | null
  readonly gap: Nm | null
  readonly span: Span
}

export interface Obstacle {
  readonly kind: 'column' | 'island' | 'stairwell' | 'vent'
  readonly label: string
  readonly round: Reading | null
  readonly eastWest: Reading | null
  readonly northSouth: Reading | null
  /** Distance of its nearest face from a wall: two of them place it. */
  readonly from: readonly { readonly wall: number; readonly distance: Reading }[]
  readonly gap: Nm | null
  readonly span: Span
}

/** Readings that check or fix the shape. Corner i is where wall i begins (its left end). */
export type Check =
  | {
      readonly kind: 'diagonal'
      readonly from: number
      readonly to: number
      readonly reading: Reading
      readonly span: Span
    }
  /** Square off wall `from`, to wall `to`, at a place along `from`. */
  | {
      readonly kind: 'across'
      readonly from: number
      readonly to: number
      readonly at:
        | { readonly kind: 'middle' }
        | { readonly kind: 'left' | 'right'; readonly distance: Nm }
      readonly reading: Reading
      readonly span: Span
    }
  /** Between marks `a` along wall `first` and `b` along wall `second`, both from their corner. */
  | {
      readonly kind: 'corner tie'
      readonly corner: number
      readonly alongFirst: Nm
      readonly alongSecond: Nm
      readonly first: number
      readonly second: number
      readonly reading: Reading
      readonly span: Span
    }
  /** Through doors, from a wall of this room to a wall of another. */
  | {
      readonly kind: 'room tie'
      readonly from: number
      readonly room: Name
      readonly to: number
      readonly reading: Reading
      readonly span: Span
    }
  | { readonly kind: 'square'; readonly corner: number; readonly span: Span }

export interface Room {
  readonly name: Name
  readonly walls: readonly Wall[]
  readonly corners: readonly { readonly name: Name; readonly corner: number }[]
  readonly openings: readonly Opening[]
  readonly recesses: readonly Recess[]
  readonly obstacles: readonly Obstacle[]
  readonly checks: readonly Check[]
  readonly outOfSquare: boolean
  readonly subfloor: readonly string[]
  readonly existing: readonly string[]
  readonly base: BaseSaid | null
  readonly notes: readonly string[]
  readonly span: Span
  /** A line of it could not be read: it has no figures until that is mended. */
  readonly broken: boolean
  /** Still being written: its walls do not come round yet, or one is to be taken. No figures, no blame. */
  readonly unfinished: boolean
}

export interface BaseSaid {
  readonly thickness: Nm | null
  readonly fate: 'kept' | 'off and back' | 'new' | 'none' | null
  readonly span: Span
}

export interface Product {
  readonly name: Name
  readonly width: Nm
  /** One length, or several with how many of each a box holds. */
  readonly lengths: readonly { readonly length: Nm; readonly perBox: number }[]
  readonly thickness: Nm | null
  /** Planks in a box (all lengths together). */
  readonly perBox: number
  readonly pad: 'attached' | 'separate' | 'none' | null
  readonly rules: ProductRules
  readonly spoil: Spoil
  readonly spares: { readonly planks: number; readonly boxes: number }
  readonly span: Span
}

export interface Spoil {
  readonly planks: number | null
  readonly percent: Ratio | null
  readonly span: Span | null
}

export interface ProductRules {
  readonly stagger: Given<Nm>
  readonly shortestEnd: Given<Nm>
  readonly narrowestRip: Given<Nm>
  readonly gap: Given<Nm>
  /** Longest floor without a break, along and across the planks; null where the product is silent. */
  readonly longestRun: { readonly along: Nm | null; readonly across: Nm | null }
  readonly doorways: 'through' | 'break' | { readonly breakUnder: Nm }
  readonly laid: 'left to right' | 'right to left' | 'either way'
  /** Kerf of a rip and of a cross cut. */
  readonly kerfAlong: Given<Nm>
  readonly kerfAcross: Given<Nm>
  /** Kept free on a plank that gives both an end and a start piece. */
  readonly toSpare: Given<Nm>
}

export interface Floor {
  readonly name: Name
  readonly rooms: readonly Name[]
  readonly product: Name | null
  readonly running: Running | null
  readonly start: { readonly room: Name; readonly wall: number; readonly span: Span } | null
  readonly shift: { readonly distance: Nm; readonly way: Way; readonly span: Span } | null
  readonly breaks: readonly {
    readonly from: Name
    readonly to: Name
    readonly called: Name | null
    readonly trim: string | null
    readonly span: Span
  }[]
  readonly edges: readonly FloorEdge[]
  readonly expects: readonly Expectation[]
  readonly span: Span
  readonly broken: boolean
}

export type Running =
  | {
      readonly kind: 'ways'
      readonly ways: 'east-west' | 'north-south' | 'north-east' | 'north-west'
      readonly span: Span
    }
  | { readonly kind: 'along'; readonly room: Name; readonly wall: number; readonly span: Span }

export type FloorEdge = EdgeSaid & {
  readonly where:
    | { readonly kind: 'wall'; readonly room: Name; readonly wall: number }
    | {
        readonly kind: 'doorway'
        readonly from: Name
        readonly to: Name
        readonly called: Name | null
      }
}

export interface Expectation {
  readonly what: 'boxes' | 'planks' | 'sq ft' | 'sq m'
  readonly value: Ratio
  readonly withinPercent: Ratio
  readonly span: Span
}

export interface PriceBook {
  readonly name: Name
  readonly lines: readonly { readonly word: string; readonly text: string; readonly span: Span }[]
}

export interface Hold {
  readonly what: string
  readonly cleared: string | null
  readonly by: string | null
  readonly on: string | null
  readonly span: Span
}

/** An accepted warning: its code, and the stretch of text (a block) it is settled for; null for the job. */
export interface Accept {
  readonly code: string
  readonly scope: Span | null
  readonly span: Span
}
