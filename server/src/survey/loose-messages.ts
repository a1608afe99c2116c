import { type Message, message } from '../facts/message.ts'
import type { Room } from '../job/job.ts'
import type { UnitStyle } from '../units/length.ts'
import { checkWords, sentence } from './check-messages.ts'
import { checkDistance, type Distance } from './distance.ts'
import { type Fixing, MOST_LOOSE_WALLS, type Solved } from './fixing.ts'
import { cornerWords, countWords, lengthWords, listWords, wallWords } from './labels.ts'
import { distanceSlips, type Slip } from './slip.ts'
import type { CheckResult } from './survey.ts'

/** What to say of an out-of-square room whose readings do not fix it. */
export function notFixedMessage(
  room: Room,
  { missing, wanted }: Extract<Fixing, { found: 'loose' }>,
): Message {
  const further = missing === 1 ? 'one more distance' : `${countWords(missing)} more distances`
  const example =
    wanted === null
      ? 'Its walls lie in one line: read a way or a width that parts them.'
      : `Take the diagonal from ${cornerWords(room, wanted[0])} to ${cornerWords(room, wanted[1])}.`
  const text = `${room.name.text} is out of square and its readings leave it loose: ${further} must hold it. ${example}`
  return message('incomplete', 'shape-not-fixed', room.name.span, text)
}

export function cannotMeetMessage(room: Room, distances: readonly Distance[]): Message {
  const fixers = distances.filter(({ of }) => of.kind === 'check')
  const with_ =
    fixers.length === 0
      ? ''
      : ` with ${listWords(
          fixers.map((d) => distanceWords(room, d)),
          'and',
        )}`
  const text =
    `The walls of ${room.name.text}${with_} cannot meet: some side is longer than the others together. ` +
    'Take again the one that looks too long or too short.'
  return message('error', 'distances-cannot-meet', room.name.span, text)
}

export function tooManyLooseWalls(room: Room): Message {
  const text = `An out-of-square room may have ${MOST_LOOSE_WALLS} walls; ${room.name.text} has ${room.walls.length}. Part it into rooms with open sides.`
  return message('error', 'too-many-loose-walls', room.name.span, text)
}

/**
 * What to say when the spare readings of a solved room do not agree with those that fix it: the one
 * likely slip, or the readings among which it cannot be found, and what would settle it.
 */
export function solvedMessages(
  room: Room,
  {
    solved,
    results,
    style,
  }: {
    readonly solved: Solved
    readonly results: readonly CheckResult[]
    readonly style: UnitStyle
  },
): readonly Message[] {
  const spare = spareOf(room, results)
  const wrong = spare.filter(({ result }) => Math.abs(result.difference) > result.allowed)
  const worst = wrong[0]
  if (!worst) return []
  const slips = distanceSlips(room, solved, {
    spare: spare.map(({ distance }) => distance),
    agree: (distance, corners) =>
      Math.abs(distance.nm - distance.value(corners)) <=
      spare.find((other) => other.distance.of.index === distance.of.index)!.result.allowed,
    style,
  })
  const { result } = worst
  const read = lengthWords(result.computed + result.difference, style)
  const text =
    `The readings of ${room.name.text} do not agree: ${checkWords(room, result.check)} was read as ${read}, the others make it ` +
    `${lengthWords(result.computed, style)} and allow ${lengthWords(result.allowed, style)}. ${slipText(room, { slips, solved, spare: spare.length, style })}`
  return [message('warning', 'readings-disagree', result.check.span, text)]
}

function spareOf(room: Room, results: readonly CheckResult[]) {
  return results.flatMap((result) => {
    const { check } = result
    if (result.fixes || check.kind === 'square' || check.kind === 'room tie') return []
    const distance = checkDistance(check, room.checks.indexOf(check), room.walls.length)
    return distance === null ? [] : [{ result, distance }]
  })
}

interface Found {
  readonly slips: readonly Slip[]
  readonly solved: Solved
  readonly spare: number
  readonly style: UnitStyle
}

function slipText(room: Room, { slips, solved, spare, style }: Found): string {
  const [first, second] = slips
  if (first && !second) {
    const name =
      first.of.kind === 'check' ? sentence(distanceWords(room, first)) : distanceWords(room, first)
    return `${name} is the likely slip, ${first.amount.words}: with ${lengthWords(first.likely, style)} all agree.`
  }
  if (first) {
    const names = slips.map(
      (slip) => `${distanceWords(room, slip)} (${lengthWords(slip.likely, style)})`,
    )
    return `A slip in any one of these explains it: ${listWords(names, 'or')}. Take them again.`
  }
  const among = solved.distances.length + spare
  return spare === 1
    ? `With one spare reading the slip cannot be told: it is one of these ${countWords(among)}. A further diagonal or width would settle it.`
    : `No single slip of a usual size explains it: take the ${countWords(among)} readings again.`
}

function distanceWords(room: Room, { of }: Pick<Distance, 'of'>): string {
  return of.kind === 'wall' ? wallWords(room, of.index) : checkWords(room, room.checks[of.index]!)
}
