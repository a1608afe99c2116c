import type { Span } from '../../facts/span.ts'
import type { Reading } from '../../job/job.ts'
import type { Tree } from '../../language/tree.ts'

/** Where the figure of a reading stands, without the doubts around it. */
export function figureSpan(tree: Tree, { span, text }: Pick<Reading, 'span' | 'text'>): Span {
  const start = span.start + Math.max(0, tree.text.slice(span.start, span.end).indexOf(text))
  return { file: span.file, start, end: start + text.length }
}
