import type { Span } from '../../facts/span.ts'
import { keyOf } from '../../language/name.ts'
import { textAt } from '../place/text-at.ts'
import { type Asked, type Repair, repair } from './repair.ts'

/** The repairs that come with the message; one of its own place serves the other places of it as well. */
export function sureRepairs(asked: Asked): readonly Repair[] {
  const { message, place } = asked
  return message.fixes.flatMap(({ title, edits }) => {
    const [only, more] = edits
    if (isSame(place, message.span)) return [repair(asked, 'sure', title, edits)]
    if (only === undefined || more !== undefined) return []
    if (isSame(only.span, place)) return [repair(asked, 'sure', title, edits)]
    const isAlike =
      isSame(only.span, message.span) && keyAt(asked, place) === keyAt(asked, only.span)
    return isAlike ? [repair(asked, 'sure', title, [{ span: place, text: only.text }])] : []
  })
}

function isSame(a: Span, b: Span): boolean {
  return a.file === b.file && a.start === b.start && a.end === b.end
}

function keyAt({ view }: Asked, span: Span): string {
  return keyOf(textAt(view.measured, span))
}
