import type { Span } from '../facts/span.ts'
import type { Point, Region, Ring } from '../geometry/point.ts'
import type { EdgeKind, Obstacle, Opening } from '../job/job.ts'
import type { SoftRule } from '../layout/published.ts'
import type { Nm } from '../units/length.ts'

/**
 * A drawing as plain data: what every renderer draws, in the order it is drawn. Plan axes, whole
 * nanometres, x east and y north. A renderer chooses colours and line weights; it computes no
 * geometry and letters nothing of its own.
 */
export interface Scene {
  readonly title: string
  /** The sheet's corners: everything drawn lies inside. */
  readonly low: Point
  readonly high: Point
  /** The height of plain lettering; line weights and hatches are parts of it. */
  readonly em: Nm
  /** Which way the planks of the first floor run, in millionths: hatches stand at half a right angle to it. */
  readonly run: Point
  readonly shapes: readonly Shape[]
}

/** What every shape has. */
interface Common {
  /** Unlike any other in its scene, and the same as long as the thing drawn keeps its name or number. */
  readonly id: string
  /** The text that it was drawn from, so that a click finds it; null where there is none. */
  readonly span: Span | null
}

export type Shape =
  | Masonry
  | RoomFloor
  | ClosetFloor
  | WallFace
  | SketchWall
  | SketchCorner
  | PieceShape
  | Seam
  | JointLine
  | OpeningShape
  | ObstacleShape
  | TransitionLine
  | WorkingLine
  | Dimension
  | Label
  | RipLabel
  | BreachMark
  | Note
  | Rule
  | Swatch
  | ScaleBar
  | NorthMark
  | LayingMark

export type ShapeKind = Shape['kind']

/** One line of lettering. `at` is the middle of its height, at the side that `anchor` says. */
export interface Lettering {
  readonly text: string
  readonly at: Point
  readonly height: Nm
  readonly anchor: 'start' | 'middle' | 'end'
  /** Which way it reads, as millionths east and north; (1 000 000, 0) is level. */
  readonly along: Point
  readonly tone: Tone
}

export type Tone = 'title' | 'heading' | 'plain' | 'quiet' | 'alarm'

/** The walls between and around rooms, cut through. Outer faces are drawn for the eye, not measured. */
export interface Masonry extends Common {
  readonly kind: 'masonry'
  readonly region: Region
}

export interface RoomFloor extends Common {
  readonly kind: 'room'
  readonly ring: Ring
  /** "hall: 120.2 sq ft". */
  readonly title: string
}

export interface ClosetFloor extends Common {
  readonly kind: 'closet'
  readonly ring: Ring
  readonly title: string
  readonly throat: Ring
}

/** The face of one wall as it was read: one stretch, or several where it is curved or has an alcove. */
export interface WallFace extends Common {
  readonly kind: 'wall face'
  readonly lines: readonly (readonly [Point, Point])[]
  /** No wall stands there: the floor ends at a step. */
  readonly open: boolean
  /** "north of bunk room: 12' 4"". */
  readonly title: string
}

/** A wall of a room that is still being read, where the readings so far put it: for the eye only. */
export interface SketchWall extends Common {
  readonly kind: 'sketch wall'
  readonly line: readonly [Point, Point]
  /** False where its length is still to be taken: it is then drawn about as long as it may be. */
  readonly read: boolean
  /** Its reading, or a question mark. */
  readonly lettering: Lettering
  readonly title: string
}

/** The corner that the next wall of a half-read room begins at. */
export interface SketchCorner extends Common {
  readonly kind: 'sketch corner'
  readonly at: Point
  readonly radius: Nm
  /** From there back to the first corner, where nothing that is read leads to it yet. */
  readonly back: readonly (readonly [Point, Point])[]
}

/** How a piece differs from a plank out of the box. */
export type Cut = 'whole' | 'cut' | 'rip' | 'cut and rip'

