import { type Message, message } from '../facts/message.ts'
import type { Recess } from '../job/job.ts'
import type { UnitStyle } from '../units/length.ts'
import { lengthWords } from './labels.ts'
import type { Placed } from './places.ts'
import { allowedFor, type Length, lengthFrom } from './reading.ts'
import type { SurveyedCloset } from './survey.ts'
import { rectangleOn } from './wall-frame.ts'

type Say = (message: Message) => void

/**
 * A closet behind its opening: its floor lies outside the wall by the wall's thickness, the floor
 * between is its throat. None while its depth or the thickness is not known, which is asked for where
 * it is read. `inset` is how far the room's rim lies inside the wall's face: a kept base.
 */
export function closetOf(
  { thing, index, frame, stretch }: Placed<Recess>,
  inset: number,
  { style, say }: { readonly style: UnitStyle; readonly say: Say },
): readonly SurveyedCloset[] {
  const deep = lengthFrom(thing.deep)
  if (thing.kind !== 'closet' || deep === null || thing.thickness === null) return []
  const thickness = inset + thing.thickness.value
  const width = stretch.right - stretch.left
  const inside = insideOf(thing, width, style, say)
  const start = stretch.left - leftReturnOf(thing, { inside, width }, style, say)
  return [
    {
      recess: index,
      name: thing.label,
      outline: rectangleOn(frame, [start, start + inside], [thickness, thickness + deep.nm]),
      throat: rectangleOn(frame, [stretch.left, stretch.right], [0, thickness]),
    },
  ]
}

/** Its inside width: as read, else what its returns make, else no wider than its opening. */
function insideOf(thing: Recess, width: number, style: UnitStyle, say: Say): number {
  const { left, right, inside } = readings(thing)
  if (inside === null) return width + (left?.nm ?? 0) + (right?.nm ?? 0)
  const slack = allowedFor([inside.sigma, thing.place!.width.sigma])
  if (inside.nm >= width - slack) {
    if (left !== null && right !== null)
      sayReturns(thing, { inside, left, right, width }, style, say)
    return Math.max(inside.nm, width)
  }
  const text =
    `This closet is ${lengthWords(inside.nm, style)} wide inside, less than its opening of ${lengthWords(width, style)}. ` +
    'Take both again.'
  say(message('error', 'closet-narrower-than-opening', thing.inside!.span, text))
  return width
}

function readings(thing: Recess) {
  return {
    left: lengthFrom(thing.leftReturn),
    right: lengthFrom(thing.rightReturn),
    inside: lengthFrom(thing.inside),
  }
}

interface Across {
  readonly inside: Length
  readonly left: Length
  readonly right: Length
  readonly width: number
}

function sayReturns(
  thing: Recess,
  { inside, left, right, width }: Across,
  style: UnitStyle,
  say: Say,
) {
  const sum = left.nm + width + right.nm
  const allowed = allowedFor([inside.sigma, left.sigma, right.sigma, thing.place!.width.sigma])
  if (Math.abs(sum - inside.nm) <= allowed) return
  const text =
    `The opening of this closet and its returns make ${lengthWords(sum, style)}, but inside it was read as ` +
    `${lengthWords(inside.nm, style)}; the readings allow ${lengthWords(allowed, style)}. Take them again.`
  say(message('warning', 'closet-returns-disagree', thing.inside!.span, text))
}

/** What of the inside lies left of the opening: as read, else what the right leaves, else half the rest. */
function leftReturnOf(
  thing: Recess,
  { inside, width }: { readonly inside: number; readonly width: number },
  style: UnitStyle,
  say: Say,
): number {
  const { left, right } = readings(thing)
  const rest = inside - width
  if (left !== null) return Math.min(left.nm, rest)
  if (right !== null) return Math.max(0, rest - right.nm)
  if (rest > 0) {
    const text =
      `No return of this closet is given: its opening is taken to stand in the middle, ${lengthWords(rest / 2, style)} from either side. ` +
      'A left return would place it.'
    say(message('note', 'closet-centred', thing.span, text))
  }
  return rest / 2
}
