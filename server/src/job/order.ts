import { type Fix, type Message, message } from '../facts/message.ts'
import { cover, type Span } from '../facts/span.ts'
import type { Block, Entry } from '../language/tree.ts'
import { compare, type Ratio, ratio, sum } from '../units/ratio.ts'
import type { Binding } from './binding.ts'
import type { Wall } from './job.ts'
import { turnsOf } from './turning.ts'

/**
 * Whether the walls come round once, turning to the right. `unfinished` while more walls could still
 * make them do so, `wrong` when none could.
 */
export type Order = 'comes round' | 'unfinished' | 'wrong'

export interface Listed {
  /** The room's name as a sentence says it. */
  readonly room: string
  readonly block: Block
  readonly lines: readonly Entry[]
  readonly walls: readonly Wall[]
}

const HALF_TURN = ratio(180)
const ONCE_ROUND = ratio(360)
const ONCE_BACK = ratio(-360)

/** Judges the order of a room's walls by the ways they face; their lengths are not asked. */
export function orderOf(listed: Listed, binding: Binding): Order {
  const { walls, block } = listed
  if (walls.length === 0 || block.under.some((entry) => entry.broken)) return 'unfinished'
  if (walls.some((wall) => isUnknown(wall))) return 'unfinished'
  if (walls.every((wall) => wall.heading.kind === 'turn'))
    return wrong(withoutNorth(listed), binding)
  const turns = turnsOf(walls.map((wall) => wall.heading))
  const folded = turns.findIndex((turn, i) => i > 0 && isHalf(turn))
  if (folded > 0) return foldsBack(listed, folded, binding)
  const total = sum(turns)
  if (compare(total, ONCE_BACK) === 0) return wrong(rightToLeft(listed, binding), binding)
  if (compare(total, ONCE_ROUND) === 0 && !isHalf(turns[0]!)) return 'comes round'
  binding.say(notRound(listed))
  return 'unfinished'
}

/** A slant that does not say its way stands as a turn by nothing, which no slant makes. */
function isUnknown(wall: Wall): boolean {
  return wall.heading.kind === 'turn' && wall.heading.degreesRight.n === 0n
}

function isHalf(turn: Ratio): boolean {
  return compare(turn, HALF_TURN) === 0
}

function wrong(message: Message, binding: Binding): Order {
  binding.say(message)
  return 'wrong'
}

function withoutNorth({ room, lines }: Listed): Message {
  const text =
    `No wall of ${room} says which way it faces. Name one by the way you look at it, such as north; ` +
    'slants turn from there.'
  return message('error', 'room-without-north', lines[0]!.line.span, text)
}

/** With fewer than four walls the one between may just not be typed yet. */
function foldsBack({ walls, lines, room }: Listed, at: number, binding: Binding): Order {
  const [before, wall] = [walls[at - 1]!, walls[at]!]
  const text =
    `In ${room}, ${wall.label} faces ${before.label} and cannot be the next wall on the right. ` +
    'List the wall between them.'
  const few = walls.length < 4
  binding.say(
    message(few ? 'incomplete' : 'error', 'walls-face-each-other', lines[at]!.line.span, text),
  )
  return few ? 'unfinished' : 'wrong'
}

function notRound({ walls, lines, room }: Listed): Message {
  const last = walls[walls.length - 1]!
  const text =
    walls.length < 3
      ? `${room} has ${walls.length === 1 ? 'one wall' : 'two walls'} so far; a room has three at least.`
      : `The walls of ${room} do not come round yet: the last is ${last.label}, the first ${walls[0]!.label}. ` +
        'List those that are missing; if none is, one of them has the wrong way.'
  return message('incomplete', 'walls-do-not-come-round', lines[lines.length - 1]!.line.span, text)
}

function rightToLeft(listed: Listed, binding: Binding): Message {
  const { lines } = listed
  const fix = turnedRound(listed, binding)
  const help = fix === null ? '' : '; the fix turns the list round and keeps every reading'
  const text = `These walls run right to left. List them left to right as you face them${help}.`
  const span = cover(lines[0]!.line.span, lines[lines.length - 1]!.line.span)
  return message('error', 'walls-right-to-left', span, text, { fixes: fix === null ? [] : [fix] })
}

/**
 * The first wall stays, the others stand in reverse, each with the lines below it. Slants and named
 * corners mean something else in the other order: with them nothing is offered.
 */
function turnedRound({ block, lines, walls }: Listed, binding: Binding): Fix | null {
  const fixed = walls.some((wall) => wall.heading.kind !== 'way')
  if (fixed || block.under.some((entry) => entry.word === 'corner')) return null
  const stretches = lines.slice(1).map(stretchOf)
  const edits = stretches.map((span, i) => ({
    span,
    text: binding.text(stretches[stretches.length - 1 - i]!),
  }))
  return { title: 'List the walls left to right', edits }
}

/** A wall's line and those below it. */
function stretchOf(line: Entry): Span {
  const last = line.under[line.under.length - 1]
  return last === undefined ? line.line.span : cover(line.line.span, last.line.span)
}
