import type { Nm } from './lengths.ts'
import type { Reading } from './phrases.ts'
import type { Ratio } from './ratio.ts'

/** What a job's text says, names bound by key, nothing computed yet. */
export interface Job {
  readonly tape: Tape
  /** How thick walls are, null where no line says it. */
  readonly thick: Nm | null
  readonly base: Base
  readonly jambs: Nm
  readonly allowance: Ratio
  readonly pile: { readonly pieces: bigint; readonly courses: bigint }
  readonly rooms: readonly Room[]
  readonly products: readonly Product[]
  readonly floors: readonly Floor[]
}

/** What a reading is worth: `plus` + `more` per `per`, a reading marked about `about`. */
export interface Tape {
  readonly plus: Nm | null
  readonly more: Nm
  readonly per: Nm
  readonly about: Nm | null
  readonly touching: Plane | null
}

export type Plane = 'base' | 'wall' | 'toe-kick' | 'jamb'

export interface Base {
  readonly thick: Nm | null
  readonly fate: 'kept' | 'off and back' | 'new' | 'none' | null
}

/** A reading and those taken of it again. */
export type Readings = readonly Reading[]

export interface Room {
  readonly key: string
  readonly tape: Tape
  readonly base: Base
  readonly isOutOfSquare: boolean
  readonly walls: readonly Wall[]
  readonly onWalls: readonly OnWall[]
  readonly checks: readonly Check[]
  readonly things: readonly Thing[]
}

/** The walls of a room by way; a slant's way is what its line says of it. */
export interface Wall {
  readonly way: string
  readonly readings: Readings
  readonly touching: Plane | null
  readonly called: string | null
  readonly takes: { readonly east: Nm; readonly north: Nm } | null
  /** A turn from the wall before, in degrees to the right. */
  readonly turn: Ratio | null
  readonly bow: { readonly rise: Nm; readonly isOut: boolean } | null
  readonly openTo: string | null
  readonly isStair: boolean
  readonly kind: Kind | null
  readonly gap: Nm | null
  readonly thick: Nm | null
  /** The name of the corner at its right end. */
  readonly corner: string | null
  /** Lengths of the parts in which it was read, left to right, and the kinds of those that open. */
  readonly parts: readonly { readonly kind: string | null; readonly length: Nm }[] | null
}

export type Kind =
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

/** What stands on a wall. `at` is how far its near jamb is from an end of the wall. */
export interface OnWall {
  readonly kind: 'door' | 'opening' | 'pass-through' | 'closet' | 'alcove' | 'hearth'
  readonly wall: number
  readonly width: Readings
  readonly at: Reading | null
  readonly from: 'left' | 'right'
  /** The far jamb from the same end, where both were read. */
  readonly farAt: Reading | null
  readonly to: string | null
  readonly called: string | null
  readonly isSliding: boolean
  readonly deep: Nm | null
  readonly inside: Nm | null
  readonly leftReturn: Nm | null
  readonly rightReturn: Nm | null
  readonly thick: Nm | null
  readonly gap: Nm | null
}

export interface Check {
  readonly kind: 'diagonal' | 'across' | 'tie'
  readonly readings: Readings
  readonly phrases: readonly string[]
}

/** A column, island, stairwell or vent: the distances are from walls to its nearest faces. */
export interface Thing {
  readonly kind: string
  readonly round: Nm | null
  readonly eastWest: Nm
  readonly northSouth: Nm
  readonly from: readonly { readonly wall: string; readonly distance: Nm }[]
  readonly gap: Nm | null
}

export interface Product {
  readonly key: string
  readonly width: Nm
  /** Lengths with how many of each a box holds. */
  readonly lengths: readonly { readonly length: Nm; readonly perBox: bigint }[]
  readonly perBox: bigint
  readonly stagger: Nm
  readonly shortestEnd: Nm
  readonly narrowestRip: Nm
  readonly gap: Nm
  readonly kerfAlong: Nm
  readonly kerfAcross: Nm
  readonly toSpare: Nm
  readonly laid: string
  readonly longest: { readonly along: Nm | null; readonly across: Nm | null }
  /** Doorways break the run: every one, those under a width, or none. */
  readonly breaks: { readonly under: Nm | null } | null
  readonly spoil: { readonly planks: bigint; readonly percent: Ratio }
  readonly spares: { readonly planks: bigint; readonly boxes: bigint }
}

export interface Floor {
  readonly key: string
  readonly rooms: readonly string[]
  readonly product: string
  readonly running: string | null
  readonly start: { readonly wall: string; readonly room: string } | null
  readonly shift: { readonly by: Nm; readonly way: string } | null
  readonly breaks: readonly Place[]
  readonly edges: readonly (Place & { readonly kind: Kind | null; readonly gap: Nm | null })[]
}

/** An opening between two rooms, or a wall of a room. */
export type Place =
  | { readonly from: string; readonly to: string; readonly called: string | null }
  | { readonly wall: string; readonly room: string }
