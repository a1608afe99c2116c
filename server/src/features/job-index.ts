import type { Floor, Product, Recess, Room } from '../job/job.ts'
import { keyOf } from '../language/name.ts'
import type { Block, Tree } from '../language/tree.ts'
import type { Measured } from '../report/compiled.ts'
import type { SurveyedRoom } from '../survey/survey.ts'

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
  /** The floor that each room or closet is laid in. */
  readonly laidIn: ReadonlyMap<string, Floor>
}

const known = new WeakMap<Measured['job'], JobIndex>()

export function jobIndex(measured: Measured): JobIndex {
  const there = known.get(measured.job)
  if (there !== undefined) return there
  const made = indexed(measured)
  known.set(measured.job, made)
  return made
}

function indexed({ trees, job, survey }: Measured): JobIndex {
  const closets = job.rooms.flatMap((room) =>
    room.recesses
      .filter(({ kind }) => kind === 'closet')
      .map((recess) => [keyOf(recess.label), { room, recess }] as const),
  )
  return {
    fileLines: new Map(trees.map((tree) => [tree.file, fileLines(tree)])),
    blocks: namedBlocks(trees.flatMap(({ blocks }) => blocks)),
    rooms: firstOf(job.rooms.map((room) => [room.name.key, room])),
    closets: firstOf(closets),
    products: firstOf(job.products.map((product) => [product.name.key, product])),
    floors: firstOf(job.floors.map((floor) => [floor.name.key, floor])),
    surveyed: firstOf(survey.rooms.map((room) => [room.room.name.key, room])),
    laidIn: firstOf(job.floors.flatMap((floor) => floor.rooms.map(({ key }) => [key, floor]))),
  }
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
