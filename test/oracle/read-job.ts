import type { Base, Job, Tape } from './job.ts'
import { INCH, unitOf } from './lengths.ts'
import { type Block, blocksOf } from './lines.ts'
import { type Bare, countOf, firstOf, lengthSaid, percentOf } from './phrases.ts'
import { ratio } from './ratio.ts'
import { readFloor } from './read-floor.ts'
import { readProduct } from './read-product.ts'
import { readBase, readRoom, readTape } from './read-room.ts'

type Files = ReadonlyMap<string, string>
type Placed = readonly [Block, Bare]

/** A job from its texts, each file by its path; `root` is the one with the job line. */
export function readJob(files: Files, root: string): Job {
  const blocks = includedBlocks(files, root, new Set())
  const of = (word: string) => blocks.filter(([{ head }]) => head.word === word)
  const tape = of('tape').reduce((was, [{ head }, bare]) => readTape(head, bare, was), UNSAID)
  const base = of('base').reduce((was, [{ head }, bare]) => readBase(head, bare, was), NO_BASE)
  const lengths = (word: string, what: string) =>
    firstOf(of(word), ([{ head }, bare]) => lengthSaid(head.phrases, what, bare))
  const pile = of('pile').flatMap(([{ head }]) => head.phrases)
  return {
    tape,
    base,
    thick: lengths('walls', 'thick'),
    jambs: lengths('jambs', 'under') ?? INCH / 2n,
    allowance:
      firstOf(of('allowance'), ([{ head }]) => firstOf(head.phrases, percentOf)) ?? ratio(1n, 10n),
    pile: {
      pieces: countOf(pile, /^pieces?$/i) ?? 8n,
      courses: countOf(pile, /^courses?$/i) ?? 6n,
    },
    rooms: of('room').map(([block, bare]) => readRoom(block, bare, tape, base)),
    products: of('product').map(([block, bare]) => readProduct(block, bare)),
    floors: of('floor').map(([block, bare]) => readFloor(block, bare)),
  }
}

const UNSAID: Tape = { plus: null, more: 0n, per: INCH, about: null, touching: null }
const NO_BASE: Base = { thick: null, fate: null }

/** Each block with what a bare number counts in its file; an included file is read once. */
function includedBlocks(files: Files, path: string, seen: Set<string>): readonly Placed[] {
  const text = files.get(path)
  if (text === undefined || seen.has(path)) return []
  seen.add(path)
  const blocks = blocksOf(path, text)
  const folder = path.slice(0, path.lastIndexOf('/') + 1)
  const included = blocks
    .filter(({ head }) => head.word === 'include')
    .flatMap(({ head }) => includedBlocks(files, folder + head.rest, seen))
  const bare = bareOf(blocks)
  return [...blocks.map((block): Placed => [block, bare]), ...included]
}

function bareOf(blocks: readonly Block[]): Bare {
  const units = blocks.find(({ head }) => head.word === 'units')?.head.phrases ?? []
  const said = firstOf(units, (phrase) => /^bare (.*)$/i.exec(phrase)?.[1] ?? null)
  if (said === null) return null
  return said.toLowerCase() === 'inches' ? INCH : unitOf(said.toLowerCase())
}
