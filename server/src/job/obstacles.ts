import { message } from '../facts/message.ts'
import type { Entry } from '../language/tree.ts'
import type { Binding } from './binding.ts'
import type { Obstacle, Reading } from './job.ts'
import type { Outline } from './outline.ts'
import { lengthIn, measureOf, nameOf, phrasesOf } from './phrases.ts'
import { readingOf, readingsOfSize, sizeReading } from './reading.ts'
import { allOf } from './sentence.ts'
import { sizeAllowed } from './sizes.ts'
import { wallNamed } from './wall-names.ts'
import { eighths, isWay } from './ways.ts'

const WORDS = ['column', 'island', 'stairwell', 'vent']

/** The columns, islands, stairwells and vents of a room, in written order. */
export function obstaclesOf(room: Outline, binding: Binding): readonly Obstacle[] {
  return room.block.under
    .filter((line) => WORDS.includes(line.word) && !line.broken)
    .map((line) => obstacleOf(room, line, binding))
}

function obstacleOf(room: Outline, line: Entry, binding: Binding): Obstacle {
  const kind = line.word as Obstacle['kind']
  for (const form of ['SIZE', 'LENGTH round', 'LENGTH east-west', 'LENGTH north-south']) {
    const measure = measureOf(line, form)
    if (measure !== null) sizeAllowed(measure, kind, binding)
  }
  const from = distancesOf(room, line, binding)
  if (from !== null) sayWhereLacking(room, line, from, binding)
  return {
    kind,
    label: nameOf(line, 'called NAME')?.text ?? kind,
    ...sizeOf(room, line, binding),
    from: from ?? [],
    gap: lengthIn(measureOf(line, 'LENGTH gap')),
    span: line.line.span,
  }
}

interface Size {
  readonly round: Reading | null
  readonly eastWest: Reading | null
  readonly northSouth: Reading | null
}

/** Round, or east-west by north-south; "by" alone is read in that order. */
function sizeOf(room: Outline, line: Entry, binding: Binding): Size {
  const round = sizeReading(line, 'LENGTH round', room.tape)
  const size = measureOf(line, 'SIZE')
  const eastWest = sizeReading(line, 'LENGTH east-west', room.tape)
  const northSouth = sizeReading(line, 'LENGTH north-south', room.tape)
  if (size !== null && round === null && eastWest === null && northSouth === null) {
    const [first, second] = readingsOfSize(size, room.tape)
    if (first.nm !== second.nm) binding.say(sizeOrderTaken(line, size.figure.text))
    return { round: null, eastWest: first, northSouth: second }
  }
  const twice =
    (size === null ? 0 : 1) + (round === null ? 0 : 1) + ((eastWest ?? northSouth) ? 1 : 0)
  if (twice > 1) binding.say(sizeSaidTwice(line))
  if (round === null && (eastWest === null || northSouth === null))
    binding.say(sizeLacking(line, binding))
  return { round, eastWest, northSouth }
}

function sizeOrderTaken(line: Entry, text: string) {
  const said = `${text} is read as east-west by north-south. If it lies the other way, exchange the two.`
  return message('note', 'size-order-taken', line.line.span, said)
}

function sizeSaidTwice(line: Entry) {
  const said = `This ${line.word} says its size twice. Keep one: round, or east-west and north-south.`
  return message('error', 'size-said-twice', line.line.span, said)
}

function sizeLacking(line: Entry, binding: Binding) {
  const sample = binding.samples('8" round, or 6\' 0" east-west, 3\' 0" north-south')
  const said = `How large is this ${line.word}? Write ${sample}.`
  return message('incomplete', 'size-not-said', line.line.span, said)
}

type Distances = Obstacle['from']

/** Distances from walls; null when one of them names no clear wall, which is said already. */
function distancesOf(room: Outline, line: Entry, binding: Binding): Distances | null {
  const found: Distances[number][] = []
  let clear = true
  for (const said of phrasesOf(line, 'LENGTH from WALL')) {
    const wall = wallNamed(room, said.names[0]!, binding)
    if (wall === null) clear = false
    else found.push({ wall, distance: readingOf(said.measures[0]!, room.tape) })
  }
  return clear ? found : null
}

function sayWhereLacking(room: Outline, line: Entry, from: Distances, binding: Binding): void {
  if (from.length < 2) {
    const text = `Where is this ${line.word}? Write how far its nearest faces are from two walls that meet, such as ${binding.samples('4\' 0" from west, 3\' 2" from north')}.`
    binding.say(message('incomplete', 'place-not-said', line.line.span, text))
  } else if (from.length > 2 || areParallel(room, from)) {
    const walls = allOf(from.map(({ wall }) => room.walls[wall]!.label))
    const text = `${walls} do not place this ${line.word}: two distances are needed, from walls that are not in line and do not face each other.`
    binding.say(message('error', 'place-not-clear', line.line.span, text))
  }
}

function areParallel(room: Outline, from: Distances): boolean {
  const [a, b] = from.map(({ wall }) => room.lines[wall]!.word)
  return (
    a !== undefined &&
    b !== undefined &&
    isWay(a) &&
    isWay(b) &&
    (eighths(a) - eighths(b)) % 4 === 0
  )
}
