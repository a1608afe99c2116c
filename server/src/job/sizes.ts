import { message } from '../facts/message.ts'
import type { Measure } from '../language/tree.ts'
import type { Binding } from './binding.ts'

/**
 * Whether a measure can be the size of something: nothing has no line. Distances may be nothing, and
 * are not asked. Says so when it cannot.
 */
export function sizeAllowed(measure: Measure, what: string, binding: Binding): boolean {
  const { figure } = measure
  const nothing =
    (figure.kind === 'length' && figure.nm <= 0) ||
    (figure.kind === 'size' && figure.nm.some((nm) => nm <= 0))
  if (!nothing) return true
  const help =
    what === 'plank'
      ? 'Its width and length stand on the box.'
      : 'Write what the tape shows, or ? while it is still to be taken.'
  const text = `${figure.text} is no size for this ${what}. ${help}`
  binding.say(message('error', 'size-of-nothing', measure.span, text))
  return false
}
