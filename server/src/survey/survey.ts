import type { Message } from '../facts/message.ts'
import type { Span } from '../facts/span.ts'
import type { Point, Ring } from '../geometry/point.ts'
import type { Check, Opening, Room } from '../job/job.ts'
import type { Nm } from '../units/length.ts'

/** What the readings say: each room's shape and how well it closes, and how the rooms lie together. */
export interface Survey {
  readonly rooms: readonly SurveyedRoom[]
  readonly doorways: readonly Doorway[]
  readonly loops: readonly Loop[]
  readonly messages: readonly Message[]
}

export interface SurveyedRoom {
  readonly room: Room
  /**
   * - `measured`: closed and placed; all below is there.
   * - `unfinished`: a reading is still to be taken; no outline.
   * - `broken`: a line or the shape cannot be used; no outline.
   * - `not measured`: a name only (the room beyond a door).
   */
  readonly status: 'measured' | 'unfinished' | 'broken' | 'not measured'
  /** Corner i begins wall i; clockwise as the walls are read. Plan axes, placed, whole nm. Empty unless measured. */
  readonly corners: Ring
  /** The room's floor with curves and alcoves, counter-clockwise. Empty unless measured. */
  readonly outline: Ring
  /** For each edge of `outline` (edge i from point i to i + 1): what it is part of. */
  readonly edges: readonly OutlineEdge[]
  readonly closing: Closing | null
  readonly checks: readonly CheckResult[]
  /** Closets behind their openings: rooms of their own, already placed. */
  readonly closets: readonly SurveyedCloset[]
  /** Obstacles and hearths as rings, counter-clockwise. */
  readonly obstacles: readonly SurveyedObstacle[]
  /** Rooms tied together by doorways share a number; a room that nothing ties stands alone. */
  readonly network: number
}

export interface OutlineEdge {
  readonly wall: number
  /** The recess whose side it is (index in room.recesses), or null for the wall itself. */
  readonly recess: number | null
}

export interface SurveyedCloset {
  readonly recess: number
  /** "bedroom 1 closet" unless called otherwise. */
  readonly name: string
  readonly outline: Ring
  /** The floor within the wall's thickness at its opening, counter-clockwise. */
  readonly throat: Ring
}

export interface SurveyedObstacle {
  readonly kind: 'column' | 'island' | 'stairwell' | 'vent' | 'hearth'
  readonly label: string
  readonly ring: Ring
  readonly gap: Nm | null
  readonly span: Span
}

/** The traverse of one room before anything is spread. */
export interface Closing {
  /** Sum of the departures and of the latitudes, as walked: the misclosure itself. */
  readonly east: Nm
  readonly north: Nm
  readonly length: Nm
  readonly perimeter: Nm
  /** 1 : n, to the nearest; null when it closes exactly. */
  readonly ratio: number | null
  readonly allowedEast: Nm
  readonly allowedNorth: Nm
  readonly within: boolean
  /**
   * How it was spread: by the transit rule in a room of right angles, by the compass rule where walls
   * stand at an angle (those with a way keep it); or that the shape was solved from distances.
   */
  readonly rule: 'transit' | 'compass' | 'distances'
}

export interface CheckResult {
  readonly check: Check
  /** What the shape makes it; reading minus shape is `difference`. */
  readonly computed: Nm
  readonly difference: Nm
  readonly allowed: Nm
  /** Used to fix the shape of an out-of-square room: no check of anything. */
  readonly fixes: boolean
}

/** An opening with its place in the plan: the floor within the wall's thickness. */
export interface Doorway {
  readonly kind: Opening['kind']
  /** Name of the opening, else "hall to bath". */
  readonly label: string
  readonly room: string
  /** Key of the room beyond; null where it leads outside or is not named. */
  readonly to: string | null
  readonly toText: string
  readonly opening: Opening
  /** The same doorway as read from the room beyond. */
  readonly other: Opening | null
  readonly width: Nm
  readonly thickness: Nm
  /** The face in `room`: its ends as seen from `room`, left and right. */
  readonly near: readonly [Point, Point]
  /** The face in the room beyond (left and right still as seen from `room`). */
  readonly far: readonly [Point, Point]
  readonly jambs: boolean
  /** Whether the room beyond is placed and has its wall there: else the floor in it is not that room's. */
  readonly reaches: boolean
}

/** A loop of rooms that comes round: the vector between the two middles of its last doorway. */
export interface Loop {
  readonly doorway: string
  readonly rooms: readonly string[]
  readonly east: Nm
  readonly north: Nm
  readonly allowedEast: Nm
  readonly allowedNorth: Nm
  readonly within: boolean
  readonly span: Span
}
