import type { Span } from '../../facts/span.ts'
import type { Measured } from '../../report/compiled.ts'

/** What stands at a span of any file of a job. */
export function textAt({ trees }: Measured, { file, start, end }: Span): string {
  return trees.find((tree) => tree.file === file)?.text.slice(start, end) ?? ''
}
