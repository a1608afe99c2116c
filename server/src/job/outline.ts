import type { Block, Entry, Name } from '../language/tree.ts'
import type { Binding } from './binding.ts'
import type { Wall } from './job.ts'
import { byNameOnce } from './names.ts'
import { type Order, orderOf } from './order.ts'
import { nameOf } from './phrases.ts'
import { said } from './sentence.ts'
import { wallOf } from './walls.ts'
import { isWallWord } from './ways.ts'
import type { Tape } from './worth.ts'

/** A room's walls and the names that its other lines may use: the first half of reading a room. */
export interface Outline {
  readonly name: Name
  readonly block: Block
  readonly tape: Tape
  readonly walls: readonly Wall[]
  /** The line of each wall, in the same order. */
  readonly lines: readonly Entry[]
  /** Which wall a line is. */
  readonly indexOf: ReadonlyMap<Entry, number>
  /** The walls that begin with a word: those that face one way, or the slants. */
  readonly byWord: ReadonlyMap<string, readonly Wall[]>
  readonly byName: ReadonlyMap<string, Wall>
  /** A line of it could not be read: it may be the wall or corner that another line names. */
  readonly hasBrokenLine: boolean
  readonly corners: readonly NamedCorner[]
  readonly order: Order
}

/** What is still to be said or mended of its walls may settle what a name means. */
export function isUnsettled({ hasBrokenLine, order }: Outline): boolean {
  return hasBrokenLine || order !== 'comes round'
}

export interface NamedCorner {
  readonly name: Name
  /** Corner i is where wall i begins. */
  readonly corner: number
}

/** Reads the walls of a room block and the names of its walls and corners. */
export function outlineOf(block: Block, name: Name, tape: Tape, binding: Binding): Outline {
  const lines = block.under.filter((entry) => isWallWord(entry.word))
  const walls = lines.map((line, index) => wallOf(line, index, tape, binding))
  const corners = cornersNamed(block, lines.length)
  byNameOnce('corner', corners, binding)
  const order = orderOf({ room: said(name.text), block, lines, walls }, binding)
  return {
    name,
    block,
    tape,
    walls,
    lines,
    indexOf: new Map(lines.map((line, index) => [line, index])),
    byWord: Map.groupBy(walls, ({ index }) => lines[index]!.word),
    byName: byNameOnce('wall', walls, binding),
    hasBrokenLine: block.under.some((entry) => entry.broken),
    corners,
    order,
  }
}

/** A `corner` line stands between the two walls that it names the corner of. */
function cornersNamed(block: Block, walls: number): readonly NamedCorner[] {
  const corners: NamedCorner[] = []
  let before = 0
  for (const line of block.under) {
    if (isWallWord(line.word)) before++
    const name = line.word === 'corner' ? nameOf(line, 'NAME') : null
    if (name !== null && walls > 0) corners.push({ name, corner: before % walls })
  }
  return corners
}
