import type { Vertex } from './layout.ts'

/** What a proof of a published layout came to. It is sound when nothing is at fault. */
export interface Report {
  readonly sound: boolean
  readonly faults: readonly Fault[]
  /** The soft rules' breaches, found from the rings alone; a sound layout may have some, listed. */
  readonly breaches: readonly FloorBreach[]
  /** How much was looked at, so that "sound" over nothing is seen to be over nothing. */
  readonly checked: Checked
}

/** Something that is not as a published layout promises. */
export interface Fault extends Finding {
  /** The floor's name, or '' where the file itself is at fault. */
  readonly floor: string
}

/** A fault before it is known which floor it belongs to: what each check gives. */
export interface Finding {
  /** Stable, kebab-case, plain words. */
  readonly code: string
  /** Whole sentences. Lengths in them are in millimetres. */
  readonly text: string
  readonly course?: number
  readonly piece?: number
  /** u, v in whole nanometres. */
  readonly at?: Vertex
}

export type SoftRule =
  | 'stagger'
  | 'shortest end'
  | 'narrowest rip'
  | 'longest run'
  | 'doorway joint'

/** A soft rule broken: which, where, by how much. Lengths in whole nanometres. */
export interface Breach {
  readonly rule: SoftRule
  readonly value: number
  readonly limit: number
  readonly at: Vertex
  readonly pieces: readonly number[]
  readonly direction: '' | 'along' | 'across'
}

export interface FloorBreach extends Breach {
  readonly floor: string
}

export interface Checked {
  readonly floors: number
  readonly courses: number
  readonly pieces: number
  /** Joints found between the pieces, whether published or not. */
  readonly joints: number
  readonly planks: number
}

export const NOTHING_CHECKED: Checked = { floors: 0, courses: 0, pieces: 0, joints: 0, planks: 0 }
