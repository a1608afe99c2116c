import type { Span } from '../../facts/span.ts'
import type { Room } from '../../job/job.ts'
import type { Block, Entry } from '../../language/tree.ts'
import type { Measured } from '../../report/compiled.ts'
import { type JobIndex, jobIndex } from '../names/job-index.ts'
import { blockNamed, roomOfBlock } from '../names/meaning.ts'
import type { Thing } from '../names/thing.ts'
import { lastBefore } from './line-at.ts'

/** What a line of a block tells: a room, one of its walls, a product. Null for lines that tell of others. */
export function thingOn(measured: Measured, block: Block, entry: Entry): Thing | null {
  const index = jobIndex(measured)
  if (entry === block) return thingOfBlock(index, block)
  const room = roomOfBlock(index, block)
  return room === undefined ? null : thingOfRoom(room, entry.line.span)
}

/** What a block tells; null for one whose name another block has. */
function thingOfBlock(index: JobIndex, block: Block): Thing | null {
  const { word, name } = block
  if (word === 'room') {
    const room = roomOfBlock(index, block)
    return room === undefined ? null : { kind: 'room', block, room }
  }
  if (name === null || (word !== 'product' && word !== 'floor' && word !== 'prices')) return null
  const thing = blockNamed(index, word, name)
  return thing !== null && 'block' in thing && thing.block === block ? thing : null
}

function thingOfRoom(room: Room, line: Span): Thing | null {
  const wall = onLine(room.walls, line)
  if (wall !== undefined) return { kind: 'wall', room, wall }
  const opening = room.openings.find(({ span }) => isSame(span, line))
  if (opening !== undefined) return { kind: 'opening', room, opening }
  const recess = room.recesses.find(({ span }) => isSame(span, line))
  if (recess?.kind === 'closet') return { kind: 'closet', room, recess }
  if (recess !== undefined) return { kind: 'recess', room, recess }
  const obstacle = onLine(room.obstacles, line)
  if (obstacle !== undefined) return { kind: 'obstacle', room, obstacle }
  const check = onLine(room.checks, line)
  if (check !== undefined) return { kind: 'check', room, check }
  const named = room.corners.find(
    ({ name }) => line.start <= name.span.start && name.span.end <= line.end,
  )
  return named === undefined ? null : { kind: 'corner', room, ...named }
}

/** The thing on a line, among those that stand in the order of the text. */
function onLine<T extends { readonly span: Span }>(
  things: readonly T[],
  line: Span,
): T | undefined {
  const found = things[lastBefore(things, line.start, ({ span }) => span.start)]
  return found !== undefined && isSame(found.span, line) ? found : undefined
}

function isSame(a: Span, b: Span): boolean {
  return a.start === b.start && a.file === b.file
}
