import { workspace } from 'vscode'

/** What a person may set; each is explained in the editor's list of settings. */
export interface Settings {
  readonly hints: boolean
  readonly lenses: boolean
  readonly pauseBeforeCountsMs: number
  /** The drawing lights up what the cursor is on. */
  readonly followCursor: boolean
}

export const SECTION = 'floorscribe'

/** The settings as they are now; a value of the wrong kind, typed by hand, counts as not set. */
export function settings(): Settings {
  const section = workspace.getConfiguration(SECTION)
  const pause = section.get<unknown>('pauseBeforeCounts')
  return {
    hints: section.get<unknown>('hints') !== false,
    lenses: section.get<unknown>('lenses') !== false,
    pauseBeforeCountsMs:
      typeof pause === 'number' && pause >= 0 && pause <= MOST_PAUSE_MS ? pause : USUAL_PAUSE_MS,
    followCursor: section.get<unknown>('preview.followCursor') !== false,
  }
}

const USUAL_PAUSE_MS = 250
const MOST_PAUSE_MS = 5_000
