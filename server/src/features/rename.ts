import type { Span } from '../facts/span.ts'
import { fileName } from '../job/includes.ts'
import { keyOf } from '../language/name.ts'
import type { Measured } from '../report/compiled.ts'
import { at } from './at.ts'
import type { KnownJob } from './known-job.ts'
import { namedAt } from './named-at.ts'
import { taken } from './names-taken.ts'
import { newName, type Renamed } from './new-name.ts'
import { ownName } from './own-name.ts'
import { readOtherwise } from './rename-check.ts'
import { type Gathered, gatherPlaces, type RenamePlace } from './rename-places.ts'
import type { Thing } from './thing.ts'
import type { View } from './view.ts'

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

export interface Refused {
  readonly kind: 'refused'
  /** In whole sentences. */
  readonly why: string
}

/** The name at an offset that may be changed, as it stands. */
export interface NameToChange {
  readonly kind: 'name'
  readonly span: Span
  readonly text: string
}

/** Whether there is a name at an offset that may be changed. */
export function nameToChange(view: View, offset: number): NameToChange | Refused {
  const found = changeable(view, offset)
  return found.kind === 'refused' ? found : { kind: 'name', span: found.span, text: found.text }
}

interface Changeable {
  readonly kind: 'thing'
  readonly thing: Thing
  readonly span: Span
  readonly text: string
}

function changeable(view: View, offset: number): Changeable | Refused {
  const named = namedAt(view, offset)
  const use = at(view.tree, offset).name
  if (named === null || use === null || !isRenamed(named.thing.kind)) {
    return refused('Nothing stands here that has a name to be changed.')
  }
  const { thing, span } = named
  const text = ownName(thing)
  const typed = use.name.text
  if (text === null) {
    return refused(
      `${typed} is no name of its own. Give it one on its line, such as: called long wall.`,
    )
  }
  if (keyOf(text) !== use.name.key) {
    return refused(
      `${typed} is a way and stays. Its own name is ${text}: change it where that stands.`,
    )
  }
  return { kind: 'thing', thing, span, text }
}

const RENAMED: readonly string[] = [
  'room',
  'closet',
  'wall',
  'corner',
  'opening',
  'recess',
  'obstacle',
  'product',
  'floor',
  'prices',
] satisfies readonly Renamed[]

function isRenamed(kind: Thing['kind']): kind is Renamed {
  return RENAMED.includes(kind)
}

/** Everywhere that a rename changes something, to be shown first. */
export function placesToRename(
  asked: RenameAsked,
): { readonly kind: 'places'; readonly places: readonly RenamePlace[] } | Refused {
  const found = changeable(asked.view, asked.offset)
  if (found.kind === 'refused') return found
  const gathered = gatherPlaces(asked.job, found.thing, asked.others)
  const why = inTheWay(gathered, found.text, asked)
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
    inTheWay(gathered, found.text, asked) ?? (isSame ? null : takenIn(gathered, name.text))
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

function refused(why: string): Refused {
  return { kind: 'refused', why }
}

function takenIn({ jobs }: Gathered, name: string): string | null {
  for (const { job, thing } of jobs) {
    const why = thing === null ? null : taken(job.measured, thing, name)
    if (why !== null) return why
  }
  return null
}

/** What keeps all places from being known: a job, a file or a line that could not be read. */
function inTheWay(
  { places, jobs }: Gathered,
  name: string,
  { unread }: RenameAsked,
): string | null {
  const roots = new Set(jobs.map(({ job }) => job.addressOf(job.measured.root)))
  const isShared = places.some(({ address }) => !roots.has(address))
  if (isShared && unread.length > 0) {
    return `${unread.join(', ')} could not be read and may include a file that names ${name}. Nothing was changed.`
  }
  for (const { job } of jobs) {
    const why = unreadInclude(job.measured) ?? unreadLine(job.measured, name)
    if (why !== null) return why
  }
  return movedOn(jobs.map(({ job }) => job))
}

const UNREAD: readonly string[] = [
  'include-not-read',
  'include-refused',
  'include-circle',
  'include-too-deep',
  'include-is-a-job',
]

function unreadInclude({ messages, root }: Measured): string | null {
  const said = messages.find(({ code }) => UNREAD.includes(code))
  if (said === undefined) return null
  return `An include of ${fileName(said.span.file, root)} could not be read, and the name may stand there too. ${said.text} Nothing was changed.`
}

/** A line that cannot be read and holds the name may mean it or not. */
function unreadLine({ trees, root }: Measured, name: string): string | null {
  const key = ` ${keyOf(name)} `
  for (const { lines, text, file } of trees) {
    const line = lines.find(
      ({ broken, head, span }) =>
        broken && head !== null && wordsIn(text.slice(span.start, span.end)).includes(key),
    )
    if (line !== undefined) {
      return `Line ${line.number} of ${fileName(file, root)} cannot be read and may name ${name}. Mend it first. Nothing was changed.`
    }
  }
  return null
}

function wordsIn(line: string): string {
  return ` ${keyOf(line.replace(/[",\u201c\u201d]/g, ' '))} `
}

/** Two jobs that read one file must have read the same text. */
function movedOn(jobs: readonly KnownJob[]): string | null {
  const texts = new Map<string, string>()
  for (const { measured, addressOf } of jobs) {
    for (const { file, text } of measured.trees) {
      const before = texts.get(addressOf(file))
      if (before !== undefined && before !== text) {
        return `${fileName(file, measured.root)} was changed a moment ago and is being read. Ask again.`
      }
      texts.set(addressOf(file), text)
    }
  }
  return null
}
