import type { Scene } from '../../report/scene.ts'

/**
 * - `measuring`: no floor can be laid yet; the rooms are drawn as far as they are read.
 * - `counting`: the rooms are of this text, planks and counts are still the last good ones.
 * - `counted`: all of it is of this text and nothing is missing.
 * - `open`: all of it is of this text, and something is still to come: no count is final.
 * - `old`: the text cannot be read just now; all of it is the last good drawing.
 */
export type PictureState = 'measuring' | 'counting' | 'counted' | 'open' | 'old'

/** What the page shows, as plain data: it can be sent, kept and compared. */
export interface Picture {
  readonly state: PictureState
  /** Of every shape `span` is null: see `places`. */
  readonly scene: Scene
  /** Floors in written order. */
  readonly floors: readonly FloorHead[]
  readonly courses: readonly CourseRow[]
  readonly strip: readonly StripItem[]
}

/** What is said over a floor's courses. */
export interface FloorHead {
  /** The floor's name. */
  readonly id: string
  /** "river larch, 6 3/4" x 47 7/8"". */
  readonly product: string
  /** Which way planks run and courses follow, and how wide the first and last are. */
  readonly said: readonly string[]
}

/** One course in the order of laying: those of a floor follow each other. */
export interface CourseRow {
  /** "upstairs: course 3". */
  readonly id: string
  /** The id of its floor. */
  readonly floor: string
  readonly course: number
  /** Left to right as the planks run. */
  readonly pieces: readonly CoursePiece[]
}

export interface CoursePiece {
  /** Of its shape in the scene. */
  readonly id: string
  readonly piece: number
  readonly plank: number
  /** "34 1/2" x 6 3/4"". */
  readonly size: string
  /** "whole", "cut left, ripped". */
  readonly work: string
  /** "for 31", "from 12", or nothing. */
  readonly offcut: string
}

/** One thing that is told over the drawing, and the shapes that it is about. */
export interface StripItem {
  readonly id: string
  readonly about:
    | 'boxes'
    | 'spare planks'
    | 'narrowest rip'
    | 'edges'
    | 'holds'
    | 'rules'
    | 'missing'
  /** "boxes of river larch". */
  readonly label: string
  /** "21 boxes". */
  readonly text: string
  readonly weight: 'plain' | 'open' | 'alarm'
  readonly shapes: readonly string[]
}