export interface PieceShape extends Common {
  readonly kind: 'piece'
  readonly piece: number
  readonly course: number
  readonly plank: number
  readonly cut: Cut
  readonly ring: Ring
  /** Its number, where there is room for it. */
  readonly number: Lettering
  readonly title: string
}

export interface Seam extends Common {
  readonly kind: 'seam'
  readonly from: Point
  readonly to: Point
}

export interface JointLine extends Common {
  readonly kind: 'joint'
  readonly from: Point
  readonly to: Point
}

export interface OpeningShape extends Common {
  readonly kind: 'opening'
  readonly of: Opening['kind']
  /** The floor within the wall's thickness. */
  readonly throat: Ring
  /** Sides of the opening, and the heads of a cased one. */
  readonly jambs: readonly (readonly [Point, Point])[]
  readonly heads: readonly (readonly [Point, Point])[]
  /** The leaf, open; sliding leaves as they stand. */
  readonly leaves: readonly Ring[]
  /** Where the leaf swings: hinge side and direction are drawn for the eye, not measured. */
  readonly swing: readonly Point[]
  readonly title: string
}

export interface ObstacleShape extends Common {
  readonly kind: 'obstacle'
  readonly of: Obstacle['kind'] | 'hearth'
  readonly ring: Ring
  readonly title: string
}

/** A strip of trim at the floor's rim or inside it. */
export interface TransitionLine extends Common {
  readonly kind: 'transition'
  readonly of: EdgeKind | null
  readonly from: Point
  readonly to: Point
  readonly title: string
}

/** The line to snap first: the edge of the first course that faces the field. */
export interface WorkingLine extends Common {
  readonly kind: 'working line'
  readonly from: Point
  readonly to: Point
  /** An arrow's head at `to`, pointing the way a course is laid. */
  readonly head: Ring
}

export interface Dimension extends Common {
  readonly kind: 'dimension'
  readonly line: readonly [Point, Point]
  /** From the wall's ends to just past the line. */
  readonly extensions: readonly (readonly [Point, Point])[]
  readonly ticks: readonly (readonly [Point, Point])[]
  readonly lettering: Lettering
}

export interface Label extends Common {
  readonly kind: 'label'
  /** Ground on which the lettering stands clear of what lies under it. */
  readonly plate: Ring
  readonly lines: readonly Lettering[]
}

/** The width of the first or last course. */
export interface RipLabel extends Common {
  readonly kind: 'rip label'
  readonly which: 'first' | 'last'
  readonly leader: readonly [Point, Point]
  readonly plate: Ring
  readonly lettering: Lettering
}

export interface BreachMark extends Common {
  readonly kind: 'breach'
  readonly rule: SoftRule
  readonly at: Point
  readonly radius: Nm
  readonly title: string
}

/** Lettering of the sheet: title block, notes, legend. */
export interface Note extends Common {
  readonly kind: 'note'
  readonly lettering: Lettering
}

export interface Rule extends Common {
  readonly kind: 'rule'
  readonly from: Point
  readonly to: Point
}

/** A sample in the legend, drawn as the thing itself is drawn. */
export interface Swatch extends Common {
  readonly kind: 'swatch'
  readonly of: Cut | 'masonry' | 'transition' | 'working line' | 'breach' | 'obstacle'
  readonly ring: Ring
}

export interface ScaleBar extends Common {
  readonly kind: 'scale bar'
  /** Filled fields; the others stand between them. */
  readonly filled: readonly Ring[]
  readonly frame: Ring
  readonly marks: readonly Lettering[]
}

export interface NorthMark extends Common {
  readonly kind: 'north'
  readonly needle: Ring
  readonly tail: Ring
  readonly lettering: Lettering
}

/** Which way planks run, and in which direction courses follow each other. */
export interface LayingMark extends Common {
  readonly kind: 'laying'
  readonly lines: readonly (readonly [Point, Point])[]
  readonly heads: readonly Ring[]
  readonly lettering: readonly Lettering[]
}
