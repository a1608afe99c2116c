import { folderOf, pathBelow } from './addresses.ts'
import type { Seen } from './answering.ts'

/**
 * The files that an include line of this file may name, as it would name them: those without a job line
 * below the folder of the job.
 */
export async function partsFor({ session, job, view }: Seen): Promise<readonly string[]> {
  const { folder } = job
  const uris = await session.workspace.parts(folder)
  const own = job.addressOf(view.file)
  const here = folderOf(own)
  return uris.flatMap((uri) => (uri === own ? [] : [pathBelow(here, uri) ?? up(folder, here, uri)]))
}

/** From a folder below the job's up to it, and down to the file. */
function up(folder: string, here: string, uri: string): string {
  const steps = (pathBelow(folder, here) ?? '').split('/').length - 1
  return '../'.repeat(steps) + (pathBelow(folder, uri) ?? '')
}
