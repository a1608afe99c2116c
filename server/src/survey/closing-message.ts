import { type Message, message } from '../facts/message.ts'
import type { Room } from '../job/job.ts'
import type { UnitStyle } from '../units/length.ts'
import { isSurelyMisread } from './closing.ts'
import { wayAlong } from './direction.ts'
import { cornerWords, countWords, lengthWords, listWords, wallWords } from './labels.ts'
import { settlingDiagonal } from './settling.ts'
import { type Slip, traverseSlips } from './slip.ts'
import type { Closing } from './survey.ts'
import { lengthOf } from './vector.ts'
import type { ReadWall } from './walls.ts'

/** More suspects than these are only counted. */
const MOST_NAMED = 6

/**
 * What to say of a room that misses closing by more than its readings allow: by how much and where to,
 * and which reading is likely wrong and why. A warning while the miss is modest, then an error.
 */
export function closingMessage(
  room: Room,
  {
    walls,
    closing,
    style,
  }: { readonly walls: readonly ReadWall[]; readonly closing: Closing; readonly style: UnitStyle },
): Message {
  const slips = traverseSlips(room, walls, style)
  const only = slips.length === 1 ? room.walls[slips[0]!.of.index]! : null
  const text = `${missText(room, closing, style)} ${slipText(room, { walls, slips, style })}`
  return message(
    isSurelyMisread(closing) ? 'error' : 'warning',
    'closing-error',
    only?.reading.span ?? room.name.span,
    text,
    {
      related:
        slips.length < 2
          ? []
          : slips.slice(0, MOST_NAMED).map((slip) => suspect(room, slip, style)),
    },
  )
}

function missText(room: Room, closing: Closing, style: UnitStyle): string {
  const miss = { x: closing.east, y: closing.north }
  const mostlyEast =
    Math.abs(miss.x) * closing.allowedNorth > Math.abs(miss.y) * closing.allowedEast
  const allowed = mostlyEast ? closing.allowedEast : closing.allowedNorth
  return (
    `${room.name.text} misses closing by ${lengthWords(lengthOf(miss), style)} to the ${wayAlong(miss)}; ` +
    `this tape allows ${lengthWords(allowed, style)}.`
  )
}

interface Suspects {
  readonly walls: readonly ReadWall[]
  readonly slips: readonly Slip[]
  readonly style: UnitStyle
}

function slipText(room: Room, { walls, slips, style }: Suspects): string {
  const [first, second] = slips
  if (!first) {
    return 'No single slip of a usual size explains it: two readings may be off, or a wall may be missing. Take them again.'
  }
  if (!second) {
    const name = wallWords(room, first.of.index)
    const likely = lengthWords(first.likely, style)
    return `${name} is the likely slip, ${first.amount.words}: ${likely} closes ${leftWords(first, style)}${checksWords(room, first)}.`
  }
  const names = slips.slice(0, MOST_NAMED).map((slip) => wallWords(room, slip.of.index))
  const more = slips.length > MOST_NAMED ? [`${slips.length - MOST_NAMED} more`] : []
  const amounts = new Set(slips.map((slip) => slip.amount.words))
  const amount = amounts.size === 1 ? ` of ${first.amount.words}` : ''
  return `A slip${amount} in any one of ${countWords(slips.length)} walls explains it: ${listWords([...names, ...more], 'or')}. ${settlingText(room, { walls, slips, style })}`
}

function settlingText(room: Room, { walls, slips }: Suspects): string {
  const diagonal = settlingDiagonal(walls, slips, 4 * walls[0]!.sigma)
  if (diagonal === null) return 'Take them again.'
  const [from, to] = [diagonal.from, diagonal.to].map((corner) => cornerWords(room, corner))
  const result = diagonal.all ? 'settle it' : 'narrow it down'
  return `A diagonal from ${from} to ${to} would ${result}.`
}

function leftWords(slip: Slip, style: UnitStyle): string {
  return slip.left < 1 ? 'exactly' : `within ${lengthWords(slip.left, style)}`
}

function checksWords(room: Room, { checks }: Slip): string {
  if (checks === 0) return ''
  const kind = room.checks.every((check) => check.kind === 'diagonal') ? 'diagonal' : 'check'
  if (checks === 1) return ` and the ${kind} then agrees`
  return ` and ${checks === 2 ? 'both' : `all ${countWords(checks)}`} ${kind}s then agree`
}

function suspect(room: Room, slip: Slip, style: UnitStyle) {
  const wall = room.walls[slip.of.index]!
  return {
    span: wall.reading.span,
    text: `${lengthWords(slip.likely, style)} here would close it ${leftWords(slip, style)}.`,
  }
}
