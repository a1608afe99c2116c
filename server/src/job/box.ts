import { message } from '../facts/message.ts'
import type { Entry } from '../language/tree.ts'
import type { Binding } from './binding.ts'
import { planksInArea } from './box-area.ts'
import type { Product } from './job.ts'
import { lengthIn, phrasesOf } from './phrases.ts'
import type { Face } from './plank.ts'
import { lengthRefused } from './plank.ts'
import { counted } from './sentence.ts'
import { countIn, countOf } from './settings.ts'

/** What a box holds: how many planks of which lengths. */
export type Box = Pick<Product, 'lengths' | 'perBox'>

/** Reads the `box` line; null with a message where it does not tell the planks in a box. */
export function boxOf(line: Entry, face: Face, binding: Binding): Box | null {
  const lengths = phrasesOf(line, 'COUNT of LENGTH')
  if (lengths.length > 0) return boxOfLengths(line, face, binding)
  if (face.length === null)
    return sayBox(line, 'box-without-lengths', binding.samples(WITHOUT_LENGTHS), binding)
  const said = countOf(line, 'COUNT planks', binding)
  const byArea = planksInArea(line, face.width, face.length, binding)
  if (byArea === 'refused') return null
  const perBox = said ?? byArea
  if (perBox === null) return sayUnfinished(line, binding)
  if (perBox === 0)
    return sayBox(line, 'box-of-nothing', 'A box holds one plank at least.', binding)
  if (said !== null && byArea !== null && said !== byArea) {
    const text = `The area on this box is that of ${counted(byArea, 'plank')}, but the line says ${said}. Keep the one that is right.`
    return sayBox(line, 'box-said-twice', text, binding)
  }
  return { lengths: [{ length: face.length, perBox }], perBox }
}

const WITHOUT_LENGTHS =
  'The planks have no one length, so the box says how many it holds of each, such as 2 of 24", 4 of 36", 5 of 48".'

function sayBox(line: Entry, code: string, text: string, binding: Binding): null {
  binding.say(message('error', code, line.line.span, text))
  return null
}

/** Only where the line leaves it open: a figure that is refused is said already. */
function sayUnfinished(line: Entry, binding: Binding): null {
  const figures = line.phrases.flatMap(({ measures }) => measures.map(({ figure }) => figure))
  if (figures.length > 0 && figures.every(({ kind }) => kind !== 'asked')) return null
  const text =
    'How many planks does a box hold? Write box 9 planks, or what it prints: box 23.64 sq ft.'
  binding.say(message('incomplete', 'product-unfinished', line.line.span, text))
  return null
}

function boxOfLengths(line: Entry, face: Face, binding: Binding): Box | null {
  const lengths: Box['lengths'][number][] = []
  for (const said of phrasesOf(line, 'COUNT of LENGTH')) {
    const perBox = countIn(said, binding)
    const length = lengthIn(said.measures[1])
    if (perBox === null || length === null) return sayUnfinished(line, binding)
    lengths.push({ length, perBox })
  }
  const refused = lengthsRefused(lengths, face, binding)
  if (refused !== null) return sayBox(line, ...refused, binding)
  return { lengths, perBox: lengths.reduce((sum, { perBox }) => sum + perBox, 0) }
}

/** Code and text of what is wrong with the lengths in a box, or null. */
function lengthsRefused(
  lengths: Box['lengths'],
  face: Face,
  binding: Binding,
): readonly [code: string, text: string] | null {
  if (lengths.some(({ length, perBox }) => length === 0 || perBox === 0)) {
    const text = 'A box holds one plank at least of each length that it lists, longer than nothing.'
    return ['box-of-nothing', text]
  }
  if (new Set(lengths.map(({ length }) => length)).size < lengths.length) {
    return ['box-length-twice', 'This box lists one length twice. Add the two up.']
  }
  for (const { length } of lengths) {
    const refused = lengthRefused(length, face.width, binding)
    if (refused !== null) return ['plank-size-unlikely', refused]
  }
  if (face.length === null || lengths.some(({ length }) => length === face.length)) return null
  const text = `The plank line says ${binding.length(face.length)} long, which is none of the lengths in this box. Leave the length out there, as in: ${binding.samples('plank 5" wide')}.`
  return ['box-without-its-length', text]
}
