import { type Message, message } from '../facts/message.ts'
import type { Entry, Phrase } from '../language/tree.ts'
import { compare, ratio, subtract, ZERO } from '../units/ratio.ts'
import type { Binding } from './binding.ts'
import type { Heading, Way } from './job.ts'
import { lengthIn, phrase, phrasesOf } from './phrases.ts'
import { isWay } from './ways.ts'

const STRAIGHT_WAYS: ReadonlyMap<string, readonly [east: number, north: number]> = new Map([
  ['north', [0, 1]],
  ['east', [1, 0]],
  ['south', [0, -1]],
  ['west', [-1, 0]],
])

/**
 * Which way a wall faces, from its first word or, for a slant, from its phrases. Null when a slant
 * does not say it (yet); a message then tells what to write.
 */
export function headingOf(line: Entry, binding: Binding): Heading | null {
  const [turn, offsets] = [phrase(line, 'ANGLE left|right'), phrasesOf(line, 'LENGTH WAY')]
  if (isWay(line.word)) {
    const astray = turn ?? offsets[0]
    if (astray !== undefined) binding.say(onlyForSlants(line, astray))
    return { kind: 'way', way: line.word }
  }
  if (turn !== null) return turnSaid(line, turn, binding)
  if (offsets.length > 0) return offsetSaid(line, offsets, binding)
  if (!line.broken) binding.say(slantWithoutWay(line, binding))
  return null
}

function turnSaid(line: Entry, said: Phrase, binding: Binding): Heading | null {
  const figure = said.measures[0]?.figure
  if (figure?.kind !== 'angle' || figure.degrees.n === 0n) {
    binding.say(slantWithoutWay(line, binding))
    return null
  }
  if (compare(figure.degrees, ratio(180)) >= 0) {
    const text = `A wall turns by less than 180° from the wall before; this says ${figure.text}.`
    binding.say(message('error', 'turn-too-far', said.span, text))
    return null
  }
  const right = said.choices[0] === 'right'
  const degreesRight = right ? figure.degrees : subtract(ZERO, figure.degrees)
  return { kind: 'turn', degreesRight }
}

function offsetSaid(line: Entry, said: readonly Phrase[], binding: Binding): Heading | null {
  let [east, north] = [0, 0]
  for (const offset of said) {
    const steps = STRAIGHT_WAYS.get(offset.choices[0] ?? '')
    const nm = lengthIn(offset.measures[0])
    if (nm === null) continue
    if (steps === undefined) {
      binding.say(notStraight(offset, offset.choices[0] as Way, binding))
      return null
    }
    east += steps[0] * nm
    north += steps[1] * nm
  }
  if (east === 0 && north === 0) {
    binding.say(slantWithoutWay(line, binding))
    return null
  }
  return { kind: 'offset', east: east + 0, north: north + 0 }
}

function onlyForSlants(line: Entry, said: Phrase): Message {
  const text =
    `The wall is ${line.word}, so its direction is known. For a wall off the eight ways write ` +
    '"slant" instead and keep this.'
  return message('error', 'way-said-twice', said.span, text)
}

function notStraight(said: Phrase, way: Way, binding: Binding): Message {
  const sample = binding.samples('3\' 0" east, 3\' 0" south')
  const text = `Where a slant takes you is said in two parts, such as ${sample}; ${way} is none.`
  return message('error', 'slant-way-not-straight', said.span, text)
}

function slantWithoutWay(line: Entry, binding: Binding): Message {
  const text =
    `Which way does this slant go? Write where it takes you (${binding.samples('3\' 0" east, 3\' 0" south')}) or its turn ` +
    'from the wall before (30° right).'
  return message('incomplete', 'slant-without-way', line.wordSpan, text)
}
