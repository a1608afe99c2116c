import { basename, dirname } from 'node:path'
import { type Compiled, compile } from '../compile.ts'
import { gather } from '../host/gather.ts'
import type { Shell } from './shell.ts'
import { readTextFile } from './text-file.ts'

/** A job as compiled, and how its files are called where the command runs. */
export interface JobFile {
  readonly compiled: Compiled
  readonly pathOf: (file: string) => string
}

/** Reads and compiles a job with everything that it includes; null, and said why, if it cannot be read. */
export async function readJob(
  file: string,
  name: string | undefined,
  shell: Shell,
): Promise<JobFile | null> {
  const read = await readTextFile(file, { name }, shell)
  if (read === null) return null
  const { path, text } = read
  const root = { folder: dirname(path), name: basename(path), text }
  const compiled = await gather<Compiled>(shell.host, root, compile)
  const folder = path.slice(0, path.length - root.name.length)
  return { compiled, pathOf: (file) => folder + file }
}
