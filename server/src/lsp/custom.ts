import type { Location, Position, TextEdit } from 'vscode-languageserver-protocol'
import type { PreviewChange } from '../features/preview-change.ts'

/**
 * What the extension and the server say to each other beyond the protocol. Both import this file; a
 * client that knows none of it still gets everything that the protocol has.
 */

/** What the extension tells of itself in `initializationOptions`; all of it may be left out. */
export interface Introduction {
  /** It answers `floorscribe/readFile`. */
  readonly readsFiles?: boolean
  /** It answers `floorscribe/findFiles`. */
  readonly findsFiles?: boolean
  /** It wants `floorscribe/status`. */
  readonly showsStatus?: boolean
  /** It has the commands that are named here. */
  readonly runsCommands?: boolean
  /** Where the reference page is; a code's heading is looked for behind its '#'. */
  readonly reference?: string
  /** From the last key to the count, in milliseconds. */
  readonly pauseMs?: number
  /** Files that are read and never counted: each was open when the server died of itself twice. */
  readonly onlyRead?: readonly string[]
}

/** Request to the server: from now on send `floorscribe/preview` for the job of this file, or none. */
export const FOLLOW_PREVIEW = 'floorscribe/followPreview'
export interface FollowPreview {
  readonly uri: string | null
}

/** Notification to the client. The first one after a request to follow draws the whole job. */
export const PREVIEW = 'floorscribe/preview'
export interface PreviewSent {
  /** The file that was asked for, not its root. */
  readonly uri: string
  readonly change: PreviewChange
}

/** Request to the server: the shapes of the preview that the text at a place stands for. */
export const SHAPES_AT = 'floorscribe/shapesAt'
export interface ShapesAt {
  readonly uri: string
  readonly position: Position
}
export interface Shapes {
  readonly ids: readonly string[]
}

/** Request to the server: the text that a shape stands for, or null. */
export const PLACE_OF = 'floorscribe/placeOf'
export interface PlaceOf {
  /** The file that the preview follows. */
  readonly uri: string
  readonly id: string
}
export type Place = Location | null

/** Notification to the client, for each open file whenever it changes. */
export const STATUS = 'floorscribe/status'
export interface StatusSent {
  readonly uri: string
  readonly state: 'counting' | 'counted' | 'open' | 'errors'
  readonly text: string
  readonly tooltip: string
}

/** Request to the client: a file's bytes in base64, or one sentence why not. */
export const READ_FILE = 'floorscribe/readFile'
export interface ReadFile {
  readonly uri: string
  /** In bytes. */
  readonly limit: number
}
export type FileSent = { readonly text: string } | { readonly refused: string }

/** Request to the client: the `.floor` files of the folders that are open, at most `limit`. */
export const FIND_FILES = 'floorscribe/findFiles'
export interface FindFiles {
  readonly limit: number
}
export interface FilesFound {
  readonly uris: readonly string[]
}

/** Request to the server: the plan of the job as a drawing for paper, or null while there is none. */
export const DRAWING = 'floorscribe/drawing'
export interface DrawingOf {
  readonly uri: string
}
export interface Drawing {
  readonly svg: string | null
}

/** Request to the server: what pasting a meter's list of readings at a place changes, or null. */
export const READINGS = 'floorscribe/readings'
export interface Readings {
  readonly uri: string
  readonly position: Position
  readonly text: string
}
export type ReadingsPasted =
  /** `said` tells in one sentence what was filled in. */
  | { readonly edits: readonly TextEdit[]; readonly said: string }
  /** A list that does not fit: nothing is pasted, and why. */
  | { readonly refused: string }
  | null

/** Request to the server: everywhere that a rename at a place would touch, to be shown first. */
export const RENAME_PLACES = 'floorscribe/renamePlaces'
export interface RenamePlaces {
  readonly uri: string
  readonly position: Position
}
export interface PlacesToRename {
  readonly places: readonly {
    readonly location: Location
    /** The whole line, as it stands. */
    readonly line: string
  }[]
  /** Where nothing may be renamed: why, in whole sentences. */
  readonly refused?: string
}

/** Command of the client: shows the plan of the job of a file, given as [uri]. */
export const SHOW_PLAN = 'floorscribe.showPlan' as const
/** Command of the client: goes to a place, given as [Location]. */
export const GO_TO = 'floorscribe.goTo' as const
