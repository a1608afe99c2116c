import { LiveSpan } from '../../server/src/facts/live-span.ts'
import { LiveLine } from '../../server/src/language/live-line.ts'

/** A value as text, its spans and line numbers as they are now: two are equal when their texts are. */
export function plain(value: unknown): string {
  return JSON.stringify(value, (_, one) => {
    if (typeof one === 'bigint') return `${one}n`
    if (one instanceof Map) return [...one]
    if (one instanceof Set) return [...one]
    if (one instanceof LiveSpan) return one.toJSON()
    if (one instanceof LiveLine) return lineOf(one)
    return one
  })
}

/** In the order of `keepLine`. */
function lineOf(line: LiveLine) {
  const { span, number, ending, indent, tokens, head, comment, broken } = line
  return { span, number, ending, indent, tokens, head, comment, broken }
}
