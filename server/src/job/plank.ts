import { message } from '../facts/message.ts'
import type { Entry } from '../language/tree.ts'
import { NM_PER_FOOT, type Nm } from '../units/length.ts'
import type { Binding } from './binding.ts'
import { lengthIn, measureOf } from './phrases.ts'
import { sizeAllowed } from './sizes.ts'

/** The face of a plank: `length` is null for a product of several lengths, which its box lists. */
export interface Face {
  readonly width: Nm
  readonly length: Nm | null
}

/** Longer planks than this are not sold; a foot mark typed for an inch mark makes one. */
const LONGEST: Nm = 20 * NM_PER_FOOT
/** Nothing that is laid in courses is wider. */
const WIDEST: Nm = 4 * NM_PER_FOOT

/** The face of a plank from its line; null, with a message, where it is missing or no plank's. */
export function faceOf(line: Entry, binding: Binding): Face | null {
  const size = measureOf(line, 'SIZE')
  const wide = measureOf(line, 'LENGTH wide')
  const long = measureOf(line, 'LENGTH long')
  for (const measure of [size, wide, long]) {
    if (measure !== null && !sizeAllowed(measure, 'plank', binding)) return null
  }
  const width = size?.figure.kind === 'size' ? size.figure.nm[0] : lengthIn(wide)
  const length = size?.figure.kind === 'size' ? size.figure.nm[1] : lengthIn(long)
  if (width !== null) return plausible(line, { width, length }, binding)
  const text = binding.samples(
    'How wide is the plank? Write its face as 7" x 48", or 7" wide where the box lists the lengths.',
  )
  binding.say(message('incomplete', 'product-unfinished', line.line.span, text))
  return null
}

function plausible(line: Entry, face: Face, binding: Binding): Face | null {
  const refused = refusal(face, binding)
  if (refused === null) return face
  binding.say(message('error', 'plank-size-unlikely', line.line.span, refused))
  return null
}

function refusal({ width, length }: Face, binding: Binding): string | null {
  if (width > WIDEST)
    return `A plank ${binding.length(width)} wide? Up to ${binding.length(WIDEST)} is read. Check the mark.`
  return length === null ? null : lengthRefused(length, width, binding)
}

/** Why no plank of this width is so long or so short, or null. */
export function lengthRefused(length: Nm, width: Nm, binding: Binding): string | null {
  if (length > LONGEST)
    return `A plank ${binding.length(length)} long? Up to ${binding.length(LONGEST)} is read. Check the mark.`
  if (length >= width) return null
  return (
    `A plank ${binding.length(width)} wide and ${binding.length(length)} long? The width comes first, ` +
    'and no plank is shorter than it is wide.'
  )
}

export function plankThickness(line: Entry, binding: Binding): Nm | null {
  const measure = measureOf(line, 'LENGTH thick')
  if (measure === null || !sizeAllowed(measure, 'plank', binding)) return null
  return lengthIn(measure)
}
