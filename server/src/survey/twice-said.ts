import { type Message, message } from '../facts/message.ts'
import type { Reading, Room, Wall } from '../job/job.ts'
import type { UnitStyle } from '../units/length.ts'
import { checkWords, sentence } from './check-messages.ts'
import { lengthWords, wallWords } from './labels.ts'
import { allowedFor, lengthFrom, repeatSpread, repeatsDisagree, SURELY_MISREAD } from './reading.ts'
import { lengthOf } from './vector.ts'

/** What a room says twice and must say alike: repeats, parts of a wall, and where a slant takes you. */
export function twiceSaidMessages(room: Room, style: UnitStyle): readonly Message[] {
  return [
    ...room.walls.flatMap((wall) => {
      // Only named when there is something to say: naming one wall looks at all of them.
      const name = () => wallWords(room, wall.index)
      return [
        ...repeatMessages(name, wall.reading, style),
        ...partMessages(name, wall, style),
        ...slantMessages(name, wall, style),
      ]
    }),
    ...[...room.openings, ...room.recesses].flatMap(({ kind, place }) =>
      place === null || kind === 'open side'
        ? []
        : repeatMessages(() => `The width of this ${kind}`, place.width, style),
    ),
    ...room.checks.flatMap((check) =>
      check.kind === 'square'
        ? []
        : repeatMessages(() => sentence(checkWords(room, check)), check.reading, style),
    ),
  ]
}

/** What to say of a reading, called `name`, whose repeats do not agree with it. */
function repeatMessages(
  name: () => string,
  reading: Reading,
  style: UnitStyle,
): readonly Message[] {
  if (!repeatsDisagree(reading)) return []
  const { least, most, allowed } = repeatSpread(reading)!
  const text =
    `${name()} was read as ${lengthWords(least, style)} and as ${lengthWords(most, style)}; two readings of it may ` +
    `differ by ${lengthWords(allowed, style)}. Take it once more and strike the wrong one.`
  const span = reading.again[reading.again.length - 1]!.span
  const related = [{ span: reading.span, text: 'The first reading.' }]
  const weight = most - least > SURELY_MISREAD * allowed ? 'error' : 'warning'
  return [message(weight, 'repeats-disagree', span, text, { related })]
}

function partMessages(name: () => string, wall: Wall, style: UnitStyle): readonly Message[] {
  const whole = lengthFrom(wall.reading)
  const parts = wall.parts.map((part) => lengthFrom(part.reading))
  if (whole === null || parts.length === 0) return []
  let sum = 0
  const sigmas = [whole.sigma]
  for (const part of parts) {
    if (part === null) return []
    sum += part.nm
    sigmas.push(part.sigma)
  }
  const allowed = allowedFor(sigmas)
  if (Math.abs(sum - whole.nm) <= allowed) return []
  const text =
    `The parts of ${name()} make ${lengthWords(sum, style)}, but the wall was read as ${lengthWords(whole.nm, style)}; ` +
    `the readings allow ${lengthWords(allowed, style)}. Take the wall and its parts again.`
  return [message('warning', 'parts-disagree', wall.parts[0]!.reading.span, text)]
}

/** A slant's length against where it is said to take you: three readings of one wall. */
function slantMessages(name: () => string, wall: Wall, style: UnitStyle): readonly Message[] {
  const length = lengthFrom(wall.reading)
  if (wall.heading.kind !== 'offset' || length === null) return []
  const reach = lengthOf({ x: wall.heading.east, y: wall.heading.north })
  const allowed = allowedFor([length.sigma, length.sigma])
  if (Math.abs(reach - length.nm) <= allowed) return []
  const text =
    `${name()} was read as ${lengthWords(length.nm, style)}, but where it takes you is ${lengthWords(reach, style)} away; ` +
    `the readings allow ${lengthWords(allowed, style)}. Take all three again.`
  return [message('warning', 'slant-disagrees', wall.reading.span, text)]
}
