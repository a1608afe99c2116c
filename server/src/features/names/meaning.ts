import type { Room, Wall } from '../../job/job.ts'
import { isWay } from '../../job/ways.ts'
import type { Block, Name } from '../../language/tree.ts'
import type { Measured } from '../../report/compiled.ts'
import { type JobIndex, jobIndex } from './job-index.ts'
import type { NameUse } from './name-use.ts'
import type { Thing } from './thing.ts'

/**
 * What a name of a block means in the job, found as the job finds it: of two things with one name the
 * first, a way only while one wall has it. Null for a name that nothing has, or several.
 */
export function meaningOf(measured: Measured, block: Block, use: NameUse): Thing | null {
  const index = jobIndex(measured)
  const { name, kind } = use
  switch (kind) {
    case 'room':
      return roomNamed(index, name)
    case 'closet':
      return closetNamed(index, name)
    case 'product':
    case 'prices':
    case 'floor':
      return blockNamed(index, kind, name)
    case 'trim':
      return { kind, key: name.key }
    case 'code':
      return { kind, code: name.key.replaceAll(' ', '-') }
    case 'free':
      return null
    case 'opening':
      return use.between === null
        ? inRoom(roomOfBlock(index, block), use)
        : doorwayNamed(index, name, use.between)
    default:
      return inRoom(use.of === null ? roomOfBlock(index, block) : index.rooms.get(use.of.key), use)
  }
}

/** The room that a block tells, or undefined for one whose name another room has. */
export function roomOfBlock(index: JobIndex, block: Block): Room | undefined {
  const room = block.word === 'room' ? index.rooms.get(block.name?.key ?? '') : undefined
  const { file, start } = block.line.span
  return room?.span.file === file && room.span.start === start ? room : undefined
}

/** The room, or closet, that a name means. */
export function roomNamed(index: JobIndex, name: Name): Thing | null {
  if (name.key === 'outside' || name.key === 'stair') return { kind: name.key }
  const room = index.rooms.get(name.key)
  const block = index.blocks.get('room')?.get(name.key)
  if (room !== undefined && block !== undefined) return { kind: 'room', block, room }
  return closetNamed(index, name)
}

function closetNamed(index: JobIndex, { key }: Name): Thing | null {
  const closet = index.closets.get(key)
  return closet === undefined ? null : { kind: 'closet', ...closet }
}

/** A product, floor or price book. */
export function blockNamed(
  index: JobIndex,
  kind: 'product' | 'floor' | 'prices',
  { key }: Name,
): Thing | null {
  const block = index.blocks.get(kind)?.get(key)
  if (block === undefined) return null
  if (kind === 'prices') return { kind, block }
  if (kind === 'product') return { kind, block, product: index.products.get(key) ?? null }
  const floor = index.floors.get(key)
  return floor === undefined ? null : { kind, block, floor }
}

function doorwayNamed(
  { rooms }: JobIndex,
  { key }: Name,
  between: readonly [Name, Name],
): Thing | null {
  for (const [from, to] of [between, between.toReversed()]) {
    const room = rooms.get(from!.key)
    const opening = room?.openings.find((one) => one.name?.key === key && one.to?.key === to!.key)
    if (room !== undefined && opening !== undefined) return { kind: 'opening', room, opening }
  }
  return null
}

/** A wall, corner, opening, recess or obstacle of one room. */
function inRoom(room: Room | undefined, { kind, name }: NameUse): Thing | null {
  if (room === undefined) return null
  switch (kind) {
    case 'wall': {
      const wall = wallNamed(room, name.key)
      return wall === null ? null : { kind, room, wall }
    }
    case 'corner':
      return cornerNamed(room, name.key)
    case 'opening': {
      const opening = room.openings.find((one) => one.name?.key === name.key)
      return opening === undefined ? null : { kind, room, opening }
    }
    case 'recess': {
      const recess = room.recesses.find(({ span }) => holds(span, name.span))
      return recess === undefined ? null : { kind, room, recess }
    }
    case 'obstacle': {
      const obstacle = room.obstacles.find(({ span }) => holds(span, name.span))
      return obstacle === undefined ? null : { kind, room, obstacle }
    }
    default:
      return null
  }
}

/** The wall of its own name, else the one wall that faces a way. */
export function wallNamed(room: Room, key: string): Wall | null {
  const own = room.walls.find((wall) => wall.name?.key === key)
  if (own !== undefined) return own
  const facing = isWay(key) ? room.walls.filter((wall) => wayOf(wall) === key) : []
  return facing.length === 1 ? facing[0]! : null
}

/** The corner of its own name, else the one where walls that face two ways meet. */
export function cornerNamed(room: Room, key: string): Extract<Thing, { kind: 'corner' }> | null {
  const own = room.corners.find(({ name }) => name.key === key)
  if (own !== undefined) return { kind: 'corner', room, ...own }
  const [one, other, more] = key.split('-')
  if (other === undefined || more !== undefined) return null
  const found = room.walls.filter(({ index }) => {
    const [before, after] = [wayOf(room.walls.at(index - 1)!), wayOf(room.walls[index]!)]
    return (before === one && after === other) || (before === other && after === one)
  })
  if (found.length !== 1) return null
  const corner = found[0]!.index
  const named = room.corners.find((one) => one.corner === corner)
  return { kind: 'corner', room, corner, name: named?.name ?? null }
}

function wayOf({ heading }: Wall): string | null {
  return heading.kind === 'way' ? heading.way : null
}

function holds(outer: { file: string; start: number; end: number }, inner: typeof outer): boolean {
  return outer.file === inner.file && outer.start <= inner.start && inner.end <= outer.end
}
