import { type Message, message } from '../facts/message.ts'
import type { Check, Reading, Room } from '../job/job.ts'
import type { UnitStyle } from '../units/length.ts'
import { likelyAmounts } from './amounts.ts'
import { cornerWords, lengthWords, wallWords } from './labels.ts'
import { repeatsDisagree } from './reading.ts'
import type { CheckResult } from './survey.ts'

/** "the diagonal from north-west to south-east". */
export function checkWords(room: Room, check: Check): string {
  switch (check.kind) {
    case 'diagonal':
      return `the diagonal from ${cornerWords(room, check.from)} to ${cornerWords(room, check.to)}`
    case 'across':
      return `the width from ${wallWords(room, check.from)} to ${wallWords(room, check.to)}`
    case 'corner tie':
      return `the tie at ${cornerWords(room, check.corner)}`
    case 'room tie':
      return `the tie from ${wallWords(room, check.from)} to ${check.room.text}`
    case 'square':
      return `the corner ${cornerWords(room, check.corner)}`
  }
}

/** Says of each check of a squared-up room that its reading and the walls do not agree. */
export function checkMessages(
  room: Room,
  results: readonly CheckResult[],
  style: UnitStyle,
): readonly Message[] {
  return results.flatMap((result) => {
    if (result.fixes || Math.abs(result.difference) <= result.allowed) return []
    const { check } = result
    // Which of two repeats is wrong is asked first.
    if (check.kind !== 'square' && repeatsDisagree(check.reading)) return []
    return [
      check.kind === 'square'
        ? notSquare(room, result, style)
        : disagrees(room, { ...result, reading: check.reading }, style),
    ]
  })
}

function notSquare(
  room: Room,
  { check, difference, allowed }: CheckResult,
  style: UnitStyle,
): Message {
  const text =
    `${checkWords(room, check)} was tested square, but the readings put the end of its shorter wall ` +
    `${lengthWords(Math.abs(difference), style)} out; the test allows ${lengthWords(allowed, style)}. Test it with a larger triangle, or take the diagonals again.`
  return message('warning', 'corner-not-square', check.span, sentence(text))
}

function disagrees(
  room: Room,
  { check, computed, difference, allowed, reading }: CheckResult & { readonly reading: Reading },
  style: UnitStyle,
): Message {
  const read = lengthWords(computed + difference, style)
  const amount = likelyAmounts(reading, style).find(
    ({ nm }) => Math.abs(difference + nm) <= allowed,
  )
  const slip = amount
    ? `A slip of ${amount.words}? ${lengthWords(computed + difference + amount.nm, style)} agrees.`
    : check.kind === 'room tie'
      ? 'Take it again.'
      : 'Take it again; if the corners are not square, write "out of square", and the diagonals shape the room.'
  const text =
    `${checkWords(room, check)} was read as ${read}, but the ${check.kind === 'room tie' ? 'rooms' : 'walls'} make it ` +
    `${lengthWords(computed, style)}; the readings allow ${lengthWords(allowed, style)}. ${slip}`
  return message('warning', 'check-disagrees', reading.span, sentence(text))
}

/** A width whose line comes down beside the wall it is read to. */
export function missesWallMessage(room: Room, check: Check & { readonly kind: 'across' }): Message {
  const text =
    `Square off ${wallWords(room, check.from)} at that place, the tape never meets ${wallWords(room, check.to)}. ` +
    'Name the wall that it was read to, or another place.'
  return message('error', 'across-misses-wall', check.span, text)
}

/** A sentence that may begin with an article; names of walls stand as typed. */
export const sentence = (text: string) => text.slice(0, 1).toUpperCase() + text.slice(1)
