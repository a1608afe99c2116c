import type { Location } from 'vscode-languageserver-protocol'
import type { Span } from '../facts/span.ts'
import type { OpenJob } from './open-job.ts'

/** A span of any file that a job reaches, or null where it reaches none of that name. */
export function locationOf(job: OpenJob, { file, start, end }: Span): Location | null {
  const tree = job.measured?.trees.find((one) => one.file === file)
  if (tree === undefined) return null
  return { uri: job.uriOf(file), range: job.placesIn(tree).range({ start, end }) }
}
