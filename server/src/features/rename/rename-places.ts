import { keyOf } from '../../language/name.ts'
import type { Tree } from '../../language/tree.ts'
import { jobIndex } from '../names/job-index.ts'
import { meaningOf } from '../names/meaning.ts'
import { type Mention, mentionsOf } from '../names/mentions.ts'
import type { Thing } from '../names/thing.ts'
import { at } from '../place/at.ts'
import { lineAt } from '../place/line-at.ts'
import { writtenName } from '../writing/written-name.ts'
import type { KnownJob } from './known-job.ts'
import { ownName } from './own-name.ts'

/** A place that a rename changes. */
export interface RenamePlace {
  readonly address: string
  readonly start: number
  readonly end: number
  /** From 1. */
  readonly line: number
  /** The whole line as it stands. */
  readonly lineText: string
  /** What stands there once the thing has this name. */
  readonly write: (name: string) => string
}

/** The places of a rename, and the jobs whose names they are. */
export interface Gathered {
  readonly places: readonly RenamePlace[]
  readonly jobs: readonly { readonly job: KnownJob; readonly thing: Thing | null }[]
}

/**
 * Every place where a thing is named, through all jobs that share a file with such a place: what one of
 * them names in a file of its own is found as well, however they hang together.
 */
export function gatherPlaces(first: KnownJob, thing: Thing, others: readonly KnownJob[]): Gathered {
  const places = new Map<string, RenamePlace>()
  const jobs: { job: KnownJob; thing: Thing | null }[] = []
  const waiting: { job: KnownJob; thing: Thing | null }[] = [{ job: first, thing }]
  const unseen = new Set(others)
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    jobs.push(next)
    for (const place of next.thing === null ? [] : placesIn(next.job, next.thing)) {
      places.set(`${place.start} ${place.address}`, place)
    }
    for (const job of unseen) {
      const shared = sharedWith(job, [...places.values()])
      if (shared === null) continue
      unseen.delete(job)
      waiting.push({ job, thing: meantAt(job, shared) })
    }
  }
  return { places: [...places.values()].sort(byPlace), jobs }
}

function byPlace(a: RenamePlace, b: RenamePlace): number {
  return a.address < b.address ? -1 : a.address > b.address ? 1 : a.start - b.start
}

interface Shared {
  readonly tree: Tree
  readonly offset: number
}

function sharedWith(
  { measured, addressOf }: KnownJob,
  places: readonly RenamePlace[],
): Shared | null {
  const trees = new Map(measured.trees.map((tree) => [addressOf(tree.file), tree]))
  const place = places.find(({ address }) => trees.has(address))
  return place === undefined ? null : { tree: trees.get(place.address)!, offset: place.start }
}

function meantAt({ measured }: KnownJob, { tree, offset }: Shared): Thing | null {
  const { name, block } = at(tree, offset)
  return name === null || block === null ? null : meaningOf(measured, block, name)
}

/** The places of one job: where the thing's own name stands, and for a room those of its closets. */
function placesIn(job: KnownJob, thing: Thing): readonly RenamePlace[] {
  const { trees } = job.measured
  const key = keyOf(ownName(thing) ?? '')
  const mentions = mentionsOf(job.measured, trees, thing).filter((mention) => mention.key === key)
  const own = mentions.map((mention) => placeOf(job, mention, ''))
  if (thing.kind === 'room') return [...own, ...closetsOf(job, thing)]
  const isGiven = thing.kind !== 'closet' || mentions.some(({ gives }) => gives)
  return isGiven ? own : [...own, ...closetLine(job, thing)]
}

/** A closet without a name of its own is called by its room. */
function closetsOf(
  job: KnownJob,
  { room }: Extract<Thing, { kind: 'room' }>,
): readonly RenamePlace[] {
  return [...jobIndex(job.measured).closets.values()]
    .filter((closet) => closet.room === room && closet.recess.label === `${room.name.text} closet`)
    .flatMap((closet) => {
      const mentions = mentionsOf(job.measured, job.measured.trees, { kind: 'closet', ...closet })
      if (mentions.some(({ gives }) => gives)) return []
      return mentions.map((mention) => placeOf(job, mention, ' closet'))
    })
}

function placeOf(job: KnownJob, { span, inText }: Mention, after: string): RenamePlace {
  const write = (name: string): string => (inText ? name : writtenName(`${name}${after}`))
  return { ...lineOf(job, span), start: span.start, end: span.end, write }
}

/** A closet that is called by its room gets a name of its own on its line. */
function closetLine(
  job: KnownJob,
  { recess }: Extract<Thing, { kind: 'closet' }>,
): readonly RenamePlace[] {
  const tree = job.measured.trees.find(({ file }) => file === recess.span.file)
  const last = tree === undefined ? undefined : at(tree, recess.span.start).entry?.phrases.at(-1)
  if (last === undefined) return []
  const { end } = last.span
  const write = (name: string): string => `, called ${writtenName(name)}`
  return [{ ...lineOf(job, last.span), start: end, end, write }]
}

function lineOf(
  { measured, addressOf }: KnownJob,
  { file, start }: { readonly file: string; readonly start: number },
): Pick<RenamePlace, 'address' | 'line' | 'lineText'> {
  const tree = measured.trees.find((one) => one.file === file)!
  const { number, span } = lineAt(tree, start)
  return {
    address: addressOf(file),
    line: number,
    lineText: tree.text.slice(span.start, span.end),
  }
}
