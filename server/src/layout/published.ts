/**
 * The published layout, version 1: everything needed to prove a layout again elsewhere. All numbers
 * are whole nanometres unless their key says otherwise, none beyond 10^15. Coordinates are [u, v] in
 * the frame of the run: u along the planks, v across them, right-handed.
 *
 * Always true:
 * 1. The pieces tile the area exactly. Each ring is simple (it touches itself nowhere) and
 *    counter-clockwise. Taken as directed edges, the pieces' rings cancel but for `area.rings`
 *    (vertices may lie inside a straight edge of a neighbour only on seams and joints, which are exact
 *    lines of constant v or u; on a slanted edge both have the same vertices).
 * 2. A piece lies in its course, low ≤ v ≤ high, and every inner edge is a seam (v of a course) or a
 *    joint (constant u). Courses are numbered from 1 by rising v without gaps, each exactly a plank's
 *    width high; `order` counts them from 1 without gaps or repeats.
 * 3. Pieces of one plank lie apart in it: by `kerfAcross` along it, or by `kerfAlong` across it; only
 *    pieces of one blank (same `blank`) may share a span without that. Spans stay inside the plank.
 *    A span is at least as long and as wide as the piece's ring. Two blanks of one plank that share
 *    its length (not apart across it: an end and a start) also leave `toSpare`, so `kerfAcross` +
 *    `toSpare` between them. Pieces of one blank share plank, course and turn; the box around all their
 *    rings is no larger than the box around all their spans. Every plank listed is used.
 * 4. `factory` is true exactly where the span touches that end or edge of the plank (seen in plan:
 *    left is low u, low is low v; a turned piece swaps them). At a joint the piece on the left has a
 *    factory right end and the piece on the right a factory left end; at a seam the piece below has a
 *    factory high edge and the piece above a factory low edge. Ends that meet a wall may be cut.
 *    A joint stands at the utmost u of its blanks, so a blank with joints at both ends is as long as
 *    its plank. Where a hole parts a stretch (`parted`), both ends at that joint are cut and will be
 *    glued: the joint ends at a vertex of a hole that lies in the course, opens to neither seam by an
 *    edge, and reaches to both sides of the joint.
 * 5. Joints of neighbouring courses never align: no two meet their common seam in one point.
 * 6. A blank cut from the rest of another blank's plank is laid in a later course (by `order`); a
 *    cross-cut rest waits at most `pile.courses` courses, and at most `pile.pieces` wait at once. Rests
 *    of a rip (spans apart across from those of all earlier blanks of the plank) may wait until the
 *    last course. Each cut makes a new rest: it waits from the course of the latest earlier blank of its
 *    plank that it is apart from along it, to its own; those waiting at once are counted when a course
 *    is done.
 *
 * Soft rules; every breach is listed, once for each pair or piece. Whole numbers out of slanted edges:
 * a width is rounded down and a run up, so that the rounded value breaches when the exact one does.
 * - `stagger`: two joints of neighbouring courses that both reach their common seam strictly inside
 *   one interval where the courses touch, nearer than `stagger`. value: their distance. Parted joints
 *   are joints.
 * - `shortest end`: a piece that is not a whole plank long (its span is shorter than the plank), whose
 *   extent along u is below `shortestEnd`. value: the extent.
 * - `narrowest rip`: cut the piece at every u of its vertices; in each slab and for each interval of
 *   its cross-section take the widths at both sides of the slab (limits from inside); the value of the
 *   interval is the smaller one, but the larger where the smaller is at most 1000 (a taper to a point);
 *   intervals whose larger is at most 1000 do not count. The piece's value is the least of them.
 * - `longest run`: the longest straight line along u (or v) inside `area.rings`; one for each
 *   direction at most. Lines on the rim count as limits from inside.
 * - `doorway joint`: a joint strictly inside a doorway zone's [from, to] whose extent in v overlaps
 *   the zone's [low, high] by a positive length. value: distance to the nearer side of the zone; limit: 0.
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
