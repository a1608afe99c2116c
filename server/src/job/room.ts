import type { Entry, Name } from '../language/tree.ts'
import type { Binding } from './binding.ts'
import { checksOf } from './checks.ts'
import { sayWhatDoesNotFit } from './fits.ts'
import { sayHowRead } from './how-read.ts'
import type { BaseSaid, Room } from './job.ts'
import { allLines, notesIn } from './lines.ts'
import { byNameOnce } from './names.ts'
import { obstaclesOf } from './obstacles.ts'
import { type Beyond, openingsOf, sayWhatOpeningLacks } from './openings.ts'
import type { Outline } from './outline.ts'
import { partsOf } from './parts.ts'
import { recessesOf, sayWhatRecessLacks } from './recesses.ts'
import { sayWhatToRead } from './to-read.ts'

/** What a room's lines take from the rest of the job. */
export interface Around extends Beyond {
  /** The walls of another room. */
  readonly outline: (name: Name) => Outline | null
  /** The base line in force for this room. */
  readonly base: BaseSaid | null
}

/** The second half of reading a room: everything but its walls, which other rooms may refer to. */
export function roomOf(outline: Outline, around: Around, binding: Binding): Room {
  const { block, walls, order } = outline
  const parts = partsOf(outline)
  const openings = openingsOf(outline, around, parts, binding)
  const recesses = recessesOf(outline, around, parts, binding)
  const room: Room = {
    name: outline.name,
    walls,
    corners: outline.corners,
    openings,
    recesses,
    obstacles: obstaclesOf(outline, binding),
    checks: checksOf(outline, around.outline, binding),
    outOfSquare: block.under.some((entry) => entry.word === 'out of square'),
    subfloor: listOf(block.under, 'subfloor'),
    existing: listOf(block.under, 'existing'),
    base: around.base,
    notes: notesIn(block.under),
    span: block.line.span,
    broken: order === 'wrong' || block.broken || allLines(block.under).some(binding.isWrong),
    unfinished: isUnfinished(outline),
  }
  byNameOnce(
    'doorway',
    openings.filter(({ kind }) => kind !== 'open side'),
    binding,
  )
  for (const opening of openings) sayWhatOpeningLacks(opening, binding)
  for (const recess of recesses) sayWhatRecessLacks(recess, binding)
  sayWhatDoesNotFit(walls, [...openings, ...recesses], binding)
  sayWhatToRead(room, binding)
  if (walls.length > 0) {
    const { tape } = outline
    sayHowRead({ block, room: room.name.text, tape, base: around.base }, binding)
  }
  return room
}

/** A room without walls is not measured, which is no promise of more. */
function isUnfinished({ walls, order, block }: Outline): boolean {
  if (walls.length === 0) return false
  const asked = walls.some((wall) => wall.reading.nm === null && !wall.broken)
  return order === 'unfinished' || asked || allLines(block.under).some((line) => line.broken)
}

function listOf(lines: readonly Entry[], word: string): readonly string[] {
  return lines
    .filter((line) => line.word === word)
    .flatMap((line) => line.phrases.flatMap((said) => said.names.map((name) => name.text)))
}
