import type { Span } from '../facts/span.ts'
import type { Tree } from '../language/tree.ts'
import type { Compiled, Measured } from '../report/compiled.ts'

/**
 * What a feature looks at: one file as it stands, in one job that it is part of. A file that several
 * jobs include is looked at once for each of them.
 */
export interface View {
  /** The file's path as the job calls it, '/'-separated, relative to the job's folder. */
  readonly file: string
  readonly tree: Tree
  /** The job's readings: always of the same text as `tree`. */
  readonly measured: Measured
  /** Floors and counts of the same text; null while they are still being worked out. */
  readonly counted: Compiled | null
}

/** A stretch of a file to be put in place of another. */
export interface Edit {
  readonly span: Span
  readonly text: string
}
