import { keyOf } from '../language/name.ts'
import type { KnownJob } from './rename/known-job.ts'
import { changeable, type Refused, refused } from './rename/name-to-change.ts'
import { taken } from './rename/names-taken.ts'
import { newName, type Renamed } from './rename/new-name.ts'
import { readOtherwise } from './rename/rename-check.ts'
import { inTheWay } from './rename/rename-hindrance.ts'
import { type Gathered, gatherPlaces, type RenamePlace } from './rename/rename-places.ts'
import type { View } from './view.ts'

export { nameToChange } from './rename/name-to-change.ts'

/** A rename that is asked for at a place of one job. */
export interface RenameAsked {
  readonly view: View
  readonly offset: number
  readonly job: KnownJob
  /** All other jobs that are known. */
  readonly others: readonly KnownJob[]
  /** Jobs that may include the same files and could not be read, by name. */
  readonly unread: readonly string[]
}

/** Everywhere that a rename changes something, to be shown first. */
export function placesToRename(
  asked: RenameAsked,
): { readonly kind: 'places'; readonly places: readonly RenamePlace[] } | Refused {
  const found = changeable(asked.view, asked.offset)
  if (found.kind === 'refused') return found
  const gathered = gatherPlaces(asked.job, found.thing, asked.others)
  const why = inTheWay(gathered, found.text, asked.unread)
  return why === null ? { kind: 'places', places: gathered.places } : refused(why)
}

export interface RenameEdit {
  readonly address: string
  readonly start: number
  readonly end: number
  readonly text: string
}

/**
 * Gives the thing at an offset another name in all jobs that name it, or in none: with a sentence where
 * the name cannot be one, is another's, or a file that may hold it could not be read.
 */
export function rename(
  asked: RenameAsked,
  typed: string,
): { readonly kind: 'edits'; readonly edits: readonly RenameEdit[] } | Refused {
  const found = changeable(asked.view, asked.offset)
  if (found.kind === 'refused') return found
  const name = newName(found.thing.kind as Renamed, typed)
  if (name.kind === 'refused') return name
  const gathered = gatherPlaces(asked.job, found.thing, asked.others)
  const isSame = name.key === keyOf(found.text)
  const why =
    inTheWay(gathered, found.text, asked.unread) ?? (isSame ? null : takenIn(gathered, name.text))
  if (why !== null) return refused(why)
  const edits = gathered.places.map(({ address, start, end, write }) => ({
    address,
    start,
    end,
    text: write(name.text),
  }))
  const otherwise = readOtherwise(gathered, edits)
  return otherwise === null ? { kind: 'edits', edits } : refused(otherwise)
}

function takenIn({ jobs }: Gathered, name: string): string | null {
  for (const { job, thing } of jobs) {
    const why = thing === null ? null : taken(job.measured, thing, name)
    if (why !== null) return why
  }
  return null
}
