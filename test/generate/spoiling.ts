import type { Draw } from './draw.ts'
import type { Worded } from './floor-text.ts'
import type { Room } from './house.ts'
import { named } from './names.ts'
import type { Spoiled } from './room-text.ts'

/** What is put into a job so that it cannot come out clean. */
export type Spoil =
  | { readonly kind: 'in a room'; readonly room: Room; readonly how: NonNullable<Spoiled> }
  | { readonly kind: 'a room not measured' | 'a hold that is open' | 'a product nobody tells' }

/** Now and then something that no job may come out clean with; it is told. */
export function spoil(rooms: readonly Worded[], draw: Draw): Spoil | null {
  const { dice } = draw
  if (!dice.chance(7)) return null
  const found = spoilIn(rooms, draw)
  draw.spoils(found.kind === 'in a room' ? found.how.kind : found.kind)
  return found
}

function spoilIn(rooms: readonly Worded[], { dice }: Draw): Spoil {
  const kind = dice.pick([
    'a slip of a foot',
    'a wall still to read',
    'an opening past its wall',
    'a room not measured',
    'a hold that is open',
    'a product nobody tells',
  ] as const)
  if (!isInARoom(kind)) return { kind }
  // Out of square, walls and diagonals that just hold the shape hold no check: no slip can be seen.
  const { room } = dice.pick(rooms)
  if (room.isOutOfSquare && kind === 'a slip of a foot') return { kind: 'a hold that is open' }
  return { kind: 'in a room', room, how: { kind, wall: dice.below(room.corners.length) } }
}

const IN_A_ROOM = ['a slip of a foot', 'a wall still to read', 'an opening past its wall'] as const

function isInARoom(kind: string): kind is (typeof IN_A_ROOM)[number] {
  return (IN_A_ROOM as readonly string[]).includes(kind)
}

/** The text of a floor with what spoils it put in. */
export function spoiledFloor(text: string, { kind }: Spoil, draw: Draw): string {
  switch (kind) {
    case 'a room not measured':
      return text.replace(/^ {2}rooms +/m, (word) => `${word}attic, `)
    case 'a hold that is open':
      return `${text}  hold        ${named('a slab reading', draw)}\n`
    case 'a product nobody tells':
      return text.replace(/^( {2}lay +)("[^"]*"|[^,\n]*)/m, '$1nothing known')
    case 'in a room':
      return text
  }
}
