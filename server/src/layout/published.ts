/**
 * The published layout, version 1: everything needed to prove a layout again elsewhere. What it
 * promises, and what each rule means, stands in `server/LANGUAGE.md` under "The published layout"; the
 * checker is written from that page. All numbers are whole nanometres unless their key says otherwise.
 */
export interface PublishedFloor {
  readonly floor: string
  readonly product: string
  /** The run's u axis in the plan as whole numbers east and north (not of unit length). */
  readonly frame: { readonly east: number; readonly north: number }
  readonly area: {
    /** With every crossing as a vertex. Outer rings counter-clockwise, holes clockwise. */
    readonly rings: readonly PublishedRing[]
    /**
     * Before the crossings. Ring i of `rings` is ring i of these, from the same first vertex, with
     * vertices put into its edges in order, each within 1 nm of its edge.
     */
    readonly unsplit: readonly PublishedRing[]
  }
  readonly rules: PublishedRules
  readonly courses: readonly PublishedCourse[]
  readonly planks: readonly { readonly plank: number; readonly length: number }[]
  readonly pieces: readonly PublishedPiece[]
  readonly joints: readonly PublishedJoint[]
  readonly doorways: readonly PublishedZone[]
  readonly breaches: readonly PublishedBreach[]
  /**
   * No layout needs fewer planks, nor fewer boxes to hold what is laid (before spoil and spares);
   * never below the area over the longest plank, or over a box.
   */
  readonly bound: { readonly planks: number; readonly boxes: number }
}

export type PublishedRing = readonly (readonly [number, number])[]

export interface PublishedRules {
  readonly plankWidth: number
  readonly plankLengths: readonly { readonly length: number; readonly perBox: number }[]
  readonly stagger: number
  readonly shortestEnd: number
  readonly narrowestRip: number
  readonly kerfAlong: number
  readonly kerfAcross: number
  readonly toSpare: number
  readonly laid: 'left to right' | 'right to left' | 'either way'
  readonly longestRun: { readonly along: number | null; readonly across: number | null }
  readonly pile: { readonly pieces: number; readonly courses: number }
}

export interface PublishedCourse {
  readonly course: number
  readonly low: number
  readonly high: number
  /** When it is laid: 1 is first. */
  readonly order: number
}

export interface PublishedPiece {
  readonly piece: number
  readonly course: number
  readonly plank: number
  /** Pieces of one blank were sawn out of the same rectangle. */
  readonly blank: number
  readonly ring: PublishedRing
  /** The span it takes of the plank, in the plank's frame (0 is its factory left end, its low edge). */
  readonly along: readonly [number, number]
  readonly across: readonly [number, number]
  readonly turned: boolean
  readonly factory: {
    readonly left: boolean
    readonly right: boolean
    readonly low: boolean
    readonly high: boolean
  }
}

/** One for each greatest interval of v along which two pieces meet at one u. */
export interface PublishedJoint {
  readonly course: number
  readonly at: number
  readonly low: number
  readonly high: number
  readonly leftPiece: number
  readonly rightPiece: number
  /** Cut through a hole and glued: neither end is a factory one. */
  readonly parted: boolean
}

export interface PublishedZone {
  readonly doorway: string
  readonly from: number
  readonly to: number
  readonly low: number
  readonly high: number
}

export type SoftRule =
  | 'stagger'
  | 'shortest end'
  | 'narrowest rip'
  | 'longest run'
  | 'doorway joint'

export interface PublishedBreach {
  readonly rule: SoftRule
  readonly value: number
  readonly limit: number
  /**
   * Where: u, v of the place, halves rounded down. A joint's middle (for a stagger that of the joint
   * in the lower course), a piece's first vertex, a run's low end (of equal runs the one of lowest v,
   * or lowest u if across; then the first).
   */
  readonly at: readonly [number, number]
  /**
   * Pieces concerned: the piece, the piece left of the joint, or for a stagger the pieces left of the
   * two joints, the lower course's first. Empty for a run.
   */
  readonly pieces: readonly number[]
  /** 'along' or 'across' for a run; '' otherwise. */
  readonly direction: '' | 'along' | 'across'
}

/** What `floorscribe layout --format json` writes and `floorscribe verify` reads. */
export interface PublishedLayouts {
  readonly format: 'floorscribe layout'
  readonly version: 1
  readonly unit: 'nm'
  readonly job: string
  readonly floors: readonly PublishedFloor[]
}
