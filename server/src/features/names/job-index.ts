import type { Span } from '../../facts/span.ts'
import type { Floor, Product, Recess, Room } from '../../job/job.ts'
import { keyOf } from '../../language/name.ts'
import type { Block, Tree } from '../../language/tree.ts'
import type { Measured } from '../../report/compiled.ts'
import type { Doorway, SurveyedRoom } from '../../survey/survey.ts'

/** A closet is a room to take or to drop, and stands on a line of the room that it opens from. */
export interface ClosetOf {
  readonly room: Room
  readonly recess: Recess
}

/** A job looked through once by the keys of its names, however many questions are asked of it. */
export interface JobIndex {
  /** Lines in column one that speak for their whole file (`tape`), by file and then by word; the first. */
  readonly fileLines: ReadonlyMap<string, ReadonlyMap<string, Block>>
  /** Blocks that have a name, by their word and then by key; of two with one name the first. */
  readonly blocks: ReadonlyMap<string, ReadonlyMap<string, Block>>
  readonly rooms: ReadonlyMap<string, Room>
  readonly closets: ReadonlyMap<string, ClosetOf>
  /** Products that are told whole. */
  readonly products: ReadonlyMap<string, Product>
  readonly floors: ReadonlyMap<string, Floor>
  readonly surveyed: ReadonlyMap<string, SurveyedRoom>
  /** Doorways by the lines that tell them, from either side: see `lineKey`. */
  readonly doorways: ReadonlyMap<string, Doorway>
  /** The floor that each room or closet is laid in. */
  readonly laidIn: ReadonlyMap<string, Floor>
}

const known = new WeakMap<Measured, JobIndex>()

export function jobIndex(measured: Measured): JobIndex {
  const there = known.get(measured)
  if (there !== undefined) return there
  const made = indexed(measured)
  known.set(measured, made)
  return made
}

/** Each part is made when it is first asked for: most questions need two or three of them. */
function indexed({ trees, job, survey }: Measured): JobIndex {
  const parts = new Map<string, unknown>()
  const once = <T>(part: string, make: () => T): T => {
    if (!parts.has(part)) parts.set(part, make())
    return parts.get(part) as T
  }
  return {
    get fileLines() {
      return once('fileLines', () => new Map(trees.map((tree) => [tree.file, fileLines(tree)])))
    },
    get blocks() {
      return once('blocks', () => namedBlocks(trees.flatMap(({ blocks }) => blocks)))
    },
    get rooms() {
      return once('rooms', () => firstOf(job.rooms.map((room) => [room.name.key, room])))
    },
    get closets() {
      return once('closets', () => firstOf(job.rooms.flatMap(closetsOf)))
    },
    get products() {
      return once('products', () => firstOf(job.products.map((one) => [one.name.key, one])))
    },
    get floors() {
      return once('floors', () => firstOf(job.floors.map((floor) => [floor.name.key, floor])))
    },
    get surveyed() {
      return once('surveyed', () => firstOf(survey.rooms.map((one) => [one.room.name.key, one])))
    },
    get doorways() {
      return once('doorways', () => firstOf(survey.doorways.flatMap(linesOf)))
    },
    get laidIn() {
      const laid = (floor: Floor) => floor.rooms.map(({ key }) => [key, floor] as const)
      return once('laidIn', () => firstOf(job.floors.flatMap(laid)))
    },
  }
}

function closetsOf(room: Room): readonly (readonly [string, ClosetOf])[] {
  return room.recesses
    .filter(({ kind }) => kind === 'closet')
    .map((recess) => [keyOf(recess.label), { room, recess }])
}

function linesOf(doorway: Doorway): readonly (readonly [string, Doorway])[] {
  return [doorway.opening, doorway.other].flatMap((opening) =>
    opening === null ? [] : [[lineKey(opening.span), doorway] as const],
  )
}

/** A place as a key. */
export function lineKey({ file, start }: Span): string {
  return `${start} ${file}`
}

function fileLines({ blocks }: Tree): ReadonlyMap<string, Block> {
  const lines = blocks.filter(({ name, broken }) => name === null && !broken)
  return firstOf(lines.map((block) => [block.word, block]))
}

function namedBlocks(blocks: readonly Block[]): JobIndex['blocks'] {
  const named = blocks.flatMap((block) =>
    block.name === null ? [] : [[block, block.name] as const],
  )
  const byWord = Map.groupBy(named, ([{ word }]) => word)
  return new Map(
    [...byWord].map(([word, list]) => [
      word,
      firstOf(list.map(([block, { key }]) => [key, block])),
    ]),
  )
}

/** In written order; of two with one key the first. */
function firstOf<T>(entries: readonly (readonly [string, T])[]): ReadonlyMap<string, T> {
  const first = new Map<string, T>()
  for (const [key, thing] of entries) if (!first.has(key)) first.set(key, thing)
  return first
}
